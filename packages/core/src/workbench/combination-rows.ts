/** Lines of the record for the cam as it was read and for figures as they were stated. */
import { figureKind, figureParts, valveName } from '../engine/index.js';
import type { Writer } from './row-words.js';

const READ_AT = { lifter: 'at the lifter', valve: 'at the valve' } as const;

export const combinationRows: {
  readonly [K in 'dead-centre-read' | 'cam-read' | 'pushrod-tried' | 'valve-room-read' | 'figure-stated']: Writer<K>;
} = {
  'dead-centre-read': (_, { cylinder, first, second }) => ({
    what: `Dead centre, cylinder ${cylinder}, by a stop`,
    value: `wheel ${first.text} and ${second.text}`,
  }),
  'cam-read': (bench, { lobe, wheel, lift, at, sense }) => ({
    what: `Lobe of ${valveName(bench.engine, lobe)}, ${READ_AT[at]}`,
    value: `wheel ${wheel.text}, lift ${lift.text}${sense === undefined ? '' : `, ${sense}`}`,
  }),
  'pushrod-tried': (bench, { valve, length, width, offset }) => ({
    what: `Pushrod tried at ${valveName(bench.engine, valve)}`,
    value: `${length.text}: mark ${width.text} wide${offset === undefined ? '' : `, ${offset.text} from the middle`}`,
  }),
  'valve-room-read': (bench, { valve, room, method, wheel }) => ({
    what: `Room of ${valveName(bench.engine, valve)} to its piston, ${method === 'clay' ? 'clay' : 'valve pressed down'}`,
    value: `${wheel === undefined ? '' : `wheel ${wheel.text}, `}room ${room.text}`,
  }),
  'figure-stated': (_, { key, reading, why }) => {
    const { key: bare, place } = figureParts(key);
    const title = figureKind(bare)?.title ?? bare;
    const where =
      place === undefined ? '' : `, ${/^\d+$/.test(place) ? `cylinder ${place}` : place.replaceAll('-', ' ')}`;
    return { what: `Stated: ${title}${where}`, value: `${reading.text} (${why})` };
  },
};
