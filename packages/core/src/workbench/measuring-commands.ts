/** From what a person keys, reads or chooses under Measure and Fit to entries of the log. */
import type { Decision, InstrumentKind, Measured, Slot } from '../assess/index.js';
import { describeFault, done, type Outcome, parseQuantity, refused } from '../quantity/index.js';
import { type EntryData, placeOfSlot, type Reading } from '../record/index.js';
import type { Bench } from './bench.js';
import { SI_UNITS } from './measuring-rules.js';
import { type Proposal, propose } from './propose.js';
import { gateQuestion, judgeKeyed, type Keying } from './reading-gate.js';
import { readingsOf } from './readings.js';
import { slotsOf } from './slot-names.js';

type DecimalMark = Keying['decimalMark'];

/** A typed figure as the log keeps it: the text, and its value in the SI unit. */
export function typedReading(
  measured: Measured | 'temperature',
  text: string,
  decimalMark?: DecimalMark,
): Outcome<Reading, string> {
  const read = parseQuantity(measured, text, decimalMark === undefined ? {} : { decimalMark });
  if (!read.ok) return refused(describeFault(read.fault));
  return done({
    text: text.trim(),
    value: read.value.value,
    unit: measured === 'temperature' ? 'K' : SI_UNITS[measured],
  });
}

export interface MeasuredWish extends Keying {
  readonly slot: Slot;
  /** As keyed or as the gauge sent it, with the unit. */
  readonly text: string;
  readonly source: EntryData['measured']['source'];
  readonly repeat?: boolean;
  /** Of the part, as typed, where it was taken with this reading. */
  readonly temperature?: string;
  /** Questions of the gate that were answered with yes. */
  readonly answered?: readonly string[];
}

/** Number of the occasion that counts now for a slot: 1 as found, one more for each time its place came back from work. */
export function occasionOf(bench: Bench, slot: Slot): number {
  return readingsOf(bench).occasions.get(placeOfSlot(slot) ?? '') ?? 1;
}

/** The entries for a reading. What the gate asks about is refused with its question until that is among the answered ones. */
export function proposeMeasured(bench: Bench, wish: MeasuredWish): Proposal {
  const at = slotsOf(bench.engine).get(wish.slot);
  if (at === undefined) return refused(`"${wish.slot}" is nothing to measure on this engine.`);
  const gate = judgeKeyed(bench, wish.slot, wish.text, wish);
  if (gate.level === 'impossible') return refused(gate.reason);
  const question = gateQuestion(wish.text, gate);
  if (question !== undefined && !wish.answered?.includes(question)) return refused(question);
  const reading = typedReading(at.feature.kind.measured, wish.text, wish.decimalMark);
  if (!reading.ok) return reading;
  const temperature = wish.temperature === undefined ? undefined : typedReading('temperature', wish.temperature);
  if (temperature !== undefined && !temperature.ok) return temperature;
  return propose(bench, {
    kind: 'measured',
    data: {
      slot: wish.slot,
      occasion: occasionOf(bench, wish.slot),
      reading: reading.value,
      repeat: wish.repeat ?? false,
      source: wish.source,
      ...(wish.instrument !== undefined && { instrument: wish.instrument }),
      ...(temperature && { temperature: temperature.value }),
      ...(question !== undefined && { answered: [question] }),
    },
  });
}

export interface InstrumentWish {
  readonly id: string;
  readonly name: string;
  readonly kind: InstrumentKind;
  readonly measured: Measured;
  readonly unit: string;
  /** Figures as typed, with their unit. */
  readonly resolution: string;
  readonly low?: string;
  readonly high?: string;
  readonly expanded?: string;
  /** Torque wrench: from the middle of the grip to the square drive, as typed. */
  readonly gripLength?: string;
  /** Day of the last certificate, year-month-day. */
  readonly certified?: string;
}

/** The first of several texts that cannot be read, or all of them read. */
function allRead<K extends string>(
  texts: Readonly<Partial<Record<K, string | undefined>>>,
  measured: Measured | 'temperature',
): Outcome<Partial<Record<K, Reading>>, string> {
  const read: Partial<Record<K, Reading>> = {};
  for (const [name, text] of Object.entries(texts) as [K, string | undefined][]) {
    if (text === undefined) continue;
    const reading = typedReading(measured, text);
    if (!reading.ok) return refused(`${name}: ${reading.fault}`);
    read[name] = reading.value;
  }
  return done(read);
}

/** The entries that keep a gauge of the person, or change what is known of it. */
export function proposeInstrument(bench: Bench, wish: InstrumentWish): Proposal {
  const { id, name, kind, measured, unit, resolution, low, high, expanded, gripLength, certified } = wish;
  const step = typedReading(measured, resolution);
  if (!step.ok) return refused(`resolution: ${step.fault}`);
  const figures = allRead({ low, high, expanded }, measured);
  if (!figures.ok) return figures;
  const lengths = allRead({ gripLength }, 'length');
  if (!lengths.ok) return lengths;
  const day = certified === undefined ? {} : { certified };
  const data = { id, name, kind, measured, unit, resolution: step.value, ...figures.value, ...lengths.value, ...day };
  return propose(bench, { kind: 'instrument-kept', data });
}

/** The entries for a standard read with a gauge. */
export function proposeCheck(
  bench: Bench,
  wish: {
    readonly instrument: string;
    readonly moment: EntryData['instrument-checked']['moment'];
    readonly standard: string;
    readonly reading: string;
  },
): Proposal {
  const measured = readingsOf(bench).instruments.get(wish.instrument)?.measured ?? 'length';
  const standard = typedReading(measured, wish.standard);
  if (!standard.ok) return refused(`standard: ${standard.fault}`);
  const reading = typedReading(measured, wish.reading);
  if (!reading.ok) return refused(`reading: ${reading.fault}`);
  const { instrument, moment } = wish;
  return propose(bench, {
    kind: 'instrument-checked',
    data: { instrument, moment, standard: standard.value, reading: reading.value },
  });
}

/** The entries for a temperature; it holds for what is measured after it. */
export function proposeTemperature(
  bench: Bench,
  wish: { readonly room?: string; readonly part?: string; readonly about?: string },
): Proposal {
  const { room, part, about } = wish;
  const figures = allRead({ room, part }, 'temperature');
  if (!figures.ok) return figures;
  return propose(bench, {
    kind: 'temperature-noted',
    data: { ...figures.value, ...(about !== undefined && { about }) },
  });
}

/** The entries for work that came back: what is measured at these places from here on is another occasion. */
export const proposeReturned = (bench: Bench, data: EntryData['work-returned']): Proposal =>
  propose(bench, { kind: 'work-returned', data });

export interface ChoiceWish {
  readonly decision: string;
  readonly scope: string;
  readonly alternative: string;
  readonly reason: string;
}
/** The entries for a decision, with words, figures, orders and purchases as the person saw them in `seen`. */
export function proposeDecided(bench: Bench, seen: readonly Decision[], wish: ChoiceWish): Proposal {
  const shown = seen.find((one) => one.id === wish.decision && one.scope === wish.scope);
  const chosen = shown?.alternatives.find((one) => one.id === wish.alternative);
  if (chosen === undefined) return refused('That alternative is not among those shown.');
  const { words, figures, orders, buys } = chosen;
  return propose(bench, { kind: 'decided', data: { ...wish, words, figures, orders, buys } });
}
