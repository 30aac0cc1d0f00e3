/** The record of one job: every value, limit and its source, who and when, section by section; struck lines stay. */
import type { Decision } from '../assess/index.js';
import { type EntryKind, headCode, type ReadEntry, verifyChain } from '../record/index.js';
import { type Bench, shownTime } from './bench.js';
import { decisionsAt } from './decision-view.js';
import { measureStanding } from './measure-view.js';
import { readingsOf } from './readings.js';
import { rowWords } from './record-rows.js';
import {
  fastenersStanding,
  gasketStanding,
  partsStanding,
  type Standing,
  tighteningStanding,
  valvesStanding,
} from './standings.js';
import type { RecordRow, RecordView } from './views.js';

type SectionKey =
  | 'sheet'
  | 'instruments'
  | 'measured'
  | 'combination'
  | 'decisions'
  | 'work'
  | 'gasket'
  | 'fasteners'
  | 'tightening'
  | 'parts'
  | 'valves'
  | 'running'
  | 'photos'
  | 'notes';
const sectionTitles: Readonly<Record<SectionKey, string>> = {
  sheet: 'The engine and its sheet',
  instruments: 'Instruments, as checked',
  measured: 'Measured, reading by reading',
  combination: 'The combination: cam as read, figures as stated',
  decisions: 'Decisions',
  work: 'The work, act by act',
  gasket: 'Head gaskets, as checked',
  fasteners: 'Fasteners, hole by hole',
  tightening: 'Tightening, act by act',
  parts: 'Lifters, pushrods, rockers and their places',
  valves: 'Valves, as set',
  photos: 'Photos, with their places',
  running: 'Primed, started, run in and tested',
  notes: 'Notes, things left out and strikes',
};
const sectionOf: Readonly<Record<EntryKind, SectionKey>> = {
  'sheet-adopted': 'sheet',
  'gasket-checked': 'gasket',
  'fastener-placed': 'fasteners',
  'act-done': 'tightening',
  'walk-resumed': 'tightening',
  'fastener-doubted': 'tightening',
  'joint-opened': 'tightening',
  'part-tagged': 'parts',
  'part-fitted': 'parts',
  'valve-set': 'valves',
  'valve-rechecked': 'valves',
  'shim-measured': 'valves',
  'spare-shim': 'valves',
  'instrument-kept': 'instruments',
  'instrument-checked': 'instruments',
  'temperature-noted': 'instruments',
  measured: 'measured',
  'work-returned': 'measured',
  'dead-centre-read': 'combination',
  'cam-read': 'combination',
  'pushrod-tried': 'combination',
  'valve-room-read': 'combination',
  'figure-stated': 'combination',
  decided: 'decisions',
  'work-act-done': 'work',
  'work-act-skipped': 'work',
  'work-reopened': 'work',
  'second-look': 'work',
  'mock-up-aid-out': 'work',
  'mock-up-aid-returned': 'work',
  'work-begun': 'work',
  'work-act-added': 'work',
  'work-act-critical': 'work',
  'work-left': 'work',
  'work-resumed': 'work',
  'work-signed-off': 'work',
  'photo-taken': 'photos',
  skipped: 'notes',
  'oil-seen': 'running',
  'start-tried': 'running',
  'run-in-begun': 'running',
  'run-in-stopped': 'running',
  'running-read': 'running',
  'compression-read': 'running',
  'leakage-read': 'running',
  'service-planned': 'running',
  'service-done': 'running',
  'hours-noted': 'running',
  note: 'notes',
  'struck-out': 'notes',
};

function rowOf(bench: Bench, read: ReadEntry): readonly (RecordRow & { readonly section: SectionKey })[] {
  const { entry, reading, struck } = read;
  if (!reading.understood) return [];
  const words = rowWords(bench, reading.known);
  return [
    {
      section: sectionOf[reading.known.kind],
      what: words.what,
      value: words.value,
      limit: words.limit ?? '',
      origin: words.origin ?? '',
      ...(words.photo && { photo: words.photo }),
      by: entry.person,
      at: shownTime(entry.at),
      entry: entry.id,
      ...(struck && { struck: struck.reason }),
    },
  ];
}

/** What could be decided by now and is not. */
function openDecisions(bench: Bench): readonly string[] {
  const { choices } = readingsOf(bench);
  const taken = ({ id, scope }: Decision) => choices.some((one) => one.decision === id && one.scope === scope);
  return decisionsAt(bench, { length: 'mm' })
    .filter((one) => one.missing.length === 0 && !taken(one))
    .map((one) => `${one.title}: not decided`);
}

/** What is still open, so that a printed record never looks more complete than it is. */
function openWork(bench: Bench): Readonly<Partial<Record<SectionKey, readonly string[]>>> {
  const { heads, joints } = bench.engine;
  const line = (name: string, { finished, progress }: Standing) => (finished ? [] : [`${name}: ${progress.words}`]);
  const tightening = joints.flatMap((joint) => {
    const standing = tighteningStanding(bench, joint);
    return [...line(joint.name, standing), ...standing.skipped.map((text) => `${joint.name}: ${text}`)];
  });
  const parts = partsStanding(bench);
  const measured = measureStanding(bench);
  const valves = valvesStanding(bench);
  return {
    measured: measured.begun ? line('measuring', measured) : [],
    decisions: measured.begun ? openDecisions(bench) : [],
    gasket: heads.flatMap((head) => line(`${head.name}: gasket`, gasketStanding(bench, head))),
    fasteners: joints.flatMap((joint) => line(joint.name, fastenersStanding(bench, joint))),
    tightening,
    parts: parts.parts.length === 0 ? [] : line('parts to their places', parts),
    valves: valves.finished ? [] : [valves.progress.words, ...line('valves after two turns', valves.again)],
  };
}

function chainWords(bench: Bench): string {
  const verdict = verifyChain([...bench.entries.values()]);
  if (verdict.ok)
    return `The chain of every device holds (${verdict.value.devices} ${verdict.value.devices === 1 ? 'device' : 'devices'}).`;
  const broken = verdict.fault.map((one) => `device ${one.device}, entry ${one.counter}: ${one.code}`);
  return `The chain is broken: ${broken.join('; ')}.`;
}

/** An entry of a newer program stays in the record and is named, never dropped. */
function notUnderstood({ entry, reading }: ReadEntry): readonly string[] {
  if (reading.understood) return [];
  const why = { 'unknown-kind': 'an unknown kind', 'newer-version': 'a newer version', unreadable: 'unreadable data' }[
    reading.why
  ];
  return [`${shownTime(entry.at)}, ${entry.person}: "${entry.kind}" version ${entry.version}, ${why}`];
}

/** The whole record as a page shows and prints it. */
export function recordView(bench: Bench): RecordView {
  const rows = bench.state.entries.flatMap((read) => rowOf(bench, read));
  const open = openWork(bench);
  const keys = Object.keys(sectionTitles) as SectionKey[];
  const entries = [...bench.entries.values()];
  return {
    title: `Record of ${bench.engine.name}`,
    invented: bench.engine.invented,
    headCode: headCode(entries),
    chain: chainWords(bench),
    entries: entries.length,
    sections: keys.map((key) => ({
      key,
      title: sectionTitles[key],
      rows: rows.filter((row) => row.section === key).map(({ section, ...row }) => row),
      open: open[key] ?? [],
    })),
    notUnderstood: bench.state.entries.flatMap((read) => notUnderstood(read)),
    cautions: bench.engine.cautions.map((caution) => `Sheet: ${caution.message}`),
  };
}
