import { describe, expect, it } from 'vitest';
import { engineOf, faultsOf } from '../try-sheets.suite.js';

describe('firing order against crank (reference row MO-36)', () => {
  const eight = (order: string, more: string) => `gudgeon: 1
name: Eight
layout:
  form: vee
  banks: { left: 45 deg, right: -45 deg }
  cylinders: { left: [1, 3, 5, 7], right: [2, 4, 6, 8] }
  firingOrder: ${order}
${more}`;
  const PINS =
    '  crankpins: [{ cylinders: [1, 2] }, { cylinders: [3, 4] }, { cylinders: [5, 6] }, { cylinders: [7, 8] }]\n';
  const printed = [1, 8, 4, 3, 6, 5, 7, 2];
  const swaps = printed.flatMap((_, i) => printed.slice(i + 1).map((__, j) => [i, i + 1 + j] as const));
  const swapped = ([i, j]: readonly [number, number]) => {
    const order = [...printed];
    [order[i], order[j]] = [order[j]!, order[i]!];
    return order.join('-');
  };
  /** Half an order apart: both pistons rise together, so the same crank fires either order. */
  const together = ([i, j]: readonly [number, number]) => j - i === 4;

  it.each(['1-8-4-3-6-5-7-2', '1-8-7-2-6-5-4-3'])('%s runs on the shared pins', (order) => {
    expect(faultsOf(eight(order, PINS))).toEqual([]);
    expect(engineOf(eight(order, '')).cautions).toEqual([]);
  });

  it('an order with two cylinders exchanged is refused, except where both pistons rise together', () => {
    expect(swaps).toHaveLength(28);
    for (const swap of swaps) {
      const codes = faultsOf(eight(swapped(swap), PINS)).map((each) => each.code);
      expect(codes, swapped(swap)).toEqual(together(swap) ? [] : ['order-against-crank']);
    }
  });

  it('without crankpins the same orders are doubtful only, because pins can be split', () => {
    for (const swap of swaps) {
      const codes = engineOf(eight(swapped(swap), '')).cautions.map((each) => each.code);
      expect(codes, swapped(swap)).toEqual(together(swap) ? [] : ['pairs-not-on-one-pin']);
    }
  });

  it('banks seen from the wrong end are suspected when every pair disagrees', () => {
    const mirrored = eight('1-8-4-3-6-5-7-2', PINS).replace(
      'left: 45 deg, right: -45 deg',
      'left: -45 deg, right: 45 deg',
    );
    expect(faultsOf(mirrored)[0]?.message).toMatch(
      /cylinders 1 and 2 .* 180° apart.*are the bank angles those seen from the front/,
    );
  });

  it('a common-pin V6 of 90 degrees is refused as even and passes at 150 and 90 (row MO-37)', () => {
    const six = (intervals: string) => `gudgeon: 1
name: Six
layout:
  form: vee
  banks: { left: 45 deg, right: -45 deg }
  cylinders: { left: [1, 3, 5], right: [2, 4, 6] }
  crankpins: [{ cylinders: [1, 2] }, { cylinders: [3, 4] }, { cylinders: [5, 6] }]
  firingOrder: 1-6-5-4-3-2
  firingIntervals: ${intervals}
`;
    expect(faultsOf(six('even')).map((each) => each.code)).toEqual(['order-against-crank']);
    expect(faultsOf(six('[150 deg, 90 deg, 150 deg, 90 deg, 150 deg, 90 deg]'))).toEqual([]);
  });
});
