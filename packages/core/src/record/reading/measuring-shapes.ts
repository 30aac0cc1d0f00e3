/** The shape of what is recorded about measuring and deciding, version 1. */
import type {
  GaugeKind,
  MeasuredKind,
  MeasuringData,
  RecordedOrder,
  RecordedPurchase,
  RecordedWindow,
} from '../measuring-data.js';
import { count, filledText, finite, type Guard, listOf, object, oneOf, optional, text, truth } from './guards.js';
import { NAME, name, reading, reason, WORDS } from './pieces.js';

/** Three names and two strokes between them. */
const slot = filledText(3 * NAME + 2);
const LINES = 200;
const FIGURES = 100;
const PLACES = 200;
const ANSWERS = 20;
const NOTES = 50;
const LINE = 500;

const line = text(LINE);
const measured: Guard<MeasuredKind> = oneOf('length', 'volume', 'mass', 'force', 'angle', 'torque');
const gauge: Guard<GaugeKind> = oneOf(
  'outside-micrometer',
  'bore-gauge',
  'small-bore-gauge',
  'depth-micrometer',
  'dial-indicator',
  'height-gauge',
  'straightedge-and-feeler',
  'feeler-gauge',
  'caliper',
  'burette',
  'scale',
  'spring-tester',
  'gauging-strip',
  'protractor',
  'radius-gauge',
  'ultrasonic-gauge',
  'torque-wrench',
);
const window: Guard<RecordedWindow> = object<RecordedWindow>({ low: optional(finite), high: optional(finite) });
const placeTarget: Guard<NonNullable<RecordedOrder['targets']>[number]> = object({
  place: name,
  window,
  fittedTo: optional(line),
});
const order: Guard<RecordedOrder> = object<RecordedOrder>({
  id: name,
  operation: line,
  part: line,
  property: optional(name),
  places: listOf(name, PLACES),
  target: optional(window),
  measured: optional(measured),
  targets: optional(listOf(placeTarget, PLACES)),
  finish: optional(line),
  fittedTo: optional(line),
  with: optional(line),
  notes: listOf(line, NOTES),
});
const purchase: Guard<RecordedPurchase> = object<RecordedPurchase>({
  part: line,
  partNumber: optional(text(NAME)),
  size: line,
  count,
  for: line,
});

export const MEASURING_SHAPES: { readonly [K in keyof MeasuringData]: Guard<MeasuringData[K]> } = {
  measured: object<MeasuringData['measured']>({
    slot,
    occasion: count,
    reading,
    repeat: truth,
    source: oneOf('keyed', 'gauge', 'table'),
    instrument: optional(name),
    temperature: optional(reading),
    answered: optional(listOf(filledText(LINE), ANSWERS)),
  }),
  'instrument-kept': object<MeasuringData['instrument-kept']>({
    id: name,
    name,
    kind: gauge,
    measured,
    unit: name,
    resolution: reading,
    low: optional(reading),
    high: optional(reading),
    expanded: optional(reading),
    gripLength: optional(reading),
    certified: optional(name),
  }),
  'instrument-checked': object<MeasuringData['instrument-checked']>({
    instrument: name,
    moment: oneOf('start', 'between', 'end'),
    standard: reading,
    reading,
  }),
  'temperature-noted': object<MeasuringData['temperature-noted']>({
    room: optional(reading),
    part: optional(reading),
    about: optional(name),
  }),
  'work-returned': object<MeasuringData['work-returned']>({
    feature: name,
    places: listOf(name, PLACES),
    why: reason,
  }),
  decided: object<MeasuringData['decided']>({
    decision: name,
    scope: name,
    alternative: name,
    words: text(WORDS),
    figures: listOf(object({ name: line, text: line }), FIGURES),
    orders: listOf(order, LINES),
    buys: listOf(purchase, LINES),
    reason,
  }),
};
