/** A measured gap or shim against what the sheet prints: before it is recorded (gate) and after (verdict). */
import { slipWords } from '../assess/index.js';
import type { Engine, ValveId, Window } from '../engine/index.js';
import { formatQuantity, type Length, parseQuantity, type Typed } from '../quantity/index.js';
import type { Reading } from '../record/index.js';
import { gapWords, printedGap } from './valve-ask.js';
import type { GapVerdict, NumberGate } from './views.js';

type LengthUnit = 'mm' | 'in';
const placesOf = (unit: LengthUnit): number => (unit === 'mm' ? 3 : 4);
const shown = (length: number, unit: LengthUnit): string => formatQuantity('length', length, unit, placesOf(unit));

/** A keyed length as the log keeps it; undefined where it cannot be read. */
export function lengthReading(text: string): Reading | undefined {
  const typed = parseQuantity('length', text);
  return typed.ok ? { text, value: typed.value.value, unit: 'm' } : undefined;
}

/** Half of the last place keyed: a reading is known no closer than that. */
const half = ({ places, unit }: Pick<Typed, 'places' | 'unit'>): number =>
  (10 ** -places * (unit === 'in' ? 0.0254 : 0.001)) / 2;

/**
 * A gap against the printed window of its condition. Inclusive ends. `near` when half of the last place keyed reaches over an
 * end: the true gap may then lie outside. A single printed figure has no window, so only the same figure is `in`.
 * No printed figure or an unreadable text gives `no-data`.
 */
export function judgeGap(engine: Engine, valve: ValveId, condition: 'cold' | 'hot', text: string): GapVerdict {
  const printed = printedGap(engine, valve.kind, condition);
  const typed = parseQuantity('length', text);
  if (!typed.ok || printed === undefined) {
    const limit = `no ${condition} gap in the sheet for ${valve.kind} valves`;
    return { state: 'no-data', value: text, limit };
  }
  const unit: LengthUnit = typed.value.unit === 'in' ? 'in' : 'mm';
  const limit = `asked for ${printed.text} ${condition}, from: ${printed.from.text}`;
  return { value: text, limit, ...against(typed.value.value, half(typed.value), printed.window, unit) };
}

function against(
  value: number,
  step: number,
  { low, high }: Window<Length>,
  unit: LengthUnit,
): Pick<GapVerdict, 'state' | 'distance' | 'nearEnd'> {
  const dust = 1e-9;
  if (low !== undefined && value < low - dust)
    return { state: 'out', distance: `${shown(low - value, unit)} too tight`, nearEnd: 'low' };
  if (high !== undefined && value > high + dust)
    return { state: 'out', distance: `${shown(value - high, unit)} too wide`, nearEnd: 'high' };
  if (low !== undefined && low === high) return { state: 'in', distance: 'the printed figure itself' };
  const [above, below] = [
    low === undefined ? Number.POSITIVE_INFINITY : value - low,
    high === undefined ? Number.POSITIVE_INFINITY : high - value,
  ];
  const nearEnd = above <= below ? 'low' : 'high';
  const nearest = Math.max(0, Math.min(above, below));
  const distance = `${shown(nearest, unit)} from the ${nearEnd === 'low' ? 'tight' : 'wide'} end`;
  return nearest < step - dust ? { state: 'near', distance, nearEnd } : { state: 'in', distance };
}

/** What a gap or a shim can be at all [m]: beyond it nothing fits between cam and valve. */
const POSSIBLE = { gap: 5e-3, shim: 10e-3 } as const;

function hintFor(typed: Typed, { low = 0 as Length, high }: Window<Length>, unit: LengthUnit): string | undefined {
  if (high === undefined) return undefined;
  return slipWords('length', typed, { middle: (low + high) / 2, within: (high - low) / 2 }, placesOf(unit));
}

/**
 * Judges a reading before it is recorded. `expected` is what such a part usually measures here (for a gap as found: from
 * nothing to a few times the wanted gap). The slip that would explain it is named: a point, a unit, a digit.
 */
export function lengthGate(what: 'gap' | 'shim', text: string, expected: Window<Length>, unit: LengthUnit): NumberGate {
  const typed = parseQuantity('length', text);
  if (!typed.ok) return { level: 'impossible', reason: `${text} cannot be read as a length.` };
  const value = typed.value.value;
  if (value < 0) return { level: 'impossible', reason: `A ${what} cannot be less than nothing.` };
  if (value > POSSIBLE[what])
    return {
      level: 'impossible',
      reason: `${text}: a ${what} is never more than ${shown(POSSIBLE[what], unit)}. Key it again.`,
    };
  const inside = value >= (expected.low ?? 0) && value <= (expected.high ?? Number.POSITIVE_INFINITY);
  if (inside) return { level: 'fine' };
  const hint = hintFor(typed.value, expected, unit);
  return { level: 'unlikely', expected: gapWords(expected, unit), ...(hint !== undefined && { hint }) };
}

/** What a gap of this valve usually is: from closed to three times the widest printed gap. */
export function usualGap(engine: Engine, valve: ValveId): Window<Length> {
  const highs = (['cold', 'hot'] as const).flatMap((condition) => {
    const { low, high } = printedGap(engine, valve.kind, condition)?.window ?? {};
    return [high ?? low ?? []].flat();
  });
  return highs.length === 0 ? {} : { low: 0 as Length, high: (3 * Math.max(...highs)) as Length };
}

/** What a shim of this engine usually is: the printed stock, with a little worn off the thinnest. */
export function usualShim(engine: Engine): Window<Length> {
  const stock = engine.valveGear?.shims;
  if (stock === undefined) return {};
  const { thinnest, thickest, step } = stock;
  return { low: (thinnest.value - step.value) as Length, high: (thickest.value + step.value) as Length };
}
