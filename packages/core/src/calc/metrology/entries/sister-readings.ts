import { formatQuantity, fromUnit, type QuantityKind } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { median } from '../repeats.js';
import { likeness, readAlike, type Slip, slipsOf } from '../slips.js';

const LONGEST = 60;
const readAny = (text: string): string | undefined =>
  text.length <= LONGEST && readAlike([text]) ? text.trim() : undefined;
const value = {
  kind: 'text',
  expected: 'a value with its unit, such as "57.93 mm" or "148 psi"',
  read: readAny,
} as const;

const WORDS: Readonly<Record<Slip['code'], string>> = {
  unit: 'the number fits in another unit',
  'decimal-point': 'the decimal point may be off',
  'digits-swapped': 'two digits may be swapped',
  'digit-missing': 'a digit may be missing',
  'digit-too-many': 'a digit may be too many',
};

export const sisterReadings = defineCalculation({
  id: 'metrology.sister-readings',
  subject: 'metrology',
  title: 'Is a reading like its sisters, or a slip?',
  summary: 'Compares a reading with those of like parts, and says which slip of the pen would explain it.',
  inputs: {
    reading: { ...value, symbol: 'x', meaning: 'reading to be checked, of any kind of quantity' },
    sisters: { ...value, symbol: 's', meaning: 'readings of the same size on like parts, two or more', list: true },
    allowance: {
      ...value,
      symbol: 'a',
      meaning: 'how far it may be from their middle; left out: three times their range and two of the last place',
      optional: true,
    },
  },
  outputs: {
    verdict: { kind: 'text', symbol: 'verdict', meaning: 'alike, or check again' },
    middle: { kind: 'text', symbol: 'x̃', meaning: 'middle of the sisters' },
    apart: { kind: 'text', symbol: 'Δ', meaning: 'reading less middle' },
    allowed: { kind: 'text', symbol: 'a', meaning: 'how far it may be' },
    suspicions: { kind: 'text', symbol: 'slip', meaning: 'slips that would explain it', list: true },
    candidates: { kind: 'text', symbol: 'x?', meaning: 'what the reading would have been, slip by slip', list: true },
  },
  formula: '|x − x̃| ≤ a; slips tried: unit, decimal point, two digits swapped, a digit missing or too many',
  assumptions: ['Parts that are made alike. A candidate is a question to the person, never a correction.'],
  sources: ['shop-practice'],
  example: {
    inputs: { reading: '57.93 mm', sisters: ['57.39 mm', '57.40 mm', '57.39 mm', '57.38 mm'] },
    outputs: { verdict: 'check again', candidates: ['57.39 mm'], suspicions: ['two digits may be swapped'] },
    from: 'invented figures',
  },
  compute: (v) => {
    if (v.sisters.length < 2) return conflict(['sisters'], 'two sisters or more are needed');
    const asked = v.allowance === undefined ? [] : [v.allowance];
    const read = readAlike([v.reading, ...v.sisters, ...asked]);
    if (!read) return conflict(['reading', 'sisters'], 'they are not of one kind of quantity');
    const { kind } = read;
    const reading = read.typed[0]!;
    const sisters = read.typed.slice(1, 1 + v.sisters.length);
    const middle = median(sisters.map((one) => one.value));
    // An allowance is a width: on a scale with a zero of its own (°C) the zero must not count.
    const given = v.allowance === undefined ? undefined : read.typed[read.typed.length - 1]!;
    const allowed = given ? given.value - fromUnit(kind, 0, given.unit) : likeness(kind, reading, sisters);
    const alike = Math.abs(reading.value - middle) <= allowed * (1 + 1e-9);
    const slips = alike ? [] : slipsOf(kind, reading, sisters, allowed);
    const places = Math.max(reading.places, ...sisters.map((one) => one.places));
    const text = (at: number, unit = reading.unit) => formatQuantity(kind, at, unit, places);
    const width = (size: number, more = 0) => formatQuantity(widthKind(kind), size, reading.unit, places + more);
    return answer({
      verdict: alike ? 'alike' : 'check again',
      middle: text(middle),
      apart: width(reading.value - middle),
      allowed: width(allowed, 1),
      suspicions: slips.map((slip) => (slip.code === 'unit' ? `${WORDS.unit}: ${slip.unit}` : WORDS[slip.code])),
      candidates: slips.map((slip) => text(slip.value)),
    });
  },
});

const widthKind = (kind: QuantityKind): QuantityKind => (kind === 'temperature' ? 'temperature-difference' : kind);
