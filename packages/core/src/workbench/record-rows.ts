/** One line of the record for each entry: what, value, limit and its origin, who and when. */
import { type Joint, jointById, type ValveId, valveName } from '../engine/index.js';
import type { Seen } from '../plan/index.js';
import type { EntryData, EntryKind, KnownData } from '../record/index.js';
import type { Bench } from './bench.js';
import { combinationRows } from './combination-rows.js';
import { kindText } from './fastener-words.js';
import { judgeGap } from './gap-verdict.js';
import { measuringRows } from './measuring-rows.js';
import { photoRows } from './photo-rows.js';
import type { RowWords, Writer } from './row-words.js';
import { runningRows } from './running-rows.js';
import { settingRule } from './setting-rule.js';
import { turnCount } from './turn-words.js';
import { workRows } from './work-rows.js';

const seenWords: Readonly<Record<Seen, string>> = {
  reached: 'reached, wrench clicked',
  'turned-and-marked': 'turned and marked',
  loosened: 'loosened',
  held: 'held, did not move',
  moved: 'moved before the value',
  within: 'within',
  short: 'short of the window',
  beyond: 'beyond the window',
  renewed: 'renewed',
  followed: 'done as said',
  free: 'turns freely',
  stiff: 'binds or drags',
  'mark-found': 'paint mark found on return',
};

const jointOf = (bench: Bench, id: string): Joint | undefined => jointById(bench.engine, id);
const jointName = (bench: Bench, id: string) => jointOf(bench, id)?.name ?? id;
const headName = (bench: Bench, id: string) => bench.engine.heads.find((head) => head.id === id)?.name ?? id;
const placeName = (bench: Bench, valve: ValveId) => valveName(bench.engine, valve);
const holeName = (bench: Bench, joint: string, hole: string) =>
  `${jointName(bench, joint)}, ${hole === 'all' ? 'whole joint' : `hole ${hole}`}`;

const instanceWords = (instance: number) => (instance > 1 ? `, fastener ${instance} in this hole` : '');

/** `opening:water-1` asks for the state that the sheet draws; the other items ask for what their own check says. */
function gasketRow(bench: Bench, data: EntryData['gasket-checked']): RowWords {
  const head = bench.engine.heads.find((one) => one.id === data.head);
  const opening = head?.gasket.openings.find((one) => `opening:${one.id}` === data.item);
  const item = opening === undefined ? data.item.replaceAll('-', ' ') : `opening ${opening.id}`;
  return {
    what: `${headName(bench, data.head)}, gasket: ${item}`,
    value: `${data.result}: ${data.seen}`,
    ...(opening && { limit: `${opening.intent} as drawn`, origin: head?.gasket.from.text ?? '' }),
  };
}

function placedRow(bench: Bench, data: EntryData['fastener-placed']): RowWords {
  const joint = jointOf(bench, data.joint);
  const given = joint?.fasteners.find((kind) => kind.id === data.fastener);
  const asked = joint?.fasteners.find(
    (kind) => kind.id === joint.holes.find((hole) => hole.id === data.hole)?.fastener,
  );
  const measured = data.length === undefined ? '' : `, measured ${data.length.text}`;
  const condition = data.condition === undefined ? '' : `${data.condition} `;
  return {
    what: holeName(bench, data.joint, data.hole),
    value: `${condition}${given === undefined ? data.fastener : kindText(given)}${measured}; thread ${data.onThread}, under head ${data.underHead}${instanceWords(data.instance)}`,
    ...(asked && { limit: kindText(asked), origin: asked.length?.from.text ?? '' }),
  };
}

function actRow(bench: Bench, data: EntryData['act-done']): RowWords {
  const stage = jointOf(bench, data.joint)?.stages.find((one) => one.number === data.stage);
  const cap = stage?.cap === undefined ? '' : `, ${stage.cap}`;
  const reading = data.reading === undefined ? '' : `, read ${data.reading.text}`;
  const round = data.round > 1 ? `, round ${data.round}` : '';
  return {
    what: `${holeName(bench, data.joint, data.hole)}, stage ${stage?.label ?? data.stage}${cap}`,
    value: `${seenWords[data.seen]}${reading}${round}${instanceWords(data.instance)}`,
    limit: data.target,
    origin: stage?.from.text ?? '',
  };
}

