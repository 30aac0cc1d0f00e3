import type { Length } from '../../../quantity/index.js';
import type { Head, Joint, Layout, Opening, Place, ValveKind } from '../../model.js';
import type { Path } from '../document.js';
import { given } from '../given.js';
import type { RawText, SheetReader } from '../reader.js';
import type { Sheet } from '../schema.js';

type RawHead = NonNullable<Sheet['heads']>[number];
type OwnHead = Exclude<RawHead, { like: string }>;
type LikeHead = Extract<RawHead, { like: string }>;
/** A head that was turned end for end: places of its joints are measured from its own front. */
export interface BuiltHead {
  readonly head: Head;
  readonly turned: boolean;
  readonly boltDiameter?: Length;
}

export function buildHeads(sheet: Sheet, layout: Layout, reader: SheetReader): readonly BuiltHead[] {
  const built: BuiltHead[] = [];
  sheet.heads?.forEach((raw, index) => {
    const path: Path = ['heads', index];
    if (built.some((each) => each.head.id === raw.id))
      reader.fault('head-twice', path, `there already is a head "${raw.id}"`);
    const one = 'like' in raw ? likeHead(raw, built, layout, path, reader) : ownHead(raw, layout, path, reader);
    if (one !== undefined) built.push(one);
  });
  return built;
}

function bankOf(id: string | undefined, layout: Layout, path: Path, reader: SheetReader): string {
  const bank = id ?? (layout.banks.length === 1 ? layout.banks[0]?.id : undefined);
  if (bank !== undefined && layout.banks.some((each) => each.id === bank)) return bank;
  const names = layout.banks.map((each) => each.id).join(', ');
  reader.fault(
    'unknown-bank',
    [...path, 'bank'],
    `${id === undefined ? 'the bank is missing' : `there is no bank "${id}"`}; banks: ${names}`,
  );
  return bank ?? '';
}

const cylindersOfBank = (layout: Layout, bank: string) =>
  [...layout.cylinders]
    .filter((each) => each.bank === bank)
    .sort((a, b) => a.place - b.place)
    .map((each) => each.number);

const nameOf = (id: string, name: string | undefined) => name ?? (/head$/.test(id) ? id : `${id} head`);

function ownHead(raw: OwnHead, layout: Layout, path: Path, reader: SheetReader): BuiltHead | undefined {
  const bank = bankOf(raw.bank, layout, path, reader);
  const chosen = raw.cylinders === undefined ? undefined : reader.selection(raw.cylinders, [...path, 'cylinders']);
  const cylinders = chosen?.map(Number) ?? cylindersOfBank(layout, bank);
  for (const number of cylinders) {
    if (cylindersOfBank(layout, bank).includes(number)) continue;
    reader.fault('unknown-cylinder', [...path, 'cylinders'], `cylinder ${number} does not stand in bank "${bank}"`);
  }
  const length = reader.value('length', raw.length, [...path, 'length']);
  const width = reader.value('length', raw.width, [...path, 'width']);
  if (length === undefined || width === undefined) return undefined;
  const centres = readCentres(raw, cylinders, path, reader);
  const bores = reader.value('length', raw.gasket?.bores, [...path, 'gasket', 'bores']);
  const boltDiameter = reader.value('length', raw.gasket?.bolts, [...path, 'gasket', 'bolts']);
  const boreOpenings: readonly Opening[] =
    bores === undefined
      ? []
      : Object.entries(centres).map(([number, at]) => ({
          id: `bore-${number}`,
          kind: 'bore',
          at,
          diameter: bores,
          intent: 'open',
        }));
  const head: Head = {
    id: raw.id,
    name: nameOf(raw.id, raw.name),
    bank,
    cylinders,
    length,
    width,
    cylinderCentres: centres,
    valves: readValves(raw, cylinders, path, reader),
    gasket: {
      wayUp: raw.gasket?.wayUp ?? 'not stated',
      ...given('thickness', reader.stated('length', raw.gasket?.thickness, [...path, 'gasket', 'thickness'])),
      openings: [...boreOpenings, ...readOpenings(raw, path, reader)],
      dressing: raw.gasket?.dressing ?? 'dry',
      from: reader.from(raw.gasket?.from, [...path, 'gasket', 'from']),
    },
  };
  return { head, turned: false, ...given('boltDiameter', boltDiameter) };
}

export function readPlace(raw: { x: RawText; y: RawText }, path: Path, reader: SheetReader): Place | undefined {
  const x = reader.value('length', raw.x, [...path, 'x']);
  const y = reader.value('length', raw.y, [...path, 'y']);
  return x === undefined || y === undefined ? undefined : { x, y };
}

function readCentres(
  raw: OwnHead,
  cylinders: readonly number[],
  path: Path,
  reader: SheetReader,
): Readonly<Record<string, Place>> {
  const at: Path = [...path, 'cylinderCentres'];
  const centres: Record<string, Place> = {};
  for (const [number, place] of Object.entries(raw.cylinderCentres)) {
    if (!cylinders.includes(Number(number)))
      reader.fault('unknown-cylinder', [...at, number], `cylinder ${number} is not under this head`);
    const read = readPlace(place, [...at, number], reader);
    if (read !== undefined) centres[number] = read;
  }
  for (const number of cylinders) {
    if (!Object.hasOwn(raw.cylinderCentres, String(number)))
      reader.fault('centre-missing', at, `the centre of cylinder ${number} is missing`);
  }
  return centres;
}

