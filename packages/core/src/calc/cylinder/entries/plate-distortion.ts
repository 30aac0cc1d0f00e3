import type { Length } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { spreadOf } from '../spread.js';
import { lengthOut, size } from './inputs.js';

const reading = (symbol: string, meaning: string) => ({ ...size(symbol, meaning), list: true }) as const;

export const plateDistortion = defineCalculation({
  id: 'cylinder.plate-distortion',
  subject: 'cylinder',
  title: 'What a torque plate does to a bore',
  summary:
    'Change of each reading when the plate is bolted on, and the reading without it that stands for a finished size.',
  inputs: {
    without: reading('D0', 'diameters without the plate'),
    withPlate: reading('D1', 'diameters at the same places with the plate torqued on'),
    finished: { ...size('B', 'finished size wanted with the plate on'), optional: true },
  },
  outputs: {
    changes: { ...lengthOut('Δ', 'with plate less without, each place', 4), list: true },
    largestGrowth: lengthOut('Δmax', 'largest change', 4),
    largestShrink: lengthOut('Δmin', 'smallest change', 4),
    distortion: lengthOut('δ', 'largest less smallest change: what honing without the plate would leave', 4),
    readings: {
      ...lengthOut('B − Δ', 'reading without the plate for the finished size, each place', 4),
      list: true,
      optional: true,
    },
  },
  formula: 'Δ = D1 − D0; reading without plate = B − Δ',
  assumptions: ['Same gasket, fasteners and torque as the head; same temperature.'],
  sources: ['derived-here'],
  example: {
    inputs: { without: ['4.0302 in', '4.0300 in'], withPlate: ['4.0298 in', '4.0304 in'], finished: '4.0305 in' },
    outputs: { changes: ['-0.0004 in', '0.0004 in'], distortion: '0.0008 in', readings: ['4.0309 in', '4.0301 in'] },
    from: 'hand arithmetic',
  },
  compute: (v) => {
    if (v.without.length !== v.withPlate.length) {
      return conflict(['without', 'withPlate'], 'each place needs one reading with and one without the plate');
    }
    const changes = v.without.map((one, place) => ((v.withPlate[place] as Length) - one) as Length);
    const { least, most, apart } = spreadOf(changes);
    const { finished } = v;
    return answer({
      changes,
      largestGrowth: most as Length,
      largestShrink: least as Length,
      distortion: apart as Length,
      readings: finished === undefined ? undefined : changes.map((one) => (finished - one) as Length),
    });
  },
});
