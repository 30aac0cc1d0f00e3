import { type Length, litres, type Ratio, type Volume } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { discArea } from '../volumes.js';
import { bore, cylinders, lengthOut, ratioOut, stroke } from './inputs.js';

export const sizeFromDisplacement = defineCalculation({
  id: 'cylinder.size-from-displacement',
  subject: 'cylinder',
  title: 'Bore and stroke from displacement',
  summary: 'The stroke for a bore, the bore for a stroke, or both for a stroke-to-bore ratio.',
  inputs: {
    displacement: {
      kind: 'volume',
      symbol: 'V',
      meaning: 'displacement of the whole engine (of one cylinder with N = 1)',
      unit: 'L',
      range: { above: 0, to: litres(10_000) },
    },
    cylinders,
    bore: { ...bore, optional: true },
    stroke: { ...stroke, optional: true },
    strokeToBore: {
      kind: 'ratio',
      symbol: 'S/B',
      meaning: 'stroke over bore, 1 for a square engine; give exactly one of bore, stroke and this',
      unit: '',
      range: { above: 0, to: 10 },
      optional: true,
    },
  },
  outputs: {
    bore: lengthOut('B', 'bore'),
    stroke: lengthOut('S', 'stroke'),
    strokeToBore: ratioOut('S/B', 'stroke over bore', 4),
  },
  formula: 'π/4·B²·S = V/N',
  assumptions: ['All cylinders alike.'],
  sources: ['derived-here', 'pulkrabek-crank'],
  example: {
    inputs: { displacement: '3.000 L', cylinders: 6, strokeToBore: '1' },
    outputs: { bore: '86.0 mm', stroke: '86.0 mm' },
    from: 'textbook square V6 (reference row MO-06)',
  },
  compute: (v) => {
    const each = (v.displacement / v.cylinders) as Volume;
    const given = [v.bore, v.stroke, v.strokeToBore].filter((one) => one !== undefined).length;
    const b = v.bore ?? boreOf(each, v.stroke, v.strokeToBore);
    if (given !== 1 || b === undefined) {
      return conflict(['bore', 'stroke', 'strokeToBore'], 'exactly one of bore, stroke and strokeToBore is needed');
    }
    const s = v.stroke ?? ((each / discArea(b)) as Length);
    return answer({ bore: b, stroke: s, strokeToBore: (s / b) as Ratio });
  },
});

function boreOf(volume: Volume, stroke: Length | undefined, strokeToBore: Ratio | undefined): Length | undefined {
  const quarter = Math.PI / 4;
  if (stroke !== undefined) return Math.sqrt(volume / quarter / stroke) as Length;
  if (strokeToBore !== undefined) return Math.cbrt(volume / quarter / strokeToBore) as Length;
  return undefined;
}
