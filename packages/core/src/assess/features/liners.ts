/** Wet liners and their seats in the block (M13). Fits at flange, upper and lower land only where the maker prints them. */
import type { FeatureKind } from '../model.js';
import { hasWetLiners } from './anatomy.js';
import { perCylinder } from './places.js';
import { even, type FeatureRule, HUNDREDTH, round, single, TENTH, whenAsked } from './rule.js';
import { AXES, grid, lines, one, QUARTERS } from './stations.js';

const ACROSS = grid(lines('middle'), AXES);

function land(
  own: Pick<FeatureKind, 'id' | 'title' | 'one' | 'how'> & { readonly sense: 'hole' | 'shaft' },
): FeatureRule {
  const hole = own.sense === 'hole';
  return {
    kind: {
      area: 'block',
      measured: 'length',
      instrument: hole ? 'bore-gauge' : 'outside-micrometer',
      resolution: TENTH,
      condition: hole ? 'liner out, seat free of scale and old seal' : 'liner out, clean, no seals on it',
      figure: hole ? 'bore' : 'protrusion',
      sizes: round(own.id, own.one).slice(0, 2),
      material: hole ? 'block' : 'liner',
      ...own,
    },
    places: perCylinder(ACROSS),
    has: whenAsked,
  };
}

export const liners: readonly FeatureRule[] = [
  {
    kind: {
      id: 'liner-protrusion',
      title: 'Liner protrusions',
      one: 'liner protrusion',
      area: 'block',
      measured: 'length',
      instrument: 'dial-indicator',
      resolution: HUNDREDTH,
      condition: 'liner held down at the maker’s clamping torque, seals out, seat clean',
      how: 'Zero the dial on the deck, then read the flange at four points round the bore. Above the deck is positive.',
      figure: 'protrusion',
      sizes: even('liner-protrusion', 'height', 'liner protrusion'),
      sense: 'neither',
      material: 'liner',
    },
    places: perCylinder(QUARTERS),
    has: hasWetLiners,
  },
  {
    kind: {
      id: 'counterbore-depth',
      title: 'Depths of the liner counterbores',
      one: 'counterbore depth',
      area: 'block',
      measured: 'length',
      instrument: 'depth-micrometer',
      resolution: HUNDREDTH,
      condition: 'liner out, ledge free of scale',
      how: 'From the deck to the ledge at four points round the bore.',
      figure: 'protrusion',
      sizes: even('counterbore-depth', 'depth', 'counterbore depth'),
      sense: 'hole',
      material: 'block',
    },
    places: perCylinder(QUARTERS),
    has: hasWetLiners,
  },
  {
    kind: {
      id: 'liner-flange',
      title: 'Liner flanges',
      one: 'liner flange thickness',
      area: 'block',
      measured: 'length',
      instrument: 'outside-micrometer',
      resolution: TENTH,
      condition: 'liner out, flange clean, shims off',
      how: 'Thickness of the flange at four points, inside the fire rim where there is one.',
      figure: 'protrusion',
      sizes: even('liner-flange', 'thickness', 'liner flange thickness'),
      sense: 'shaft',
      material: 'liner',
    },
    places: perCylinder(QUARTERS),
    has: hasWetLiners,
  },
  {
    kind: {
      id: 'liner-fire-rim',
      title: 'Fire rims of the liners',
      one: 'fire rim',
      area: 'block',
      measured: 'length',
      instrument: 'depth-micrometer',
      resolution: HUNDREDTH,
      condition: 'liner clean',
      how: 'From the top of the rim down to the flange.',
      figure: 'protrusion',
      sizes: single('liner-fire-rim.height', 'fire rim height'),
      sense: 'neither',
      material: 'liner',
    },
    places: perCylinder(one('height')),
    has: whenAsked,
  },
  land({
    id: 'counterbore',
    title: 'Counterbore diameters',
    one: 'counterbore',
    how: 'Two diameters at right angles above the ledge.',
    sense: 'hole',
  }),
  land({
    id: 'liner-upper-seat',
    title: 'Upper liner seats in the block',
    one: 'upper liner seat',
    how: 'Two diameters at right angles just below the ledge.',
    sense: 'hole',
  }),
  land({
    id: 'liner-lower-seat',
    title: 'Lower liner seats in the block',
    one: 'lower liner seat',
    how: 'Two diameters at right angles in the land of the lower seals.',
    sense: 'hole',
  }),
  land({
    id: 'liner-flange-outside',
    title: 'Outsides of the liner flanges',
    one: 'flange outside',
    how: 'Two diameters at right angles over the flange.',
    sense: 'shaft',
  }),
  land({
    id: 'liner-upper-outside',
    title: 'Liner outsides below the flange',
    one: 'liner outside below the flange',
    how: 'Two diameters at right angles over the upper land.',
    sense: 'shaft',
  }),
  land({
    id: 'liner-lower-outside',
    title: 'Liner outsides at the lower seals',
    one: 'liner outside at the lower seals',
    how: 'Two diameters at right angles over the lower land.',
    sense: 'shaft',
  }),
];
