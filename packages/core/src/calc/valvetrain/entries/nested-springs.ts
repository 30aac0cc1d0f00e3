import { type Force, type Length, newtonsPerMillimetre, type Ratio, type Stiffness } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { loadAtHeight, loadShares } from '../spring-loads.js';
import { height, load, shownForce } from './spring-inputs.js';

export const nestedSprings = defineCalculation({
  id: 'valvetrain.nested-springs',
  subject: 'valvetrain',
  title: 'Two or more springs inside each other',
  summary: 'Rate of the set and what each spring carries, under a load together or at a height.',
  inputs: {
    rates: {
      kind: 'stiffness',
      symbol: 'k',
      meaning: 'rate of each spring',
      unit: 'N/mm',
      range: { above: 0, to: newtonsPerMillimetre(10_000) },
      list: true,
    },
    together: {
      ...load,
      symbol: 'F',
      meaning: 'load of the set, when all springs begin to carry at one height',
      optional: true,
    },
    freeLengths: {
      ...height,
      symbol: 'h₀',
      meaning: 'free length of each spring, its step on the seat counted in; with a height instead of the load',
      list: true,
      optional: true,
    },
    height: { ...height, symbol: 'h', meaning: 'height of the set', optional: true },
  },
  outputs: {
    rate: { kind: 'stiffness', symbol: 'Σk', meaning: 'rate of the springs that carry', unit: 'N/mm', places: 3 },
    loads: { ...shownForce, symbol: 'Fᵢ', meaning: 'load of each spring', list: true },
    shares: { kind: 'ratio', symbol: 'Fᵢ/F', meaning: 'share of each spring', unit: '', places: 4, list: true },
    together: { ...shownForce, symbol: 'F', meaning: 'load of the set' },
  },
  formula: 'Fᵢ = F·kᵢ/Σk, or Fᵢ = kᵢ·(h₀ᵢ − h), 0 above its free length',
  assumptions: ['No spring is solid, none rubs on another.'],
  sources: ['nested-springs', 'derived-here'],
  example: {
    inputs: { rates: ['24.83 N/mm', '13.24 N/mm'], together: '2000 N' },
    outputs: { rate: '38.07 N/mm', loads: ['1304.4 N', '695.6 N'] },
    from: 'reference row MO-31; hand arithmetic from the rates as rounded',
  },
  compute: (v) => {
    const byLoad = v.together !== undefined;
    if (byLoad === (v.freeLengths !== undefined || v.height !== undefined)) {
      return conflict(
        ['together', 'freeLengths', 'height'],
        'either the load of the set, or free lengths and a height, are needed',
      );
    }
    if (v.together !== undefined) {
      const shares = loadShares(v.rates, v.together);
      return answer({
        rate: sum(v.rates) as Stiffness,
        loads: shares.map(({ load }) => load),
        shares: shares.map(({ share }) => share),
        together: v.together,
      });
    }
    if (v.height === undefined || v.freeLengths?.length !== v.rates.length) {
      return conflict(['freeLengths', 'height', 'rates'], 'each spring needs its free length, and the set its height');
    }
    const loads = v.rates.map((rate, at) => loadAtHeight(rate, v.freeLengths![at]!, v.height as Length));
    const together = sum(loads) as Force;
    if (together === 0) {
      const longest = Math.max(...v.freeLengths);
      return conflict(['height', 'freeLengths'], 'no spring carries at that height', {
        input: 'height',
        below: longest,
      });
    }
    return answer({
      rate: sum(v.rates.filter((_, at) => loads[at]! > 0)) as Stiffness,
      loads,
      shares: loads.map((one) => (one / together) as Ratio),
      together,
    });
  },
});

const sum = (values: readonly number[]): number => values.reduce((total, one) => total + one, 0);
