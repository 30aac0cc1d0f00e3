import type { Length } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { flatnessOf, type Points } from '../plane.js';
import { asLength, asLengths, lengths } from './flavour.js';
import { asRatio } from './inputs.js';

const limit = { ...lengths.size, symbol: 'L', meaning: 'limit of flatness, inclusive', optional: true } as const;
const heights = { ...lengths.input, symbol: 'z' } as const;
const outputs = {
  minimumZone: {
    ...lengths.output,
    symbol: 'FLTt MZ',
    meaning: 'flatness: distance of the two nearest parallel planes',
  },
  leastSquares: { ...lengths.output, symbol: 'FLTt LS', meaning: 'flatness about the least-squares plane; never less' },
  raw: {
    ...lengths.output,
    symbol: 'raw',
    meaning: 'highest less lowest height with the tilt still in it: not a flatness',
  },
  highest: { ...lengths.output, symbol: 'peak', meaning: 'highest residual of the least-squares plane' },
  lowest: { ...lengths.output, symbol: 'valley', meaning: 'lowest residual of the least-squares plane' },
  intercept: { ...lengths.output, symbol: 'a', meaning: 'least-squares plane: height at x = y = 0' },
  slopeX: { kind: 'ratio', symbol: 'bx', meaning: 'least-squares plane: slope along x', unit: '', places: 8 },
  slopeY: { kind: 'ratio', symbol: 'by', meaning: 'least-squares plane: slope along y', unit: '', places: 8 },
  residuals: { ...lengths.output, symbol: 'r', meaning: 'residual of each point', list: true },
  verdict: { kind: 'text', symbol: 'verdict', meaning: 'in or out by the minimum zone; no data without a limit' },
} as const;
const formula =
  'z = a + bx·x + by·y by least squares; minimum zone: smallest height of a tilted band that holds all points';
const assumptions = [
  'Heights at points; between them nothing is known. The tilt is small.',
  'A limit is inclusive; the minimum zone is what the definition of flatness asks for.',
];
const sources = ['derived-here'] as const;
const ROUNDING = 1e-12;

function flatnessAnswer(points: Points, allowed: Length | undefined, inputs: readonly string[]) {
  const found = flatnessOf(points);
  if (!found) return conflict(inputs, 'three points or more are needed that do not lie on one line');
  return answer({
    minimumZone: asLength(found.minimumZone),
    leastSquares: asLength(found.leastSquares),
    raw: asLength(found.raw),
    highest: asLength(Math.max(...found.residuals)),
    lowest: asLength(Math.min(...found.residuals)),
    intercept: asLength(found.intercept),
    slopeX: asRatio(found.slopeX),
    slopeY: asRatio(found.slopeY),
    residuals: asLengths(found.residuals),
    verdict: allowed === undefined ? 'no data' : found.minimumZone <= allowed + ROUNDING ? 'in' : 'out',
  });
}

export const flatness = defineCalculation({
  id: 'metrology.flatness',
  subject: 'metrology',
  title: 'Flatness from heights at points',
  summary: 'Flatness of a deck, head or flange by the minimum zone and by least squares, with the tilt taken out.',
  inputs: {
    x: { ...lengths.input, symbol: 'x', meaning: 'x of each point', list: true },
    y: { ...lengths.input, symbol: 'y', meaning: 'y of each point', list: true },
    z: { ...heights, meaning: 'height at each point', list: true },
    limit,
  },
  outputs,
  formula,
  assumptions,
  sources,
  example: {
    inputs: {
      x: ['0 mm', '100 mm', '0 mm', '100 mm'],
      y: ['0 mm', '0 mm', '50 mm', '50 mm'],
      z: ['0.02 mm', '0 mm', '0 mm', '0.02 mm'],
    },
    outputs: { minimumZone: '0.02 mm', leastSquares: '0.02 mm', raw: '0.02 mm' },
    from: 'a twisted face: each diagonal 0.02 mm above or below the other',
  },
  compute: (v) => {
    if (v.x.length !== v.z.length || v.y.length !== v.z.length)
      return conflict(['x', 'y', 'z'], 'one x, one y and one height a point are needed');
    return flatnessAnswer(v, v.limit, ['x', 'y']);
  },
});

