import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { lineAt, lineThrough, straightness } from '../line.js';
import { asLength, asLengths, type Flavour, lengths, numbers } from './flavour.js';
import { asRatio } from './inputs.js';

const lineOf = (of: Flavour) =>
  defineCalculation({
    id: `metrology.line-fit${of.tail}`,
    subject: 'metrology',
    title: `Straight line by least squares${of.of}`,
    summary:
      'Calibration line of a gauge, or a trend: slope, intercept, their standard errors, and the value at chosen points.',
    inputs: {
      x: { ...of.input, symbol: 'x', meaning: 'where: true size or setting', list: true },
      y: { ...of.input, symbol: 'y', meaning: 'what was read there', list: true },
      at: { ...of.input, symbol: 'xa', meaning: 'points at which the line is wanted', list: true, optional: true },
    },
    outputs: {
      intercept: { ...of.output, symbol: 'b0', meaning: 'intercept: y at x = 0' },
      slope: { kind: 'ratio', symbol: 'b1', meaning: 'slope', unit: '', places: 8 },
      interceptError: { ...of.output, symbol: 's(b0)', meaning: 'standard error of the intercept' },
      slopeError: { kind: 'ratio', symbol: 's(b1)', meaning: 'standard error of the slope', unit: '', places: 8 },
      scatter: { ...of.output, symbol: 's', meaning: 'standard deviation about the line, n − 2 degrees of freedom' },
      explained: {
        kind: 'ratio',
        symbol: 'R²',
        meaning: 'share of the variation that the line explains',
        unit: '',
        places: 8,
      },
      residuals: { ...of.output, symbol: 'r', meaning: 'y less the line, each point', list: true },
      values: { ...of.output, symbol: 'ya', meaning: 'line at the points asked for', list: true, optional: true },
      valueErrors: {
        ...of.output,
        symbol: 's(ya)',
        meaning: 'standard error of the line there',
        list: true,
        optional: true,
      },
      pointErrors: {
        ...of.output,
        symbol: 's(y)',
        meaning: 'standard error of one new reading there',
        list: true,
        optional: true,
      },
      straightness: {
        ...of.output,
        symbol: 'STRt',
        meaning: 'minimum-zone straightness: height of the narrowest band that holds all points',
      },
    },
    formula: 'b1 = Σ(x − x̄)(y − ȳ)/Σ(x − x̄)²; b0 = ȳ − b1·x̄; s² = Σr²/(n − 2)',
    assumptions: ['x is known much better than y; readings scatter alike everywhere.'],
    sources: ['nist-strd', 'derived-here'],
    example: {
      inputs: { x: of.texts([0, 1, 2, 3]), y: of.texts(['1', '3', '5', '8']) },
      outputs: { slope: '2.3', intercept: of.text('0.8'), scatter: of.text('0.387') },
      from: 'hand arithmetic: residuals 0.2, −0.1, −0.4, 0.3; s = √(0.30/2)',
    },
    compute: (v) => {
      if (v.x.length !== v.y.length) return conflict(['x', 'y'], 'one x and one y a point are needed');
      const line = lineThrough(v.x, v.y);
      if (!line) return conflict(['x'], 'three points or more are needed, whose x are not all alike');
      const asked = v.at?.map((one) => lineAt(line, one));
      return answer({
        intercept: asLength(line.intercept),
        slope: asRatio(line.slope),
        interceptError: asLength(line.interceptError),
        slopeError: asRatio(line.slopeError),
        scatter: asLength(line.scatter),
        explained: asRatio(line.explained),
        residuals: asLengths(line.residuals),
        values: asked && asLengths(asked.map((one) => one.value)),
        valueErrors: asked && asLengths(asked.map((one) => one.error)),
        pointErrors: asked && asLengths(asked.map((one) => one.ofPoint)),
        straightness: asLength(straightness(v.x, line)),
      });
    },
  });

export const lineFit = lineOf(lengths);
export const lineFitOfNumbers = lineOf(numbers);
