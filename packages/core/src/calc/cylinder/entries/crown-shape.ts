import type { Volume } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { capVolume, discVolume, frustumVolume } from '../volumes.js';
import { roomOut, size } from './inputs.js';

export const crownShape = defineCalculation({
  id: 'cylinder.crown-shape',
  subject: 'cylinder',
  title: 'Volume of a round dish or dome from its sizes',
  summary: 'Flat-floored dish, dish with a sloping wall, or spherical cap; with the sign that the ratio needs.',
  inputs: {
    shape: {
      kind: 'choice',
      symbol: 'shape',
      meaning: 'straight wall, sloping wall, or spherical',
      choices: ['straight', 'sloping', 'spherical'],
      default: 'straight',
    },
    is: { kind: 'choice', symbol: 'is', meaning: 'dish (adds room) or dome (takes room)', choices: ['dish', 'dome'] },
    diameter: size('D', 'diameter at the crown flat'),
    floorDiameter: { ...size('d', 'diameter at the floor or top, for a sloping wall'), optional: true },
    depth: size('h', 'depth of the dish or height of the dome, at its middle'),
  },
  outputs: { volume: roomOut('Vp', 'crown volume: dish positive, dome negative') },
  formula: 'straight π/4·D²·h; sloping π/12·h·(D² + D·d + d²); spherical π/24·h·(3·D² + 4·h²)',
  assumptions: ['Round and concentric edges are sharp; valve reliefs are extra. Measuring with a burette is surer.'],
  sources: ['derived-here'],
  example: {
    inputs: { shape: 'sloping', is: 'dish', diameter: '80 mm', floorDiameter: '60 mm', depth: '4 mm' },
    outputs: { volume: '15.50 cm3' },
    from: 'hand arithmetic: π/12·4·(6400 + 4800 + 3600) = 15 498 mm³',
  },
  compute: (v) => {
    if ((v.shape === 'sloping') !== (v.floorDiameter !== undefined)) {
      return conflict(['shape', 'floorDiameter'], 'a floor diameter belongs to a sloping wall, and only to it');
    }
    const room = roomOf(v.shape, v.diameter, v.floorDiameter ?? v.diameter, v.depth);
    return answer({ volume: (v.is === 'dish' ? room : -room) as Volume });
  },
});

function roomOf(
  shape: 'straight' | 'sloping' | 'spherical',
  ...[top, floor, depth]: Parameters<typeof frustumVolume>
): Volume {
  if (shape === 'straight') return discVolume(top, depth);
  return shape === 'sloping' ? frustumVolume(top, floor, depth) : capVolume(top, depth);
}
