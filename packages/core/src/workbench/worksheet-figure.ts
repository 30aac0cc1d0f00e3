/** The drawing of one place of a worksheet: what is known at each of its stations. */
import type { Assessment, Feature, Finding, Place, Slot, SlotReading } from '../assess/index.js';
import { type Figure, measuringFigure, type ReadingState, type Shown, type StationShown } from '../drawing/index.js';
import { findingsAt } from './assessment.js';
import { deciding, worstVerdict } from './finding-view.js';
import { slotAt } from './slot-names.js';

/** Findings of a place about the sizes that its own readings form. */
export function findingsOf(assessment: Assessment, feature: Feature, place: Place): readonly Finding[] {
  const { findings } = assessment;
  const known = ranks.get(place);
  if (known?.count === findings.length) return known.at.map((at) => findings[at]!);
  const found = feature.kind.sizes.flatMap((rule) => findingsAt(assessment, rule.property, place.id));
  ranks.set(place, { count: findings.length, at: found.map((one) => findings.indexOf(one)) });
  return found;
}
/** Where they stand among all findings of a plan; the same for every moment of it. */
const ranks = new WeakMap<Place, { readonly count: number; readonly at: readonly number[] }>();

/** A finding rests on a reading when its size would change with it. */
const restsOn = (finding: Finding, slot: Slot): boolean =>
  finding.size?.parts.some((part) => part.key === slot && part.sensitivity !== 0) ?? false;

/** Whether the readings of a slot contradict each other, as the findings that rest on it say. */
export function disagrees(readings: readonly SlotReading[], findings: readonly Finding[], slot: Slot): boolean {
  const unlike = readings.some((one) => one.value !== readings[0]?.value);
  return unlike && findings.some((one) => one.verdict === 'check again' && restsOn(one, slot));
}

function stateOf(findings: readonly Finding[], readings: readonly SlotReading[], slot: Slot): ReadingState {
  if (readings.length === 0) return 'empty';
  if (disagrees(readings, findings, slot)) return 'disagrees';
  const verdicts = findings.filter((one) => restsOn(one, slot) && one.held.length > 0).map((one) => one.verdict);
  const worst = worstVerdict(verdicts);
  return worst === 'in' || worst === 'near' || worst === 'out' ? worst : 'read';
}

interface Looked extends Shown {
  readonly current?: Slot;
  /** Slot that is read again without seeing what was read first. */
  readonly hidden?: Slot;
}
/** Figure as keyed, without its unit: the unit stands beside the sheet. */
const digits = (text: string): string => text.replace(/\s.*$/, '');

export function worksheetFigure(assessment: Assessment, feature: Feature, place: Place, looked: Looked): Figure {
  const findings = findingsOf(assessment, feature, place);
  const stations = place.stations.map((station): StationShown => {
    const slot = slotAt(feature, place, station);
    const readings = assessment.readings.bySlot.get(slot) ?? [];
    const { id: _, ...shown } = { ...station, slot };
    if (slot === looked.hidden) return { ...shown, state: 'read' };
    const state = stateOf(findings, readings, slot);
    const nearEnd = findings.find((one) => one.verdict === 'near' && restsOn(one, slot));
    const end = nearEnd && deciding(nearEnd)?.nearEnd;
    const text = readings.at(-1)?.text;
    return { ...shown, state, ...(text !== undefined && { text: digits(text) }), ...(end && { nearEnd: end }) };
  });
  const bores = assessment.engine.layout.cylinders.filter((one) => one.bank === place.bank).length;
  return measuringFigure(
    {
      figure: feature.kind.figure,
      title: `${capital(feature.kind.one)}, ${place.name}`,
      stations,
      ...(bores > 0 && { bores }),
      ...(looked.current !== undefined && { current: looked.current }),
    },
    looked,
  );
}
const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
