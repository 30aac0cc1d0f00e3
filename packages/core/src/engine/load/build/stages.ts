import type { From, Joint, Stage, StageAct } from '../../model.js';
import type { Path } from '../document.js';
import { given } from '../given.js';
import type { SheetReader } from '../reader.js';
import { repeated } from '../repeated.js';
import type { RawJoint } from '../schema.js';
import { ACTS } from '../schema-work.js';
import { type Entry, entriesByCap } from './caps.js';

type RawStage = RawJoint['stages'][number];

export function buildStages(
  raw: RawJoint,
  ids: readonly string[] | undefined,
  order: Joint['order'],
  from: From,
  path: Path,
  reader: SheetReader,
): readonly Stage[] {
  const perEntry = raw.stages.map((one, index) => buildStage(one, ids, from, [...path, 'stages', index], reader));
  const onCap = ({ index, cap }: Entry) =>
    perEntry[index]?.map((stage) => (cap === undefined ? stage : { ...stage, cap: cap.name, holes: cap.holes })) ?? [];
  return entriesByCap(raw, ids, order, path, reader)
    .flatMap(onCap)
    .map((stage, index) => ({ number: index + 1, ...stage }));
}

function buildStage(
  one: RawStage,
  ids: readonly string[] | undefined,
  from: From,
  at: Path,
  reader: SheetReader,
): readonly Omit<Stage, 'number'>[] {
  const act = buildAct(one, at, reader);
  const holes = one.holes === undefined ? 'all' : holesOf(one.holes, ids, at, reader);
  if (act === undefined || holes === undefined) return [];
  if (one.order === 'as-listed' && holes === 'all')
    reader.fault('nothing-listed', at, 'order: as-listed needs "holes" to follow');
  return [
    {
      ...given('label', one.label),
      holes,
      direction: one.order ?? 'in-order',
      act,
      ...given('note', one.note),
      from: reader.from(one.from, [...at, 'from'], from),
    },
  ];
}

function holesOf(
  raw: NonNullable<RawStage['holes']>,
  ids: readonly string[] | undefined,
  at: Path,
  reader: SheetReader,
) {
  const holes = reader.selection(raw, [...at, 'holes']);
  if (holes === undefined) return undefined;
  const unknown = holes.filter((id) => ids !== undefined && !ids.includes(id));
  if (unknown.length > 0)
    reader.fault(
      'unknown-hole',
      [...at, 'holes'],
      `the joint has no ${unknown.length === 1 ? 'hole' : 'holes'} ${unknown.join(', ')}`,
    );
  for (const id of repeated(holes))
    reader.fault('hole-twice', [...at, 'holes'], `hole ${id} is listed twice in this stage`);
  return holes;
}

function buildAct(one: RawStage, at: Path, reader: SheetReader): StageAct | undefined {
  const asked = ACTS.filter((act) => one[act] !== undefined);
  if (asked.length !== 1) {
    const said = asked.length === 0 ? 'this entry asks for nothing' : `this entry asks for ${asked.join(' and ')}`;
    reader.fault(
      'one-act',
      at,
      `${said}; an entry asks for exactly one of ${ACTS.join(', ')} (give several entries one label)`,
    );
    return undefined;
  }
  if (one.renew !== undefined) return { kind: 'renew', text: one.renew };
  if (one.instruct !== undefined) return { kind: 'instruct', text: one.instruct };
  if (one.feel !== undefined) return { kind: 'feel', text: one.feel };
  if (one.loosen !== undefined) return buildLoosen(one.loosen, [...at, 'loosen'], reader);
  if (one.angle !== undefined) return windowAct('angle', 'angle', one.angle, [...at, 'angle'], reader);
  if (one.stretch !== undefined) return windowAct('stretch', 'length', one.stretch, [...at, 'stretch'], reader);
  if (one.verify !== undefined) return windowAct('verify', 'torque', one.verify, [...at, 'verify'], reader);
  return windowAct('torque', 'torque', one.torque ?? '', [...at, 'torque'], reader);
}

function windowAct(
  kind: 'torque' | 'angle' | 'verify' | 'stretch',
  quantity: 'torque' | 'angle' | 'length',
  raw: string | number,
  path: Path,
  reader: SheetReader,
): StageAct | undefined {
  const read = reader.window(quantity, raw, path);
  if (read === undefined) return undefined;
  const lowest = read.window.low ?? read.window.high ?? 0;
  if (lowest <= 0) reader.fault('not-positive', path, `"${read.text}" is not more than zero`);
  return { kind, target: read.window, text: read.text } as StageAct;
}

/** A turn as manuals spell it: "one full turn", "half a turn", "a quarter turn". */
const inFigures = (text: string): string =>
  text
    .replace(/\b(?:a |one )?half (?:a )?turn\b/i, '1/2 turn')
    .replace(/\b(?:a |one )?quarter (?:of a )?turn\b/i, '1/4 turn')
    .replace(/\b(?:one|a) (?:full |complete )?turn\b/i, '1 turn')
    .replace(/\btwo (?:full |complete )?turns\b/i, '2 turns')
    .replace(/\b(\d+) (?:full|complete) turn/i, '$1 turn');

/** `fully`, `1 turn`, `at least 1 turn`: slackening further than asked does no harm, so the least is the amount. */
function buildLoosen(raw: string | number, path: Path, reader: SheetReader): StageAct | undefined {
  if (typeof raw === 'string' && /^(fully|to zero|to 0|to no tension)$/i.test(raw.trim()))
    return { kind: 'loosen', amount: 'fully', text: raw.trim() };
  const bare = typeof raw === 'string' ? inFigures(raw.trim().replace(/^(at least|>=|≥)\s*/i, '')) : raw;
  const amount = reader.value('angle', bare, path);
  if (amount === undefined) return undefined;
  if (amount <= 0)
    reader.fault('not-positive', path, `"${raw}" is not more than zero; write fully, or the turns to slacken by`);
  return { kind: 'loosen', amount, text: String(raw).trim() };
}
