/** The record of one job: every value, limit and its source, who and when, section by section; struck lines stay. */
import { type EntryKind, headCode, type ReadEntry, verifyChain } from '../record/index.js';
import { type Bench, shownTime } from './bench.js';
import { fastenersView } from './fasteners-view.js';
import { gasketView } from './gasket-view.js';
import { partsView } from './parts-view.js';
import { rowWords } from './record-rows.js';
import { tightenView } from './tighten-view.js';
import { valvesView } from './valves-view.js';
import type { RecordRow, RecordView } from './views.js';

type SectionKey = 'sheet' | 'gasket' | 'fasteners' | 'tightening' | 'parts' | 'valves' | 'notes';
const sectionTitles: Readonly<Record<SectionKey, string>> = {
  sheet: 'The engine and its sheet',
  gasket: 'Head gaskets, as checked',
  fasteners: 'Fasteners, hole by hole',
  tightening: 'Tightening, act by act',
  parts: 'Lifters, pushrods, rockers and their places',
  valves: 'Valves, as set',
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
  skipped: 'notes',
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
      by: entry.person,
      at: shownTime(entry.at),
      entry: entry.id,
      ...(struck && { struck: struck.reason }),
    },
  ];
}

/** What is still open, so that a printed record never looks more complete than it is. */
function openWork(bench: Bench): Readonly<Partial<Record<SectionKey, readonly string[]>>> {
  const { engine } = bench;
  const gasket = engine.heads.flatMap((head) => {
    const view = gasketView(bench, head.id);
    return view === undefined || view.finished ? [] : [`${view.title}: ${view.progress.words}`];
  });
  const fasteners = engine.joints.flatMap((joint) => {
    const view = fastenersView(bench, joint.id);
    return view === undefined || view.finished ? [] : [`${joint.name}: ${view.progress.words}`];
  });
  const tightening = engine.joints.flatMap((joint) => {
    const view = tightenView(bench, joint.id);
    if (view === undefined) return [];
    const left = view.finished ? [] : [`${joint.name}: ${view.progress.done} of ${view.progress.of} acts done`];
    return [...left, ...view.skipped.map((text) => `${joint.name}: ${text}`)];
  });
  const parts = partsView(bench);
  const valves = valvesView(bench);
  return {
    gasket,
    fasteners,
    tightening,
    parts: parts.finished || parts.parts.length === 0 ? [] : [`parts to their places: ${parts.progress.words}`],
    valves: valves.finished ? [] : [valves.progress.words, `valves after two turns: ${valves.recheck.progress.words}`],
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