export const flatnessOfGrid = defineCalculation({
  id: 'metrology.flatness-of-grid',
  subject: 'metrology',
  title: 'Flatness from heights on a grid',
  summary: 'As for points, with the heights typed row by row.',
  inputs: {
    columns: { ...lengths.input, symbol: 'x', meaning: 'x of the columns', list: true },
    rows: { ...lengths.input, symbol: 'y', meaning: 'y of the rows', list: true },
    heights: { ...heights, meaning: 'heights: all columns of the first row, then of the second', list: true },
    limit,
  },
  outputs,
  formula,
  assumptions,
  sources,
  example: {
    inputs: {
      columns: ['0 mm', '250 mm', '500 mm'],
      rows: ['0 mm', '80 mm', '160 mm'],
      heights: [0, 0.012, 0.04, 0.01, -0.01, 0.046, 0.026, 0.04, 0.06].map((z) => `${z} mm`),
      limit: '0.05 mm',
    },
    outputs: { leastSquares: '0.0440 mm', minimumZone: '0.0430 mm', raw: '0.070 mm', verdict: 'in' },
    from: 'reference row O-38',
  },
  compute: (v) => {
    const wanted = v.columns.length * v.rows.length;
    if (v.heights.length !== wanted)
      return conflict(
        ['columns', 'rows', 'heights'],
        `the grid has ${wanted} points, ${v.heights.length} heights are given`,
      );
    const x = v.rows.flatMap(() => v.columns);
    const y = v.rows.flatMap((row) => v.columns.map(() => row));
    return flatnessAnswer({ x, y, z: v.heights }, v.limit, ['columns', 'rows']);
  },
});

export const straightedge = defineCalculation({
  id: 'metrology.straightedge',
  subject: 'metrology',
  title: 'Warp by straight edge and feeler',
  summary: 'Largest feeler that enters under a straight edge along each line, against the limit.',
  inputs: {
    gaps: {
      ...lengths.size,
      symbol: 'g',
      meaning: 'largest feeler that enters, each line: both sides, both ends, both diagonals',
      list: true,
    },
    firstThatFails: {
      ...lengths.size,
      symbol: 'g+',
      meaning: 'next feeler that no longer enters, each line; the gap lies between the two',
      list: true,
      optional: true,
    },
    limit,
    rocks: {
      kind: 'choice',
      symbol: 'rocks',
      meaning: 'whether the edge rocks on the face along some line: a crown, which feelers cannot measure',
      choices: ['no', 'yes'],
      default: 'no',
    },
  },
  outputs: {
    largest: { ...lengths.output, symbol: 'g max', meaning: 'largest gap found' },
    atMost: { ...lengths.output, symbol: 'g ≤', meaning: 'what the largest gap may really be', optional: true },
    line: { kind: 'count', symbol: 'line', meaning: 'line on which it was found, from 1' },
    verdict: { kind: 'text', symbol: 'verdict', meaning: 'in, near (the feelers straddle the limit), out or no data' },
  },
  formula: 'g max = largest of the gaps; in when even the feeler that fails would pass',
  assumptions: ['The edge is straight to a tenth of the limit. Fewer than six lines can miss a twist.'],
  sources: ['shop-practice'],
  example: {
    inputs: { gaps: ['0.03 mm', '0.05 mm', '0.04 mm', '0.03 mm', '0.03 mm', '0.04 mm'], limit: '0.10 mm' },
    outputs: { largest: '0.05 mm', line: 2, verdict: 'in' },
    from: 'comparison by eye',
  },
  compute: (v) => {
    const { gaps, firstThatFails } = v;
    if (firstThatFails && (firstThatFails.length !== gaps.length || firstThatFails.some((one, at) => one < gaps[at]!)))
      return conflict(['gaps', 'firstThatFails'], 'one next feeler a line is needed, thicker than the one that enters');
    const largest = Math.max(...gaps);
    const upTo = Math.max(...(firstThatFails ?? gaps));
    const word = (allowed: number) =>
      largest > allowed + ROUNDING ? 'out' : upTo > allowed + ROUNDING ? 'near' : 'in';
    const cautions = [
      ...(v.rocks === 'yes'
        ? [{ code: 'rocks', text: 'the edge rocks: measure heights instead, a crown shows no gap' }]
        : []),
      ...(gaps.length < SIX_LINES
        ? [{ code: 'few-lines', text: 'six lines are usual: two along, two across, two diagonals' }]
        : []),
    ];
    return answer(
      {
        largest: asLength(largest),
        atMost: firstThatFails && asLength(upTo),
        line: gaps.indexOf(largest as Length) + 1,
        verdict: v.limit === undefined || v.rocks === 'yes' ? 'no data' : word(v.limit),
      },
      cautions,
    );
  },
});
const SIX_LINES = 6;
