/** One feature as a grid of places and stations: what is read, what follows from it, and what is asked for next. */
import type { Assessment, Feature, Instrument, InstrumentKind, Place, Slot, Station } from '../assess/index.js';
import type { Shown } from '../drawing/index.js';
import { assessmentOf } from './assessment.js';
import type { Bench } from './bench.js';
import { gaugesFor, instrumentView } from './instrument-view.js';
import { measureCautions } from './measure-cautions.js';
import type { ShownIn, WorksheetView } from './measure-views.js';
import { sheetAfter, sheetProgress, slotsOf } from './sheet-order.js';
import { shownUnit } from './shown-figures.js';
import { worksheetFigure } from './worksheet-figure.js';
import { rowOf } from './worksheet-row.js';

export interface WorksheetOptions extends Shown {
  readonly shownIn: ShownIn;
  /** Day of the person who looks, `2026-11-25`: a gauge checked on another day is not checked today. */
  readonly today: string;
  /** Slot that the person chose; absent: the first one that is empty. */
  readonly current?: Slot;
  /** Slot whose place is drawn when none is current: the one that was read last. */
  readonly about?: Slot;
  /** Slot read again without seeing the first. */
  readonly hidden?: Slot;
  /** Gauge in hand; absent: the one used last on this sheet, else the first that can read it. */
  readonly instrument?: string;
}

/** The worksheet of a feature; undefined where the engine has no such feature. */
export function worksheetView(bench: Bench, feature: string, options: WorksheetOptions): WorksheetView | undefined {
  const assessment = assessmentOf(bench);
  const found = assessment.plan.features.find((one) => one.kind.id === feature);
  if (found === undefined) return undefined;
  const { kind, places } = found;
  const order = slotsOf(found);
  const isRead = (slot: Slot) => assessment.readings.bySlot.has(slot);
  const progress = sheetProgress(assessment, found);
  const current = options.current ?? order.find((slot) => !isRead(slot));
  const drawn = current ?? options.about;
  const place = places.find((one) => drawn?.startsWith(`${kind.id}/${one.id}/`)) ?? places[0];
  const inHand = gaugeInHand(assessment, found, options.instrument);
  const finished = progress.of > 0 && progress.done === progress.of;
  const after = finished ? sheetAfter(assessment, found) : undefined;
  let figure: WorksheetView['figure'];
  const shown = (one: Instrument) => instrumentView(one, assessment.readings, options.today);
  return {
    feature,
    title: kind.title,
    how: kind.how,
    condition: kind.condition,
    assumed: (assessment.plan.assumptions ?? []).filter((one) => one.feature === kind.id).map(({ words }) => words),
    instrumentKind: kind.instrument,
    ...(inHand && { instrument: shown(inHand) }),
    instruments: gaugesFor(assessment.readings, kind).map(shown),
    unit: inHand?.unit ?? shownUnit(kind.measured, options.shownIn),
    signed: places.some(({ expected }) => (expected?.possible.low ?? (kind.figure === 'protrusion' ? -1 : 0)) < 0),
    columns: columnsOf(places),
    rows: places.map((one) => rowOf(bench, assessment, found, one, options)),
    order,
    ...(current !== undefined && { current }),
    progress,
    finished,
    ...(after && { next: { feature: after.kind.id, title: after.kind.title, optional: after.kind.optional ?? false } }),
    cautions: measureCautions(kind),
    // Drawn when it is looked at: what a person keys by comes first.
    get figure() {
      figure ??= place && worksheetFigure(assessment, found, place, { ...options, ...(current && { current }) });
      return figure;
    },
  };
}

const columns = new WeakMap<readonly Place[], WorksheetView['columns']>();
function columnsOf(places: readonly Place[]): WorksheetView['columns'] {
  const known = columns.get(places);
  if (known !== undefined) return known;
  const made = columnsFor(places);
  columns.set(places, made);
  return made;
}

/** Stations of all places, those with the same id in one column; directions of one height stand under it. */
function columnsFor(places: readonly Place[]): WorksheetView['columns'] {
  const columns = new Map<string, Station>();
  for (const { stations } of places) for (const one of stations) if (!columns.has(one.id)) columns.set(one.id, one);
  const all = [...columns.values()];
  const crossed = new Set(all.map((one) => one.height)).size > 1 && new Set(all.map((one) => one.direction)).size > 1;
  return all.map(({ id, name }) => {
    const comma = name.lastIndexOf(', ');
    return crossed && comma > 0 ? { id, group: name.slice(0, comma), name: name.slice(comma + 2) } : { id, name };
  });
}

function gaugeInHand(assessment: Assessment, feature: Feature, chosen: string | undefined): Instrument | undefined {
  const able = gaugesFor(assessment.readings, feature.kind);
  if (able.length === 0) return undefined;
  const used = slotsOf(feature)
    .flatMap((slot) => assessment.readings.bySlot.get(slot)?.at(-1) ?? [])
    .sort((a, b) => (a.at < b.at ? 1 : -1))[0]?.instrument;
  const usual: InstrumentKind = feature.kind.instrument;
  return able.find((one) => one.id === (chosen ?? used)) ?? able.find((one) => one.kind === usual);
}
