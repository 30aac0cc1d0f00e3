import type { Volume } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { buretteVolume as find } from '../burette.js';
import { roomOrNone, roomOut, signedRoom } from './inputs.js';

export const buretteVolume = defineCalculation({
  id: 'cylinder.burette-volume',
  subject: 'cylinder',
  title: 'Volume from burette readings',
  summary:
    'Chamber, dish or any room from the readings of one or more burette fills, with the corrections of the set-up.',
  inputs: {
    starts: { ...roomOrNone('a', 'reading before each fill ran out; a burette counts downward from 0'), list: true },
    ends: { ...roomOrNone('b', 'reading after each fill ran out'), list: true },
    factor: {
      kind: 'ratio',
      symbol: 'f',
      meaning: 'true volume over indicated volume, see cylinder.burette-check',
      unit: '',
      range: { from: 0.5, to: 2 },
      default: 1,
    },
    plateHole: { ...roomOrNone('Vh', 'liquid that stands in the fill hole or recess of the plate'), default: 0 },
    grease: { ...roomOrNone('Vf', 'room that sealing grease has taken inside'), default: 0 },
    parts: {
      ...signedRoom('Vx', 'valves, plug and the like not as they will run: added with its sign'),
      default: 0,
    },
    meniscus: {
      ...signedRoom('Vn', 'added when start and end were not read at the same edge of the meniscus'),
      default: 0,
    },
  },
  outputs: {
    volume: roomOut('V', 'volume of the room'),
    delivered: roomOut('Σ', 'indicated: all that ran out of the burette'),
  },
  formula: 'V = f·Σ(b − a) + Vn − Vh + Vf + Vx',
  assumptions: [
    'Plate flat and sealed, no bubble left, the fill hole at the highest point.',
    'Start and end read at the same edge of the meniscus, eye level: its height then cancels.',
  ],
  sources: ['shop-practice', 'derived-here'],
  example: {
    inputs: { starts: ['0.0 cc', '0.0 cc'], ends: ['50.0 cc', '14.2 cc'], plateHole: '0.3 cc' },
    outputs: { volume: '63.9 cm3', delivered: '64.2 cm3' },
    from: 'hand arithmetic',
  },
  compute: (v) => {
    if (v.starts.length !== v.ends.length) return conflict(['starts', 'ends'], 'each fill needs a start and an end');
    const fills = v.starts.map((start, place) => ({ start, end: v.ends[place] as Volume }));
    if (fills.some(({ start, end }) => end < start)) {
      return conflict(['starts', 'ends'], 'a burette counts downward: the end must not be below the start');
    }
    const none = { plateHole: 0, grease: 0, parts: 0, meniscus: 0 } as Parameters<typeof find>[2];
    const volume = find(fills, v.factor, v);
    if (volume <= 0) return conflict(['starts', 'ends', 'plateHole', 'parts', 'meniscus'], 'no volume is left');
    return answer({ volume, delivered: find(fills, 1 as typeof v.factor, none) });
  },
});
