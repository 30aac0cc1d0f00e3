import { done, findUnit, fromUnit, type Outcome, parseQuantity, refused } from '../../quantity/index.js';
import { expectedQuantity } from './expected.js';
import type { CalcFault } from './fault.js';
import { holds } from './range.js';
import { type Place, type ReadValue, wrongShape } from './read-value.js';
import type { QuantityInput } from './spec.js';

type ReadUnit = ReadValue & { readonly unit: string };
type Read = Outcome<ReadUnit, CalcFault>;

/** Reads "4.030 in", "4.030 ±0.0005 in", { "value": 102.36, "unit": "mm" }, and for a ratio a plain number. */
export function readQuantity(place: Place, spec: QuantityInput, raw: unknown): Read {
  const read = readAny(place, spec, raw);
  return read.ok ? inRange(place, spec, read.value) : read;
}

function readAny(place: Place, spec: QuantityInput, raw: unknown): Read {
  if (typeof raw === 'string') return readTyped(place, spec, raw);
  if (typeof raw === 'number') return readBare(place, spec, raw);
  if (typeof raw === 'object' && raw !== null && !Array.isArray(raw)) return readPair(place, spec, raw);
  return wrongShape(place, raw, expectedQuantity(spec));
}

function readTyped(place: Place, spec: QuantityInput, text: string): Read {
  const typed = parseQuantity(spec.kind, text);
  if (!typed.ok) return refused({ ...place, code: 'unreadable', given: text, fault: typed.fault });
  const { value, unit, places, plusMinus } = typed.value;
  return done({ value, text: text.trim(), unit, places, ...(plusMinus !== undefined && { standard: plusMinus }) });
}

/** A number without a unit is a ratio or a fault; it is never guessed. */
function readBare(place: Place, spec: QuantityInput, raw: number): Read {
  if (!Number.isFinite(raw)) return wrongShape(place, raw, expectedQuantity(spec));
  const given = String(raw);
  if (spec.kind === 'ratio') return done({ value: raw, text: given, unit: '', places: placesOf(raw) });
  return refused({ ...place, code: 'unreadable', given, fault: { code: 'unit-missing', kind: spec.kind, given } });
}

const PAIR_FIELDS = ['value', 'unit', 'plusMinus'];

function readPair(place: Place, spec: QuantityInput, raw: object): Read {
  const fields = new Map<string, unknown>(Object.entries(raw));
  const [value, given = spec.kind === 'ratio' ? '' : undefined, plusMinus] = PAIR_FIELDS.map((one) => fields.get(one));
  const strange = [...fields.keys()].some((field) => !PAIR_FIELDS.includes(field));
  const usable = typeof value === 'string' || (typeof value === 'number' && Number.isFinite(value));
  if (strange || !usable || typeof given !== 'string') return wrongShape(place, raw, expectedQuantity(spec));
  if (typeof value === 'string') return readTyped(place, spec, `${value} ${given}`);
  const unit = findUnit(spec.kind, given)?.name;
  if (unit === undefined) {
    return refused({ ...place, code: 'unreadable', given, fault: { code: 'unit-unknown', kind: spec.kind, given } });
  }
  const read = {
    value: fromUnit(spec.kind, value, unit),
    text: `${value} ${unit}`.trim(),
    unit,
    places: placesOf(value),
  };
  if (plusMinus === undefined) return done(read);
  if (typeof plusMinus !== 'number' || !(plusMinus >= 0 && Number.isFinite(plusMinus))) {
    return wrongShape(place, raw, expectedQuantity(spec));
  }
  const standard = fromUnit(spec.kind, plusMinus, unit) - fromUnit(spec.kind, 0, unit);
  return done({ ...read, text: `${value} ±${plusMinus} ${unit}`.trim(), standard });
}

function inRange(place: Place, spec: QuantityInput, read: ReadUnit): Read {
  const { kind, range } = spec;
  if (typeof read.value === 'number' && holds(range, read.value)) return done(read);
  // Limits in the unit that was typed, so that both can be compared at a glance.
  return refused({ ...place, code: 'out-of-range', given: read.text, range, kind, unit: read.unit });
}

const placesOf = (value: number): number => /\.(\d+)$/.exec(String(value))?.[1]?.length ?? 0;
