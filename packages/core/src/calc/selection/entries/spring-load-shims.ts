import { newtonsPerMillimetre } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { heightForLoad, loadAtHeight, springShims } from '../spring-shims.js';
import { size, windowOf } from './fit-inputs.js';
import { spread } from './lists.js';
import { heights, most, planAnswer, planOutputs, shimListFault, shims, stock, tooManyStacks } from './spring-inputs.js';

const force = (symbol: string, meaning: string) =>
  ({ kind: 'force', symbol, meaning, unit: 'N', range: { above: 0, to: 1e5 } }) as const;

export const springLoadShimsEntry = defineCalculation({
  id: 'selection.spring-load-shims',
  subject: 'selection',
  title: 'Shims under valve springs for a wanted load on the seat',
  summary:
    'From the load of each spring on the tester: the height that gives the wanted seat load, and the shims for it.',
  inputs: {
    heights,
    loads: { ...force('Ft', 'load of each spring at the test height'), list: true },
    testHeight: size('ht', 'height at which the springs were tested'),
    rates: {
      kind: 'stiffness',
      symbol: 'k',
      meaning: 'spring rate: one for all springs, or one a spring',
      unit: 'N/mm',
      range: { above: 0, to: newtonsPerMillimetre(1000) },
      list: true,
    },
    wantedLoad: force('F', 'load on the seat wanted'),
    shims,
    stock,
    most,
  },
  outputs: {
    ...planOutputs,
    loads: {
      kind: 'force',
      symbol: 'F*',
      meaning: 'seat load with the shims, of each valve that is served',
      unit: 'N',
      places: 1,
      list: true,
    },
  },
  formula: 'hw = ht − (F − Ft)/k; h = h₀ − Σs; F* = Ft + k·(ht − h); minimise Σ|h − hw|',
  assumptions: [
    'The load changes by the rate alone between the test height and the installed height.',
    'Springs are kept with their valves: spring and height are numbered alike.',
  ],
  sources: ['branch-and-bound', 'shop-practice'],
  example: {
    inputs: {
      heights: ['1.780 in', '1.780 in'],
      loads: ['100 lbf', '94 lbf'],
      testHeight: '1.750 in',
      rates: ['300 lbf/in'],
      wantedLoad: '100 lbf',
      shims: ['0.015 in', '0.030 in'],
    },
    outputs: { thickness: ['0.030 in', '0.045 in'], loads: ['100.0 lbf', '98.5 lbf'] },
    from: 'hand arithmetic: 0.015 in at 300 lbf/in are 4.5 lbf, as in reference row MO-32',
  },
  compute: (v) => {
    const rates = spread(v.rates, v.heights.length);
    if (!rates || v.loads.length !== v.heights.length) {
      return conflict(['heights', 'loads', 'rates'], 'one load a valve, and one rate for all or one for each');
    }
    const fault = shimListFault(v);
    if (fault) return fault;
    const springs = v.loads.map((load, at) => ({ load, testHeight: v.testHeight, rate: rates[at]! }));
    const found = springShims({
      heights: v.heights,
      wanted: springs.map((spring) => heightForLoad(spring, v.wantedLoad)),
      sizes: v.shims,
      most: v.most,
      ...(v.stock && { stock: v.stock }),
      window: windowOf(undefined, undefined),
    });
    if (!found.ok) return tooManyStacks();
    // Any height is accepted, so every valve is served and heights are numbered as the springs.
    const plan = planAnswer(found.value, v.shims);
    return answer({ ...plan, loads: plan.heights.map((height, at) => loadAtHeight(springs[at]!, height)) });
  },
});