function resumedRow(bench: Bench, data: EntryData['walk-resumed']): RowWords {
  const mark = data.mark === undefined ? '' : `; mark on hole ${data.mark.hole}: ${data.mark.answer}`;
  const again = data.roundAgain ? `; stage ${data.stage} round again` : '';
  const touched = data.verified.length === 0 ? '' : `; touched ${data.verified.join(', ')}`;
  return {
    what: `${jointName(bench, data.joint)}, taken up again`,
    value: `${data.why.replaceAll('-', ' ')}${touched}${again}${mark}`,
  };
}

/** A gap that was recorded outside of its window says so for ever. */
function outWords(bench: Bench, { valve, condition, lash }: EntryData['valve-set']): string {
  const verdict = lash && judgeGap(bench.engine, valve, condition, lash.text);
  return verdict?.state === 'out' ? ` (OUT: ${verdict.distance})` : '';
}

function valveRow(bench: Bench, data: EntryData['valve-set']): RowWords {
  const rule = settingRule(bench.engine);
  const parts = [
    data.turns === undefined ? '' : `${turnCount(data.turns)} turn past zero lash`,
    data.plungerTravel === undefined ? '' : `plunger ${data.plungerTravel.text}`,
    data.lash === undefined ? '' : `gap ${data.lash.text} ${data.condition}${outWords(bench, data)}`,
    data.shim === undefined ? '' : `shim ${data.shim.text}`,
    data.adjustment === 'fixed' ? 'rocker tightened' : '',
    data.crankDegrees === undefined ? '' : `crank at ${data.crankDegrees}°`,
    data.method === 'neighbour' ? 'by the neighbouring valve' : '',
  ];
  return {
    what: `${placeName(bench, data.valve)}, set`,
    value: parts.filter((part) => part !== '').join(', '),
    limit: data.valve.kind === 'intake' ? rule.intake : rule.exhaust,
    origin: rule.origin,
  };
}

const rows: { readonly [K in EntryKind]: Writer<K> } = {
  'sheet-adopted': (_, data) => ({ what: 'Sheet', value: `${data.name} (${data.reason})` }),
  'gasket-checked': gasketRow,
  'fastener-placed': placedRow,
  'act-done': actRow,
  'walk-resumed': resumedRow,
  'fastener-doubted': (bench, data) => ({
    what: `${holeName(bench, data.joint, data.hole)}, in doubt at stage ${data.stage}`,
    value: data.why,
  }),
  'joint-opened': (bench, data) => ({ what: `${jointName(bench, data.joint)}, opened`, value: data.reason }),
  'part-tagged': (bench, data) => ({
    what: `${data.part} of ${placeName(bench, data.valve)}, tagged`,
    value: [data.condition, data.end ?? '', data.face ?? ''].filter((text) => text !== '').join('; '),
  }),
  'part-fitted': (bench, data) => ({
    what: `${data.part} to ${placeName(bench, data.to)}`,
    value: data.from === 'new' ? 'new' : `from ${placeName(bench, data.from)}`,
    limit: 'its own place, or new',
    origin: 'common practice, no source',
  }),
  'valve-set': valveRow,
  'valve-rechecked': (bench, data) => ({
    what: `${placeName(bench, data.valve)}, after two turns`,
    value: `${data.result}: ${data.seen}${data.lash === undefined ? '' : `, gap ${data.lash.text}`}`,
  }),
  'spare-shim': (_, data) => ({ what: 'Spare shim in the box', value: data.shim.text }),
  'shim-measured': (bench, data) => ({
    what: `${placeName(bench, data.valve)}, gap and shim as found`,
    value: `gap ${data.lash.text}, shim ${data.shim.text}`,
  }),
  ...measuringRows,
  ...combinationRows,
  ...workRows,
  ...runningRows,
  ...photoRows,
  skipped: (_, data) => ({ what: `Left out: ${data.what}`, value: data.reason }),
  note: (_, data) => ({ what: `Note: ${data.about}`, value: data.text }),
  'struck-out': (_, data) => ({ what: 'Struck out', value: data.reason }),
};

/** The words of one understood entry. */
export function rowWords(bench: Bench, known: KnownData): RowWords {
  const write = rows[known.kind] as Writer<typeof known.kind>;
  return write(bench, known.data as never);
}
