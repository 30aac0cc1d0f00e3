/** The measuring of the demonstration, entry by entry: gauges, temperature, readings with one slip, a second look, the checks after. */
import { type Feature, inspectionPlan, type Measured, type Place } from '@gudgeon/core/assess';
import type { Engine } from '@gudgeon/core/engine';
import { toUnit } from '@gudgeon/core/quantity';
import { typedReading } from '@gudgeon/core/workbench';
import type { Said } from './sealer.js';
import { GAUGES, type Gauge, READ_SHEETS, type ReadSheet } from './worksheets.js';

/** A digit turned round at the gauge, noticed when the next height did not fit. */
const SLIP = { slot: 'cylinder-bore/3/middle-thrust', off: 0.018, reason: 'two digits turned round' };
/** Read twice, because the clearance came out close to its limit. */
const SECOND_LOOK = 'main-journal/main-4/front-a';

/** All that was said about measuring, in the order of walking round the engine. */
export function measuredStory(engine: Engine, chance: () => number): readonly Said[] {
  const plan = inspectionPlan(engine);
  const read = READ_SHEETS.flatMap((sheet) => {
    const feature = plan.features.find(({ kind }) => kind.id === sheet.feature);
    return feature === undefined ? [] : readSheet(feature, sheet, chance);
  });
  return [
    ...GAUGES.map(kept),
    ...GAUGES.flatMap((gauge) => checked(gauge, 'start')),
    {
      kind: 'temperature-noted',
      data: { room: typed('temperature', '19.5 °C'), part: typed('temperature', '19.5 °C') },
    },
    ...read,
    ...GAUGES.flatMap((gauge) => checked(gauge, 'end')),
  ];
}

/** A figure as a person keys it, with what it means. */
function typed(kind: Measured | 'temperature', text: string) {
  const read = typedReading(kind, text);
  if (!read.ok) throw new Error(`The demonstration has an unreadable figure: ${read.fault}`);
  return read.value;
}

function kept({ id, name, kind, measured, unit, step, range: [low, high], expanded }: Gauge): Said {
  const figures = {
    resolution: typed(measured, step),
    low: typed(measured, low),
    high: typed(measured, high),
    ...(expanded !== undefined && { expanded: typed(measured, expanded) }),
  };
  return { kind: 'instrument-kept', data: { id, name: `${name} (invented)`, kind, measured, unit, ...figures } };
}

function checked({ id, measured, standard }: Gauge, moment: 'start' | 'end'): readonly Said[] {
  if (standard === undefined) return [];
  const [held, before, after] = standard;
  const reading = typed(measured, moment === 'start' ? before : after);
  return [{ kind: 'instrument-checked', data: { instrument: id, moment, standard: typed(measured, held), reading } }];
}

function readSheet(feature: Feature, sheet: ReadSheet, chance: () => number): readonly Said[] {
  const gauge = GAUGES.find(({ id }) => id === sheet.gauge);
  if (gauge === undefined) return [];
  const places = feature.places.filter(({ id }) => sheet.only?.(id) ?? true);
  return places.flatMap((place) => {
    const part = usualAt(sheet, place) + apart(sheet.between, chance);
    return place.stations.flatMap(({ id }) => {
      const slot = `${feature.kind.id}/${place.id}/${id}`;
      const value = part + (sheet.at?.[id] ?? 0) + apart(sheet.within, chance);
      const worn = sheet.worn?.[place.id] !== undefined;
      return takenAt(slot, Math.max(value, 0), gauge).map((said) => ({ ...said, worn }));
    });
  });
}

function usualAt({ usual, worn }: ReadSheet, { id, valve }: Place): number {
  const figure = typeof usual === 'number' ? usual : usual[valve?.kind ?? 'intake'];
  return figure + (worn?.[id] ?? 0);
}
const apart = (most: number, chance: () => number): number => most * (2 * chance() - 1);

/** What stands in the log about one slot: mostly one reading. */
function takenAt(slot: string, value: number, gauge: Gauge): readonly Said[] {
  const right = reading(slot, value, gauge);
  if (slot === SLIP.slot)
    return [
      reading(slot, value + SLIP.off, gauge),
      { kind: 'struck-out', data: { reason: SLIP.reason }, strikesLast: true },
      right,
    ];
  if (slot === SECOND_LOOK) return [right, { ...right, data: { ...right.data, repeat: true } }];
  return [right];
}

function reading(slot: string, value: number, { id, measured, unit, step }: Gauge) {
  const text = stepped(value, typed(measured, step).value, measured, unit);
  const data = { slot, occasion: 1, reading: typed(measured, text), repeat: false, source: 'keyed', instrument: id };
  return { kind: 'measured', data } as const;
}

/** To the nearest step of the gauge, with as many places as it shows. */
function stepped(value: number, step: number, measured: Measured, unit: string): string {
  const one = toUnit(measured, step, unit);
  const places = Math.max(0, Math.ceil(-Math.log10(one) - 1e-9));
  const figure = Math.round(value / one) * one;
  return `${figure.toFixed(places)} ${unit}`;
}
