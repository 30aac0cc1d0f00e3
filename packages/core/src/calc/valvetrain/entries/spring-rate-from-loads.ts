import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { rateFromLoads } from '../spring-loads.js';
import { height, load, shownForce, shownLength } from './spring-inputs.js';

export const springRateFromLoads = defineCalculation({
  id: 'valvetrain.spring-rate-from-loads',
  subject: 'valvetrain',
  title: 'Spring rate from loads read on a tester',
  summary:
    'Straight line of least squares through loads at heights: rate, free length of that line, and how far the loads lie off it.',
  inputs: {
    heights: { ...height, symbol: 'h', meaning: 'height of the spring at each reading', list: true },
    loads: { ...load, symbol: 'F', meaning: 'load read at each height', list: true },
  },
  outputs: {
    rate: { kind: 'stiffness', symbol: 'k', meaning: 'rate', unit: 'N/mm', places: 3 },
    freeLength: { ...shownLength, symbol: 'h₀', meaning: 'height at which the line meets no load' },
    farthest: { ...shownForce, symbol: 'v', meaning: 'largest load off the line' },
  },
  formula: 'F = k·(h₀ − h), Σ v² least',
  assumptions: ['The spring is straight over these heights; a nested set that begins to carry in turn is not.'],
  sources: ['derived-here', 'least-squares-book'],
  example: {
    inputs: { heights: ['1.750 in', '1.250 in'], loads: ['100 lbf', '250 lbf'] },
    outputs: { rate: '300.0 lbf/in', freeLength: '2.0833 in', farthest: '0.0 lbf' },
    from: 'reference row MO-32 turned round',
  },
  compute: (v) => {
    if (v.heights.length !== v.loads.length) return conflict(['heights', 'loads'], 'each height needs its load');
    const found = rateFromLoads(v.heights, v.loads);
    if (!found) return conflict(['heights'], 'two readings at unlike heights are needed');
    return found.rate > 0 ? answer(found) : conflict(['heights', 'loads'], 'the load must grow as the height shrinks');
  },
});
