import type { Volume } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { discArea } from '../volumes.js';
import { height, roomOut, size, surface } from './inputs.js';

export const gasketVolume = defineCalculation({
  id: 'cylinder.gasket-volume',
  subject: 'cylinder',
  title: 'Volume inside a head gasket',
  summary: 'From its compressed thickness and its bore, or the traced area of an opening that is not round.',
  inputs: {
    gasketThickness: height('tg', 'compressed thickness'),
    gasketBore: size('Bg', 'diameter of the opening'),
    tracedArea: { ...surface('A', 'area of the opening by tracing, in place of the circle'), optional: true },
  },
  outputs: { volume: roomOut('Vg', 'volume inside the gasket') },
  formula: 'Vg = π/4·Bg²·tg, or A·tg',
  assumptions: ['Thickness as compressed, not as it comes out of the box.'],
  sources: ['derived-here', 'cylinder-ratio-parts'],
  example: {
    inputs: { gasketThickness: '0.020 in', gasketBore: '4.000 in' },
    outputs: { volume: '0.2513 in3' },
    from: 'magazine article with a worked engine (reference row MO-10)',
  },
  compute: (v) => answer({ volume: ((v.tracedArea ?? discArea(v.gasketBore)) * v.gasketThickness) as Volume }),
});
