import { describe, expect, it } from 'vitest';
import {
  describeFault,
  parseQuantity,
  parseWindow,
  QUANTITY_KINDS,
  type QuantityFault,
  type QuantityKind,
} from './index.js';

function said(kind: QuantityKind, text: string): string {
  const value = parseQuantity(kind, text);
  if (!value.ok) return describeFault(value.fault);
  throw new Error('was read');
}

describe('what a refusal says', () => {
  it.each<[QuantityKind, string, string]>([
    ['length', '4.03', '"4.03" has no unit: a length needs one, such as mm, in, thou, µm.'],
    ['length', '4.03 N', '"N" is a unit of force, but a length is needed: use mm, in, thou, µm.'],
    ['angle', '5 g', '"g" is a unit of mass or acceleration, but an angle is needed: use deg, turn, rad.'],
    ['length', '4 parsec', '"parsec" is not a unit of length: use mm, in, thou, µm.'],
    ['temperature-difference', '4', '"4" has no unit: a temperature difference needs one, such as K, °F.'],
    ['force', '5 turns', '"turns" is a unit of angle, but a force is needed: use N, kN, lbf, kgf.'],
    ['ratio', '4 parsec', '"parsec" is not a unit of ratio: use a plain number, :1, %.'],
    ['length', '1,250 mm', 'Is "1,250" 1.250 or 1250? Type it one of these two ways.'],
    ['length', '4.0.3 in', '"4.0.3" has a second decimal mark: type the number again.'],
    ['length', '05 mm', '"05" starts with a zero but has no decimal mark after it: is a mark missing?'],
    ['length', 'about 5 mm', '"about 5 mm" is not a number: digits with one decimal mark, or a fraction such as 3/8.'],
    ['length', '1/0 in', '"1/0" divides by zero.'],
    ['length', '13/8 in', 'Is "13/8" 1 3/8 or 1 5/8? Type it one of these two ways.'],
    ['length', '-13/8 in', 'Is "-13/8" -1 3/8 or -1 5/8? Type it one of these two ways.'],
    ['length', '113/64 in', 'Is "113/64" 1 13/64 or 1 49/64? Type it one of these two ways.'],
    ['length', '1-1/2 in', '"1-1/2 in" can be read in two ways: type a range as 1..2, and one and a half as 1 1/2.'],
    ['length', ' 1..2 in ', '"1..2 in" is a window: one value is needed here.'],
    ['length', '1 ±-2 in', '"-2 in" is no tolerance: the figure after ± has no sign.'],
    ['temperature', '-300 °C', '"-300 °C" is below absolute zero.'],
    ['length', ' ', 'Nothing typed: a number with its unit is needed.'],
    ['length', `${'9'.repeat(70)} mm`, 'The text has 73 characters; a value has at most 64.'],
  ])('%s "%s"', (kind, text, line) => {
    expect(said(kind, text)).toBe(line);
  });

  it('quotes up to 32 characters, and marks the cut', () => {
    const quoted = (given: string) => describeFault({ code: 'not-a-number', given }).split(' is not')[0];
    expect(quoted('x'.repeat(32))).toBe(`"${'x'.repeat(32)}"`);
    expect(quoted('x'.repeat(33))).toBe(`"${'x'.repeat(32)}…"`);
    expect(quoted('4\n5')).toBe('"4 5"');
  });

  it('names at most two kinds that a unit belongs to', () => {
    const of = ['length', 'mass', 'force'] as const;
    const line = describeFault({ code: 'unit-of-other-kind', kind: 'angle', given: 'x', of });
    expect(line).toBe('"x" is a unit of length or mass, but an angle is needed: use deg, turn, rad.');
  });

  it('names both ends of a window that runs backwards', () => {
    const read = parseWindow('length', '0.003..0.001 in');
    expect(read.ok ? '' : describeFault(read.fault)).toBe('The low end "0.003" is above the high end "0.001 in".');
  });

  it('stays on one line and under 200 characters for every kind, however long or strange the text', () => {
    const strange = `\u202e\n${'\u{1F527}'.repeat(60)}`;
    for (const kind of QUANTITY_KINDS) {
      const faults: QuantityFault[] = [
        { code: 'unit-missing', kind, given: strange },
        { code: 'unit-unknown', kind, given: strange },
        { code: 'unit-of-other-kind', kind, given: strange, of: ['temperature-difference', 'temperature-difference'] },
        { code: 'not-a-number', given: strange },
        { code: 'hyphen-question', given: strange },
        { code: 'reversed', low: strange, high: strange },
        { code: 'mark-question', given: strange, asDecimal: '1.250', asThousands: '1250' },
      ];
      for (const fault of faults) {
        expect(describeFault(fault), fault.code).toMatch(/^[^\n\u202e]+$/u);
        expect(describeFault(fault).length, fault.code).toBeLessThanOrEqual(200);
      }
    }
  });
});
