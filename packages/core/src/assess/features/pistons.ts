/** Pistons and pins (M29, M31, M32, M35, M36). */
import type { FeatureKind } from '../model.js';
import type { Anatomy } from './anatomy.js';
import { perPart } from './places.js';
import { always, CALIPER, type FeatureRule, round, single, TENTH, THOU, whenAsked } from './rule.js';
import { AXES, ENDS, grid, lines, one } from './stations.js';

const piston = { area: 'pistons', measured: 'length', material: 'piston' } as const satisfies Partial<FeatureKind>;

const SKIRT = 'Across the skirt, at right angles to the pin, at the height that the piston maker names.';
function skirtHow({ engine }: Anatomy): Partial<FeatureKind> {
  const height = engine.inspection?.pistonHeight;
  if (height === undefined) return {};
  return { how: `Across the skirt, at right angles to the pin, ${height.text} above its lower edge.` };
}

function mass(id: string, title: string, what: string, condition: string): FeatureRule {
  return {
    kind: {
      id,
      title,
      one: what,
      area: 'pistons',
      measured: 'mass',
      instrument: 'scale',
      resolution: 1e-4,
      condition,
      how: 'Each by itself, scale level and set to zero before each.',
      figure: 'mass',
      sizes: single(`${id}.mass`, what),
      sense: 'neither',
    },
    places: perPart(one('mass')),
    has: always,
  };
}

export const pistons: readonly FeatureRule[] = [
  {
    kind: {
      ...piston,
      id: 'piston-skirt',
      title: 'Piston skirts',
      one: 'piston',
      instrument: 'outside-micrometer',
      resolution: TENTH,
      condition: 'piston clean and at the temperature of the block',
      how: SKIRT,
      figure: 'piston',
      sizes: single('piston-skirt.diameter', 'piston diameter'),
      sense: 'shaft',
    },
    places: perPart(one('skirt')),
    has: always,
    fitted: skirtHow,
  },
  {
    kind: {
      ...piston,
      id: 'pin-bore',
      title: 'Pin bores of the pistons',
      one: 'pin bore',
      instrument: 'small-bore-gauge',
      resolution: TENTH,
      condition: 'pin and locks out, oil holes clean',
      how: 'Two diameters at right angles in the front boss and in the rear boss.',
      figure: 'pin',
      sizes: round('pin-bore', 'pin bore'),
      sense: 'hole',
    },
    places: perPart(grid(ENDS, AXES)),
    has: always,
  },
  {
    kind: {
      id: 'piston-pin',
      title: 'Piston pins',
      one: 'piston pin',
      area: 'pistons',
      measured: 'length',
      instrument: 'outside-micrometer',
      resolution: TENTH,
      condition: 'pin out and clean',
      how: 'Two diameters at right angles where the front boss, the rod and the rear boss run.',
      figure: 'pin',
      sizes: round('piston-pin', 'piston pin'),
      sense: 'shaft',
    },
    places: perPart(grid(lines('front', 'middle', 'rear'), AXES)),
    has: always,
  },
  {
    kind: {
      id: 'pin-length',
      title: 'Lengths of the piston pins',
      one: 'pin length',
      area: 'pistons',
      measured: 'length',
      instrument: 'caliper',
      resolution: CALIPER,
      condition: 'pin out and clean',
      how: 'Over both ends.',
      figure: 'length',
      sizes: single('pin-length.length', 'pin length'),
      sense: 'shaft',
    },
    places: perPart(one('length')),
    has: whenAsked,
  },
  {
    kind: {
      ...piston,
      id: 'compression-height',
      title: 'Compression heights',
      one: 'compression height',
      instrument: 'height-gauge',
      resolution: THOU,
      condition: 'pin in the piston, crown on a surface plate',
      how: 'From the crown’s flat to the near side of the pin, plus half the pin.',
      figure: 'piston',
      sizes: single('compression-height.height', 'compression height'),
      sense: 'neither',
    },
    places: perPart(one('height')),
    has: always,
  },
  {
    kind: {
      id: 'crown-volume',
      title: 'Volumes of the piston crowns',
      one: 'crown volume',
      area: 'pistons',
      measured: 'volume',
      instrument: 'burette',
      resolution: 1e-7,
      condition: 'piston at a known depth in its bore, sealed with grease, plate over it',
      how: 'What the space takes, less the plain disc of that depth. A dish counts positive, a dome negative.',
      figure: 'piston',
      sizes: single('crown-volume.volume', 'crown volume'),
      sense: 'neither',
    },
    places: perPart(one('volume')),
    has: always,
  },
  mass('piston-mass', 'Masses of the pistons', 'piston mass', 'clean and dry, without pin, locks and rings'),
  mass('pin-mass', 'Masses of the pins', 'pin mass', 'clean and dry, with the locks that hold it'),
  mass('ring-mass', 'Masses of the ring sets', 'ring set mass', 'all rings of one piston together'),
];
