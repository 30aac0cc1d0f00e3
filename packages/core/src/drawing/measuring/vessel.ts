import { arcPoints, at } from '../geometry.js';
import { label, line, polygon, rectangle } from '../shapes.js';
import { type DrawBody, spreadOn } from './body.js';

/** A combustion chamber upside down under a plate, filled from the burette. */
export const chamber: DrawBody = ({ stations }) => {
  const face = 74;
  return {
    shapes: [
      polygon(rectangle(40, face, 220, 84), 'visible', { fill: 'metal', part: 'head' }),
      polygon([at(86, face), ...arcPoints(at(150, face - 36), 74, 118, 242, 14), at(214, face)], 'visible', {
        fill: 'water',
        part: 'chamber',
      }),
      polygon(rectangle(70, face - 8, 160, 8), 'visible', { fill: 'gasket', part: 'plate' }),
      polygon(rectangle(141, 2, 18, 46), 'visible', { fill: 'water', part: 'burette' }),
      ...[0, 1, 2, 3].map((i) => line(at(141, 10 + i * 9), at(149, 10 + i * 9), 'thin')),
      line(at(150, 48), at(150, face - 8), 'visible'),
    ],
    spots: stations.length === 1 ? [at(150, face + 19)] : spreadOn(stations, at(76, face + 19), at(224, face + 19)),
    words: 'The chamber upside down under a plate with a hole, filled from a burette.',
  };
};
/** The part on the pan of a scale. */
export const mass: DrawBody = ({ stations }, scale) => ({
  shapes: [
    polygon([at(84, 148), at(104, 100), at(196, 100), at(216, 148)], 'visible', { fill: 'metal', part: 'scale' }),
    polygon(rectangle(64, 90, 172, 10), 'visible', { fill: 'gasket', part: 'pan' }),
    polygon(rectangle(100, 26, 100, 64), 'visible', { fill: 'metal', part: 'part' }),
    label(at(150, 126), 'g', scale.text),
  ],
  spots: stations.length === 1 ? [at(150, 58)] : spreadOn(stations, at(80, 58), at(220, 58)),
  words: 'The part on the pan of a scale that was set to nought.',
});