function readValves(raw: OwnHead, cylinders: readonly number[], path: Path, reader: SheetReader): Head['valves'] {
  const counts = new Map<string, number>();
  return raw.valves.flatMap((valve, index) => {
    const at: Path = [...path, 'valves', index];
    if (!cylinders.includes(valve.cylinder))
      reader.fault('unknown-cylinder', at, `cylinder ${valve.cylinder} is not under this head`);
    const place = readPlace(valve, at, reader);
    const diameter = reader.value('length', valve.diameter, [...at, 'diameter']);
    if (place === undefined) return [];
    return [numbered(counts, valve.cylinder, valve.kind, { at: place, ...given('diameter', diameter) })];
  });
}

function numbered<T extends object>(counts: Map<string, number>, cylinder: number, kind: ValveKind, rest: T) {
  const key = `${cylinder} ${kind}`;
  const index = (counts.get(key) ?? 0) + 1;
  counts.set(key, index);
  return { cylinder, kind, index, ...rest };
}

function readOpenings(raw: OwnHead, path: Path, reader: SheetReader): readonly Opening[] {
  return (raw.gasket?.openings ?? []).flatMap((opening, index) => {
    const at: Path = [...path, 'gasket', 'openings', index];
    const place = readPlace(opening, at, reader);
    const diameter = reader.value('length', opening.diameter, [...at, 'diameter']);
    if (place === undefined || diameter === undefined) return [];
    return [{ id: opening.id, kind: opening.kind, at: place, diameter, intent: opening.intent ?? 'open' }];
  });
}

/** The same casting on another bank; turned end for end, its front is the first one's rear, and the exhaust side stays outside. */
function likeHead(
  raw: LikeHead,
  built: readonly BuiltHead[],
  layout: Layout,
  path: Path,
  reader: SheetReader,
): BuiltHead | undefined {
  const pattern = built.find((each) => each.head.id === raw.like);
  if (pattern === undefined) {
    reader.fault('unknown-head', [...path, 'like'], `there is no head "${raw.like}" above this one`);
    return undefined;
  }
  const bank = bankOf(raw.bank, layout, path, reader);
  const cylinders = cylindersOfBank(layout, bank);
  const old = pattern.head.cylinders;
  if (cylinders.length !== old.length) {
    reader.fault(
      'unlike-head',
      path,
      `bank "${bank}" has ${cylinders.length} cylinders, head "${raw.like}" covers ${old.length}`,
    );
    return undefined;
  }
  const turned = raw.turned ?? false;
  const move = (at: Place): Place => (turned ? turnedPlace(at, pattern.head.length) : at);
  const partner = new Map(old.map((number, k) => [number, cylinders[turned ? old.length - 1 - k : k] ?? number]));
  const counts = new Map<string, number>();
  const valves = turned ? [...pattern.head.valves].reverse() : pattern.head.valves;
  const head: Head = {
    ...pattern.head,
    id: raw.id,
    name: nameOf(raw.id, raw.name),
    bank,
    cylinders,
    cylinderCentres: Object.fromEntries(
      Object.entries(pattern.head.cylinderCentres).map(([number, at]) => [
        String(partner.get(Number(number))),
        move(at),
      ]),
    ),
    valves: valves.map(({ cylinder, kind, index: _, at, ...rest }) =>
      numbered(counts, partner.get(cylinder) ?? cylinder, kind, { at: move(at), ...rest }),
    ),
    gasket: {
      ...pattern.head.gasket,
      openings: pattern.head.gasket.openings.map((opening) => ({
        ...opening,
        id: opening.kind === 'bore' ? boreId(opening.id, partner) : opening.id,
        at: move(opening.at),
      })),
    },
  };
  return { head, turned, ...given('boltDiameter', pattern.boltDiameter) };
}

const boreId = (id: string, partner: ReadonlyMap<number, number>) =>
  id.replace(/^bore-(\d+)$/, (_, number: string) => `bore-${partner.get(Number(number)) ?? number}`);

export function turnedPlace(at: Place, headLength: Length): Place {
  // Rounded to a nanometre, so that a turned place is the decimal that a person would have typed.
  return { x: (Math.round((headLength - at.x) * 1e9) / 1e9) as Length, y: at.y };
}

/** Heads with one bolt opening in the gasket for each placed hole of their joints. */
export function withBoltOpenings(built: readonly BuiltHead[], joints: readonly Joint[]): readonly Head[] {
  return built.map(({ head, boltDiameter }) => {
    if (boltDiameter === undefined) return head;
    const own = joints.filter((joint) => joint.head === head.id);
    const bolts = own.flatMap((joint, which) =>
      joint.holes.flatMap((hole): readonly Opening[] => {
        if (hole.at === undefined) return [];
        const id = which === 0 ? `bolt-${hole.id}` : `bolt-${joint.id}-${hole.id}`;
        return [{ id, kind: 'bolt', at: hole.at, diameter: boltDiameter, intent: 'open' }];
      }),
    );
    return { ...head, gasket: { ...head.gasket, openings: [...head.gasket.openings, ...bolts] } };
  });
}
