/** Cylinder bores and what is looked at around them (M01, M02, M03, M16). */

import type { SizeRule } from '../model.js';
import { type Anatomy, hasWetLiners } from './anatomy.js';
import { perCylinder } from './places.js';
import { always, type FeatureRule, HUNDREDTH, round, single, TENTH, whenAsked } from './rule.js';
import { grid, type Line, lines, one, points, slug } from './stations.js';

const HEIGHTS = lines('top', 'middle', 'bottom');
const DIRECTIONS = lines('thrust', 'axial');

/** Heights from the deck that the maker names, else top, middle and bottom of ring travel. */
function heightsOf({ engine }: Anatomy): readonly Line[] {
  const stated = engine.inspection?.boreHeights ?? [];
  if (stated.length === 0) return HEIGHTS;
  return stated.map(({ name, depth }) => ({
    id: slug(name),
    name: depth === undefined || name.includes(depth.text) ? name : `${name}, ${depth.text} below the deck`,
  }));
}

/** Directions that the maker names, else across the engine (thrust) and along the crank (axial). */
function directionsOf({ engine }: Anatomy): readonly Line[] {
  const stated = engine.inspection?.boreDirections ?? [];
  const named = stated.length === 0 ? DIRECTIONS : lines(...stated);
  return named.map(({ id, name }) => ({
    id: directionId(id, name),
    name: /direction|along|across/.test(name) ? name : `${name} direction`,
  }));
}

/** The two directions have one id each, whatever words the maker has for them. */
function directionId(id: string, name: string): string {
  if (/thrust|across/.test(name)) return 'thrust';
  return /axial|along|pin/.test(name) ? 'axial' : id;
}

function boreSizes(heights: readonly Line[], directions: readonly Line[]): readonly SizeRule[] {
  const along = directions
    .filter(({ id }) => id === 'thrust' || id === 'axial')
    .map(({ id, name }) => ({
      property: `cylinder-bore.taper-${id}`,
      title: `bore taper, ${name}`,
      form: 'taper' as const,
      stations: heights.map((height) => `${height.id}-${id}`),
    }));
  return [...round('cylinder-bore', 'bore'), ...along];
}

export const bores: readonly FeatureRule[] = [
  {
    kind: {
      id: 'cylinder-bore',
      title: 'Cylinder bores',
      one: 'bore',
      area: 'block',
      measured: 'length',
      instrument: 'bore-gauge',
      resolution: TENTH,
      condition: 'bare block, clean and dry; torque plate on where the maker says so',
      how: 'Set the gauge in a micrometer at the nominal size. Rock it at each height and take the smallest reading, first across the engine, then along the crank.',
      figure: 'bore',
      sizes: boreSizes(HEIGHTS, lines('thrust', 'axial')),
      sense: 'hole',
      material: 'block',
    },
    places: perCylinder((anatomy) => grid(heightsOf(anatomy), directionsOf(anatomy))),
    has: always,
    fitted: (anatomy) => ({
      sizes: boreSizes(heightsOf(anatomy), directionsOf(anatomy)),
      material: hasWetLiners(anatomy) ? 'liner' : 'block',
    }),
  },
  {
    kind: {
      id: 'bore-ridge',
      title: 'Ridges at the bore tops',
      one: 'ridge',
      area: 'block',
      measured: 'length',
      instrument: 'feeler-gauge',
      resolution: 2e-5,
      condition: 'carbon cleaned off the top of the bore',
      how: 'Lay a straight blade down the bore wall against the worn part; the widest feeler under it at the unworn top is the step.',
      figure: 'bore',
      sizes: single('bore-ridge.step', 'ridge'),
      optional: true,
      sense: 'neither',
      material: 'block',
    },
    places: perCylinder(one('step')),
    has: always,
  },
  {
    kind: {
      id: 'crosshatch',
      title: 'Crosshatch of the bores',
      one: 'crosshatch angle',
      area: 'block',
      measured: 'angle',
      instrument: 'protractor',
      resolution: Math.PI / 180,
      condition: 'honed and washed',
      how: 'Press paper on the wall with a pencil rubbed flat, lay it out, and read the whole angle between the two sets of scratches.',
      figure: 'bore',
      sizes: single('crosshatch.angle', 'crosshatch angle'),
      optional: true,
      sense: 'neither',
    },
    places: perCylinder(one('angle')),
    has: always,
  },
  {
    kind: {
      id: 'bore-wall',
      title: 'Wall thickness of the bores',
      one: 'bore wall',
      area: 'block',
      measured: 'length',
      instrument: 'ultrasonic-gauge',
      resolution: 1e-4,
      condition: 'gauge set on a piece of the same iron of known thickness',
      how: 'On the thrust side and on the side opposite, halfway down and near the bottom. The thinnest decides how far it may be bored.',
      figure: 'bore',
      sizes: [{ property: 'bore-wall.thinnest', title: 'thinnest bore wall', form: 'smallest' }],
      sense: 'neither',
      material: 'block',
    },
    places: perCylinder(
      points('thrust side, middle', 'thrust side, bottom', 'opposite side, middle', 'opposite side, bottom'),
    ),
    has: ({ engine }) => engine.machining?.leastBoreWall !== undefined,
  },
  {
    kind: {
      id: 'dry-liner',
      title: 'Outsides of the dry liners',
      one: 'dry liner',
      area: 'block',
      measured: 'length',
      instrument: 'outside-micrometer',
      resolution: HUNDREDTH,
      condition: 'liner out of the block, clean',
      how: 'Over the outside at both ends, two diameters at right angles.',
      figure: 'bore',
      sizes: round('dry-liner', 'dry liner'),
      sense: 'shaft',
      material: 'liner',
    },
    places: perCylinder(grid(lines('top', 'bottom'), lines('thrust', 'axial'))),
    has: whenAsked,
  },
];
