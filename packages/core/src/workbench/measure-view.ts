/** All there is to measure on an engine: by area, with progress and worst verdict, and where to go on. */
import type { Area, Assessment, Feature, Slot, VerdictWord } from '../assess/index.js';
import { assessmentOf } from './assessment.js';
import type { Bench } from './bench.js';
import { worstVerdict } from './finding-view.js';
import { instrumentView } from './instrument-view.js';
import { beforeMeasuring, measureCautions } from './measure-cautions.js';
import type { MeasureView, SheetRow } from './measure-views.js';
import { readingsOf } from './readings.js';
import { sheetProgress } from './sheet-order.js';
import { slotName, slotsOf } from './slot-names.js';
import type { Standing } from './standings.js';
import type { Progress } from './views.js';
import { findingsOf } from './worksheet-figure.js';

const AREAS: Readonly<Record<Area, string>> = {
  block: 'Block',
  crankshaft: 'Crankshaft',
  rods: 'Connecting rods',
  pistons: 'Pistons and pins',
  rings: 'Rings',
  camshaft: 'Camshaft',
  followers: 'Followers, pushrods, rockers',
  heads: 'Heads',
  valves: 'Valves, guides, seats',
  springs: 'Valve springs',
  assembly: 'On the assembled engine',
};
export const areaTitle = (area: Area): string => AREAS[area];

/** How far measuring is, without judging anything: for lists of many engines. Looks and cross-checks do not count. */
export function measureStanding(bench: Bench): Standing & { readonly begun: boolean } {
  const { bySlot } = readingsOf(bench);
  const slots = [...slotsOf(bench.engine).values()].filter(({ feature }) => !feature.kind.optional);
  const done = slots.filter(({ slot }) => bySlot.has(slot)).length;
  const progress = { done, of: slots.length, words: `${done} of ${slots.length} readings taken` };
  return { progress, finished: done === slots.length, begun: done > 0 };
}

/** Measuring as a whole. `today`: day of the person who looks. */
export function measureView(bench: Bench, { today }: { readonly today: string }): MeasureView {
  const assessment = assessmentOf(bench);
  const { plan, readings } = assessment;
  const rows = plan.features.map((feature) => ({ feature, row: sheetRow(assessment, feature) }));
  const instruments = [...readings.instruments.values()].map((one) => instrumentView(one, readings, today));
  const temperature = temperatureNoted(bench);
  const needed = rows.map(({ row }) => row).filter((row) => !row.optional);
  const next = nextSheet(needed);
  return {
    title: 'Measure',
    areas: (Object.keys(AREAS) as Area[]).flatMap((area) => {
      const sheets = rows.filter(({ feature }) => feature.kind.area === area).map(({ row }) => row);
      if (sheets.length === 0) return [];
      const begun = sheets.filter((sheet) => sheet.progress.done > 0);
      const decided = sheets.filter((sheet) => !sheet.optional);
      const progress = total((decided.length > 0 ? decided : sheets).map((sheet) => sheet.progress));
      return [{ area, title: AREAS[area], sheets, progress, verdict: worstVerdict(begun.map((one) => one.verdict)) }];
    }),
    before: beforeMeasuring({
      temperature: temperature !== undefined,
      gauges: instruments.length > 0,
      unchecked: instruments.filter((one) => !one.checked).map((one) => one.name),
    }),
    ...(temperature !== undefined && { temperature }),
    instruments,
    ...(next && { next }),
    again: readAgain(bench, assessment),
    progress: total(needed.map((row) => row.progress)),
    missing: [
      ...plan.missing.map(({ feature, why }) => `${feature.replaceAll('-', ' ')}: ${why}`),
      ...(plan.assumptions ?? []).map(({ words }) => words),
    ],
    cautions: measureCautions(),
  };
}

function sheetRow(assessment: Assessment, feature: Feature): SheetRow {
  const progress = sheetProgress(assessment, feature);
  const { id, title, vanishes = false, optional = false } = feature.kind;
  const verdict = progress.done === 0 ? 'no data' : verdictOf(assessment, feature);
  return { feature: id, title, progress, finished: progress.done === progress.of, verdict, vanishes, optional };
}
/** A size without any printed limit says nothing about good or bad, so it takes no part while another one does. */
function verdictOf(assessment: Assessment, feature: Feature): VerdictWord {
  const findings = feature.places.flatMap((place) => findingsOf(assessment, feature, place));
  const judged = findings.filter((one) => one.size === undefined || one.held.length > 0);
  return worstVerdict(judged.map((one) => one.verdict));
}

/** What the strip-down destroys comes first, then the sheet under way, then the next empty one. */
function nextSheet(rows: readonly SheetRow[]): MeasureView['next'] {
  const open = rows.filter((row) => !row.finished);
  const row = open.find((one) => one.vanishes) ?? open.find((one) => one.progress.done > 0) ?? open[0];
  return row && { feature: row.feature, words: `${row.title}: ${row.progress.words}` };
}

const total = (parts: readonly Progress[]): Progress => {
  const [done, of] = [parts.reduce((sum, one) => sum + one.done, 0), parts.reduce((sum, one) => sum + one.of, 0)];
  return { done, of, words: `${done} of ${of} readings taken` };
};

/** Readings on which an undecided verdict hangs most, the largest share of a doubt first; each once. */
export function readAgain(bench: Bench, { findings }: Assessment): MeasureView['again'] {
  const seen = new Set<Slot>();
  return [...findings]
    .flatMap((finding) => (finding.again ? [{ finding, again: finding.again }] : []))
    .sort((a, b) => b.again.share - a.again.share)
    .flatMap(({ finding, again }) => {
      if (seen.has(again.key)) return [];
      seen.add(again.key);
      const share = Math.round(again.share * 100);
      return [
        {
          slot: again.key,
          feature: again.key.split('/')[0] ?? '',
          words: `${slotName(bench.engine, again.key)}: ${share} % of the doubt of ${finding.title}, ${finding.placeName}`,
        },
      ];
    });
}

/** The newest temperature that stands in the record, in words. */
function temperatureNoted(bench: Bench): string | undefined {
  const last = bench.state.entries.findLast(
    ({ reading, struck }) => struck === undefined && reading.understood && reading.known.kind === 'temperature-noted',
  );
  if (!last?.reading.understood || last.reading.known.kind !== 'temperature-noted') return undefined;
  const { room, part } = last.reading.known.data;
  return [room && `room ${room.text}`, part && `parts ${part.text}`].filter(Boolean).join(', ');
}
