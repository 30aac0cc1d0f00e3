import { answer, conflict, defineCalculation, reversedEnds } from '../../catalogue/index.js';
import { partsWithShop, type ShopInput, type ShopSource } from '../parts-with-shop.js';
import { lengthOut, line, places, shown, signedLength, size, target, tooMany } from './fit-inputs.js';
import { spread } from './lists.js';

const price = (symbol: string, meaning: string) =>
  ({ kind: 'ratio', symbol, meaning, unit: '', range: { from: 0, to: 1e6 } }) as const;
const HUNDREDTHS = 100;

function sourceText(source: ShopSource, input: ShopInput): string {
  switch (source.kind) {
    case 'stock':
      return `part ${source.index + 1} on hand`;
    case 'shop':
      return `buy ${shown(input.shop[source.index]!.size)}`;
    case 'none':
      return 'nothing';
  }
}

export const partsWithShopEntry = defineCalculation({
  id: 'selection.parts-with-shop',
  subject: 'selection',
  title: 'Parts on hand and bought ones with the least money, within a budget',
  summary:
    'Serves as many places as the budget allows, then spends least (with equal prices: buys fewest), then deviates least.',
  inputs: {
    places,
    parts: { ...size('b', 'size of each part on hand; left out: none'), list: true, optional: true },
    shopSizes: {
      ...size('s', 'sizes that can be bought, each as often as needed; left out: none'),
      list: true,
      optional: true,
    },
    prices: {
      ...price(
        'p',
        'price of each size, or one for all, as plain numbers; left out: 1 each, so that parts are counted',
      ),
      list: true,
      optional: true,
    },
    budget: {
      ...price('P', 'the most that may be spent, in the unit of the prices; left out: no limit'),
      optional: true,
    },
    target,
    lowest: signedLength('c₁', 'lowest fit accepted'),
    highest: signedLength('c₂', 'highest fit accepted'),
  },
  outputs: {
    assignments: { ...line('plan', 'what each place gets and the fit that it leaves'), list: true },
    unserved: { kind: 'count', symbol: 'n₀', meaning: 'places without an accepted part' },
    bought: { kind: 'count', symbol: 'n', meaning: 'parts to buy' },
    boughtSizes: { ...lengthOut('s*', 'their sizes, in the order of the places'), list: true },
    spent: { kind: 'ratio', symbol: 'Σp', meaning: 'money spent, in the unit of the prices', unit: '', places: 2 },
    total: lengthOut('Σ|f−c|', 'sum of the deviations from the target over the places served'),
    nextSpent: {
      kind: 'ratio',
      symbol: 'Σp′',
      meaning:
        'the least that serving one more place would cost in all; absent when nothing is missing or no money helps',
      unit: '',
      places: 2,
      optional: true,
    },
  },
  formula: 'f = A − part; minimise (n₀, Σp, Σ|f − c|) in this order; c₁ ≤ f ≤ c₂, Σp ≤ P',
  assumptions: [
    'Bought parts have their stated size; prices count in hundredths.',
    'The least money grows with the number of places served, so one more place than shown costs at least Σp′.',
  ],
  sources: ['assignment-duality'],
  example: {
    inputs: {
      places: ['80.010 mm', '80.020 mm', '80.030 mm'],
      parts: ['79.970 mm'],
      shopSizes: ['79.980 mm', '79.990 mm'],
      prices: [40, 60],
      budget: 50,
      target: '0.040 mm',
      lowest: '0.035 mm',
      highest: '0.045 mm',
    },
    outputs: { unserved: 1, bought: 1, spent: '40.00', nextSpent: '100.00', total: '0.0000 mm' },
    from: 'hand arithmetic: each place has one part that fits; both bought ones together cost 100',
  },
  compute: (v) => {
    const { parts = [], shopSizes = [], prices = [1] } = v;
    const fault = reversedEnds(v, ['lowest', 'highest']) ?? tooMany({ places: v.places, parts, shopSizes });
    if (fault) return fault;
    const each = spread(prices, shopSizes.length) ?? (shopSizes.length === 0 ? [] : undefined);
    if (!each) return conflict(['shopSizes', 'prices'], 'one price for all sizes, or one for each');
    const input: ShopInput = {
      places: v.places,
      stock: parts,
      shop: shopSizes.map((one, at) => ({ size: one, price: Math.round(each[at]! * HUNDREDTHS) })),
      ...(v.budget !== undefined && { budget: Math.floor(v.budget * HUNDREDTHS + 1e-6) }),
      target: v.target,
      window: { low: v.lowest, high: v.highest },
    };
    const found = partsWithShop(input);
    if (!found.ok)
      return conflict(
        ['prices', 'lowest', 'highest'],
        'prices this large with a window this wide cannot be weighed exactly',
      );
    const { sources, fits, unserved, bought, spent, total, nextSpent } = found.value;
    return answer({
      assignments: sources.map((source, at) => {
        const fit = fits[at];
        return `place ${at + 1}: ${sourceText(source, input)}${fit === undefined ? '' : `, leaves ${shown(fit)}`}`;
      }),
      unserved,
      bought,
      boughtSizes: sources.flatMap((one) => (one.kind === 'shop' ? [input.shop[one.index]!.size] : [])),
      spent: (spent / HUNDREDTHS) as typeof v.budget & number,
      total,
      nextSpent: nextSpent === undefined ? undefined : ((nextSpent / HUNDREDTHS) as typeof v.budget & number),
    });
  },
});
