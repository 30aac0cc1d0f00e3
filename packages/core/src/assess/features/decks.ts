/** The faces of the block and what is screwed into it (M04, M05, M14, M28). */
import type { Anatomy } from './anatomy.js';
import { blindHolePlaces, countedBoltPlaces } from './fasteners.js';
import { perDeck } from './places.js';
import { always, even, type FeatureRule, single, TENTH, THOU, worst } from './rule.js';
import { points } from './stations.js';

/** Six directions in which a face is tried with the straight edge. */
export const SIX_WAYS = points(
  'one long edge',
  'other long edge',
  'front edge',
  'rear edge',
  'one diagonal',
  'other diagonal',
);

/** The two long edges of a deck by what lies beside them; the walk goes out along one and back along the other. */
function edgesOf({ engine }: Anatomy): readonly [string, string] {
  if (engine.layout.form === 'vee') return ['valley side', 'outer side'];
  return engine.layout.form === 'opposed' ? ['upper side', 'lower side'] : ['left side', 'right side'];
}

export const decks: readonly FeatureRule[] = [
  {
    kind: {
      id: 'deck-flatness',
      title: 'Flatness of the decks',
      one: 'gap under the straight edge',
      area: 'block',
      measured: 'length',
      instrument: 'straightedge-and-feeler',
      resolution: 2e-5,
      condition: 'deck scraped clean, dowels out, bolt holes without raised edges',
      how: 'Straight edge along both long edges, both ends and both diagonals; the thickest feeler that enters under it.',
      figure: 'face',
      sizes: worst('deck-flatness.gap', 'deck flatness'),
      sense: 'neither',
      material: 'block',
    },
    places: perDeck(SIX_WAYS),
    has: always,
  },
  {
    kind: {
      id: 'deck-height',
      title: 'Deck heights',
      one: 'deck height',
      area: 'block',
      measured: 'length',
      instrument: 'height-gauge',
      resolution: TENTH,
      condition: 'bare block, deck clean, arbor of known diameter in the mains',
      how: 'From the crank centreline to the deck at each corner: over the arbor, less half its diameter.',
      figure: 'deck-height',
      sizes: even('deck-height', 'height', 'deck height'),
      sense: 'neither',
      material: 'block',
    },
    places: perDeck((anatomy) => {
      const [near, far] = edgesOf(anatomy);
      return points(`front, ${near}`, `rear, ${near}`, `rear, ${far}`, `front, ${far}`);
    }),
    has: always,
  },
  {
    kind: {
      id: 'bolt-hole-depth',
      title: 'Depths of the blind holes',
      one: 'hole depth',
      area: 'block',
      measured: 'length',
      instrument: 'depth-micrometer',
      resolution: THOU,
      condition: 'threads chased, hole washed and blown dry',
      how: 'From the face to the bottom with a rod; a step or a lump of dirt shows against its neighbours.',
      figure: 'length',
      sizes: single('bolt-hole-depth.depth', 'hole depth'),
      sense: 'neither',
      material: 'block',
    },
    places: blindHolePlaces,
    has: always,
  },
  {
    kind: {
      id: 'bolt-length',
      title: 'Slack lengths of the bolts that are used again',
      one: 'bolt length',
      area: 'assembly',
      measured: 'length',
      instrument: 'outside-micrometer',
      resolution: TENTH,
      condition: 'bolt out, clean, at the temperature of the room',
      how: 'Over both ends, in the dimples where there are any. It is compared with the longest that its maker allows.',
      figure: 'length',
      sizes: single('bolt-length.length', 'bolt length'),
      sense: 'hole',
    },
    places: countedBoltPlaces,
    has: always,
  },
];
