import { type Length, mm } from '../../../quantity/index.js';
import { answer, type Caution, conflict, defineCalculation } from '../../catalogue/index.js';
import { lengthChange, neededLength } from '../pushrod.js';
import { ratio, smallLength } from './inputs.js';
import { shownLength } from './spring-inputs.js';

const pushrod = { kind: 'length', unit: 'mm', range: { above: 0, to: mm(2000) } } as const;
const change = { kind: 'length', unit: 'mm', range: { from: mm(-20), to: mm(20) }, default: 0 } as const;

export const pushrodLength = defineCalculation({
  id: 'valvetrain.pushrod-length',
  subject: 'valvetrain',
  title: 'Pushrod length from a checking pushrod, preload or lash, and what changed since',
  summary: 'Length to order for a wanted lifter preload or lash, the nearest on offer, and what that one gives.',
  inputs: {
    zeroLash: {
      ...pushrod,
      symbol: 'l₀',
      meaning: 'length of the checking pushrod at zero lash, valve closed, follower on the base circle',
    },
    ratio,
    preload: { ...smallLength, symbol: 't', meaning: 'hydraulic lifter: plunger travel wanted', optional: true },
    lash: { ...smallLength, symbol: 'g', meaning: 'solid lifter: lash wanted at the valve', optional: true },
    headHigher: {
      ...change,
      symbol: 'Δh',
      meaning: 'head higher since then: thicker gasket positive, cut of deck or head face negative',
    },
    baseCircleSmaller: { ...change, symbol: 'Δb', meaning: 'base circle of the lobe smaller in radius since then' },
    tipHigher: { ...change, symbol: 'Δv', meaning: 'valve tip higher since then, as after cutting the seat' },
    pivotHigher: {
      ...change,
      symbol: 'Δp',
      meaning: 'rocker pivot higher over the head since then, as by a stand under the shaft',
    },
    offered: { ...pushrod, symbol: 'l', meaning: 'lengths on offer', list: true, optional: true },
    leastPreload: { ...smallLength, symbol: 't₁', meaning: 'least plunger travel allowed', optional: true },
    mostPreload: { ...smallLength, symbol: 't₂', meaning: 'most plunger travel allowed', optional: true },
  },
  outputs: {
    zeroLashNow: { ...shownLength, symbol: 'l₀ + Δ', meaning: 'length for zero lash with what changed' },
    needed: { ...shownLength, symbol: 'l', meaning: 'length for the preload or lash wanted' },
    chosen: { ...shownLength, symbol: 'l*', meaning: 'nearest length on offer', optional: true },
    chosenPreload: {
      ...shownLength,
      symbol: 't*',
      meaning: 'plunger travel that it gives; negative: lash is left',
      optional: true,
    },
    chosenLash: {
      ...shownLength,
      symbol: 'g*',
      meaning: 'lash at the valve that it leaves; negative: the valve is held open',
      optional: true,
    },
    change: { ...shownLength, symbol: 'Δ', meaning: 'longer by what changed' },
  },
  formula: 'Δ = Δh + Δb + Δp·(1 + 1/R) − Δv/R; l = l₀ + Δ + t, or l₀ + Δ − g/R',
  assumptions: [
    'All lengths by one convention (over the ends, or gauge length): they are not mixed.',
    'Fixed pivot height apart from what is named; small angles. Geometry first: the length that centres and narrows the mark decides on adjustable rockers.',
  ],
  sources: ['derived-here', 'preload-window'],
  example: {
    inputs: {
      zeroLash: '7.400 in',
      ratio: '1.5',
      preload: '0.040 in',
      headHigher: '-0.010 in',
      tipHigher: '0.015 in',
      offered: ['7.400 in', '7.450 in', '7.500 in'],
    },
    outputs: { needed: '7.420 in', change: '-0.020 in', chosen: '7.400 in', chosenPreload: '0.020 in' },
    from: 'hand arithmetic: −0.010 − 0.015/1.5 = −0.020',
  },
  compute: (v) => {
    if ((v.preload === undefined) === (v.lash === undefined)) {
      return conflict(
        ['preload', 'lash'],
        'either the preload of a hydraulic lifter or the lash of a solid one is needed',
      );
    }
    const change = lengthChange(v, v.ratio);
    const zeroLashNow = (v.zeroLash + change) as Length;
    const atRest = { preload: v.preload ?? (0 as Length), lash: v.lash ?? (0 as Length) };
    const needed = neededLength(zeroLashNow, atRest, v.ratio);
    const chosen = v.offered?.reduce((best, one) => (Math.abs(one - needed) < Math.abs(best - needed) ? one : best));
    const over = chosen === undefined ? undefined : chosen - zeroLashNow;
    return answer(
      {
        zeroLashNow,
        needed,
        chosen,
        chosenPreload: v.preload === undefined ? undefined : (over as Length | undefined),
        chosenLash: v.lash === undefined || over === undefined ? undefined : ((-over * v.ratio) as Length),
        change,
      },
      over !== undefined && v.preload !== undefined ? outsideWindow(over, v.leastPreload, v.mostPreload) : [],
    );
  },
});

const ROUNDING = 1e-9;
function outsideWindow(preload: number, least = 0, most = Number.POSITIVE_INFINITY): readonly Caution[] {
  const within = preload >= least - ROUNDING && preload <= most + ROUNDING;
  return within
    ? []
    : [{ code: 'preload-outside', text: 'the nearest length gives a preload outside what is allowed' }];
}
