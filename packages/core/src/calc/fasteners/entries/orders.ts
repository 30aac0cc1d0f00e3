/** Orders of tightening for joints whose maker prints none. */
import { type Length, mm } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { centreOutwardOrder, crossPattern as pattern } from '../order.js';

const fallback = 'A fallback, to be labelled as such: the maker’s drawing wins.';
const order = { kind: 'count', symbol: 'order', meaning: 'numbers of the fasteners in order', list: true } as const;

export const crossPattern = defineCalculation({
  id: 'fasteners.cross-pattern',
  subject: 'fasteners',
  title: 'Cross pattern for a ring of fasteners',
  summary: 'Order for fasteners numbered round a ring: each once, always across, never to a neighbour in a large ring.',
  inputs: {
    count: {
      kind: 'count',
      symbol: 'n',
      meaning: 'fasteners in the ring, numbered round it',
      range: { from: 1, to: 200 },
    },
  },
  outputs: { order },
  formula: 'n by four: groups k, k + n/2, k + n/4, k + 3n/4 for k = 1 … n/4; otherwise opposite pairs or a star',
  assumptions: [fallback],
  sources: ['asme-pcc-1', 'bolt-rounds'],
  example: {
    inputs: { count: 8 },
    outputs: { order: [1, 5, 3, 7, 2, 6, 4, 8] },
    from: 'reference row O-28',
  },
  compute: ({ count }) => answer({ order: pattern(count) }),
});

export const centreOutward = defineCalculation({
  id: 'fasteners.centre-outward-order',
  subject: 'fasteners',
  title: 'Order from the centre of a joint outward',
  summary:
    'Order for fasteners at given places, from the middle to the ends across the joint; loosening is the reverse.',
  inputs: {
    x: {
      kind: 'length',
      symbol: 'x',
      meaning: 'place of each fastener along the joint',
      unit: 'mm',
      range: { from: mm(-10_000), to: mm(10_000) },
      list: true,
    },
    y: {
      kind: 'length',
      symbol: 'y',
      meaning: 'place of each fastener across the joint',
      unit: 'mm',
      range: { from: mm(-10_000), to: mm(10_000) },
      list: true,
    },
  },
  outputs: {
    order: { ...order, meaning: 'places in the lists, from 1, in the order of tightening' },
    loosening: { ...order, symbol: 'loosening', meaning: 'the same for loosening: the exact reverse' },
    distances: {
      kind: 'length',
      symbol: 'r',
      meaning: 'distance of each from the centre, in the order of tightening',
      unit: 'mm',
      places: 1,
      list: true,
    },
  },
  formula: 'rings of equal distance from the mean of all places, from the inside out, each across',
  assumptions: [fallback, 'One joint in one plane. Dowels and long bolts are not known here.'],
  sources: ['shop-practice', 'bolt-rounds'],
  example: {
    inputs: {
      x: ['0 mm', '0 mm', '100 mm', '100 mm', '200 mm', '200 mm'],
      y: ['0 mm', '110 mm', '0 mm', '110 mm', '0 mm', '110 mm'],
    },
    outputs: { distances: ['55.0 mm', '55.0 mm', '114.1 mm', '114.1 mm', '114.1 mm', '114.1 mm'] },
    from: 'reference row O-29, its inner six',
  },
  compute: (v) => {
    if (v.x.length !== v.y.length) return conflict(['x', 'y'], 'each fastener needs both its places');
    const holes = v.x.map((x, at) => ({ id: String(at + 1), x, y: v.y[at]! }));
    const found = centreOutwardOrder(holes).map(Number);
    const mean = (line: readonly number[]) => line.reduce((sum, one) => sum + one, 0) / line.length;
    const [cx, cy] = [mean(v.x), mean(v.y)];
    return answer({
      order: found,
      loosening: found.toReversed(),
      distances: found.map((at) => Math.hypot(v.x[at - 1]! - cx, v.y[at - 1]! - cy) as Length),
    });
  },
});
