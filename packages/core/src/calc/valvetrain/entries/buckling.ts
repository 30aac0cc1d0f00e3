import { kilonewtons, mm, pascals, type Ratio } from '../../../quantity/index.js';
import { answer, type Caution, conflict, defineCalculation } from '../../catalogue/index.js';
import { buckling as find } from '../buckling.js';

const size = { kind: 'length', unit: 'mm', range: { above: 0, to: mm(10_000) } } as const;
const load = { kind: 'force', unit: 'N', places: 0 } as const;
const plain = { kind: 'ratio', unit: '', places: 1 } as const;

/** End constants of straight columns. Source: any text on machine design. */
const ENDS = { 'both pinned': 1, 'one pinned, one fixed': 2, 'both fixed': 4, 'one fixed, one free': 0.25 } as const;
type Ends = keyof typeof ENDS;

const overloaded: Caution = { code: 'buckles', text: 'the load is above the one at which a straight column buckles' };

export const pushrodBuckling = defineCalculation({
  id: 'valvetrain.pushrod-buckling',
  subject: 'valvetrain',
  title: 'Buckling load of a pushrod or another straight column',
  summary: 'Round bar or tube under end load: slenderness, which formula holds, the load at which it buckles.',
  inputs: {
    length: { ...size, symbol: 'l', meaning: 'length between the ends’ centres' },
    outside: { ...size, symbol: 'do', meaning: 'outside diameter' },
    inside: {
      kind: 'length',
      symbol: 'di',
      meaning: 'inside diameter, 0: solid (or give the wall)',
      unit: 'mm',
      range: { from: 0, to: mm(10_000) },
      optional: true,
    },
    wall: { ...size, symbol: 't', meaning: 'wall of the tube (or give the inside)', optional: true },
    modulus: {
      kind: 'pressure',
      symbol: 'E',
      meaning: 'Young’s modulus',
      unit: 'GPa',
      range: { above: 0, to: pascals(1e12) },
    },
    yieldStrength: {
      kind: 'pressure',
      symbol: 'Sy',
      meaning: 'yield strength',
      unit: 'MPa',
      range: { above: 0, to: pascals(1e10) },
    },
    ends: {
      kind: 'choice',
      symbol: 'ends',
      meaning: 'how the ends are held: a pushrod’s balls are pinned',
      choices: Object.keys(ENDS) as readonly Ends[],
      default: 'both pinned',
    },
    endConstant: {
      kind: 'ratio',
      symbol: 'C',
      meaning: 'end constant instead of the ends: 1 pinned, 2, 4 or 1/4',
      unit: '',
      range: { above: 0, to: 4 },
      optional: true,
    },
    load: {
      kind: 'force',
      symbol: 'F',
      meaning: 'load along it: spring load times rocker ratio, and what accelerates the valve gear',
      unit: 'N',
      range: { above: 0, to: kilonewtons(10_000) },
      optional: true,
    },
  },
  outputs: {
    criticalLoad: { ...load, symbol: 'Fk', meaning: 'load at which it buckles or, stocky, yields' },
    formula: { kind: 'text', symbol: 'by', meaning: 'Euler or Johnson, by the slenderness' },
    slenderness: { ...plain, symbol: 'l/k', meaning: 'slenderness' },
    transition: { ...plain, symbol: '(l/k)t', meaning: 'slenderness at which both formulas meet' },
    radiusOfGyration: { kind: 'length', symbol: 'k', meaning: 'radius of gyration', unit: 'mm', places: 3 },
    area: { kind: 'area', symbol: 'A', meaning: 'section', unit: 'mm2', places: 3 },
    eulerLoad: { ...load, symbol: 'Euler', meaning: 'by Euler’s hyperbola' },
    johnsonLoad: {
      ...load,
      symbol: 'Johnson',
      meaning: 'by Johnson’s parabola, up to the transition',
      optional: true,
    },
    margin: {
      kind: 'ratio',
      symbol: 'Fk/F',
      meaning: 'buckling load over the load',
      unit: '',
      places: 2,
      optional: true,
    },
  },
  formula: 'k = √(do² + di²)/4; (l/k)t = √(2π²·C·E/Sy); above it C·π²·E·A/(l/k)², below A·[Sy − (Sy·l/(2π·k))²/(C·E)]',
  assumptions: ['Straight, load in the middle, steady. A bent or side-loaded rod carries less.'],
  sources: ['johnson-column'],
  example: {
    inputs: {
      length: '7.80 in',
      outside: '0.3125 in',
      wall: '0.080 in',
      modulus: '30000000 psi',
      yieldStrength: '70000 psi',
    },
    outputs: {
      criticalLoad: '2144 lbf',
      formula: 'Johnson',
      slenderness: '89.7',
      transition: '92.0',
      area: '0.05843 in2',
    },
    from: 'reference row O-41',
  },
  compute: (v) => {
    if ((v.inside === undefined) === (v.wall === undefined)) {
      return conflict(['inside', 'wall'], 'one of inside and wall is needed, and not both');
    }
    const inside = v.inside ?? ((v.outside - 2 * v.wall!) as typeof v.outside);
    if (inside >= v.outside)
      return conflict(['outside', 'inside'], 'the tube has no wall', { input: 'inside', below: v.outside });
    if (inside < 0)
      return conflict(['outside', 'wall'], 'two walls are thicker than the tube', { input: 'wall', to: v.outside / 2 });
    const endConstant = v.endConstant ?? (ENDS[v.ends] as Ratio);
    const { length, outside, modulus, yieldStrength } = v;
    const found = find({ length, outside, inside, modulus, yieldStrength, endConstant });
    return answer(
      {
        criticalLoad: found.critical,
        formula: found.formula,
        slenderness: found.slenderness,
        transition: found.transition,
        radiusOfGyration: found.radiusOfGyration,
        area: found.area,
        eulerLoad: found.euler,
        johnsonLoad: found.formula === 'Johnson' ? found.johnson : undefined,
        margin: v.load === undefined ? undefined : ((found.critical / v.load) as Ratio),
      },
      v.load !== undefined && v.load > found.critical ? [overloaded] : [],
    );
  },
});
