/** One place for each kind of figure, with stations as a sheet would have them. Names are the trade's; figures are invented. */
import type { FigureKind } from '../../assess/index.js';
import type { PlaceShown, ReadingState, StationShown } from './index.js';

const STATES: readonly ReadingState[] = ['in', 'out', 'near', 'read', 'empty', 'disagrees'];

const grid = (heights: readonly string[], directions: readonly string[]): readonly Omit<StationShown, 'state'>[] =>
  heights.flatMap((high, height) =>
    directions.map((way, direction) => ({
      slot: `part/1/${height}-${direction}`,
      name: directions.length > 1 ? `${high}, ${way}` : high,
      height,
      direction,
    })),
  );
const row = (...names: readonly string[]) => names.map((name, i) => ({ slot: `part/1/${i}`, name }));

const STATIONS: Readonly<Record<FigureKind, readonly Omit<StationShown, 'state'>[]>> = {
  bore: grid(['top', 'middle', 'bottom'], ['across the crank', 'along the crank']),
  journal: grid(['front plane', 'rear plane'], ['a', 'b']),
  housing: grid(['front plane', 'rear plane'], ['vertical', '60 degrees', '120 degrees']),
  shell: row('middle'),
  piston: row('across the thrust faces'),
  pin: grid(['front', 'middle', 'rear'], ['a', 'b']),
  'ring-gap': row('gap'),
  'ring-groove': row('front', 'exhaust side', 'rear', 'intake side'),
  face: row('intake edge', 'exhaust edge', 'across, front', 'across, rear', 'diagonal a', 'diagonal b'),
  'deck-height': row('front', 'rear'),
  protrusion: row('front', 'right', 'rear', 'left'),
  chamber: row('volume'),
  'cam-lobe': row('lift'),
  'follower-bore': grid(['upper', 'lower'], ['across the crank', 'along the crank']),
  'valve-stem': grid(['top', 'middle', 'bottom'], ['a']),
  'valve-guide': grid(['top', 'middle', 'bottom'], ['a']),
  'valve-seat': row('width'),
  spring: row('free length', 'load at the seat', 'load at full lift'),
  runout: row('middle'),
  float: row('end float'),
  backlash: row('backlash'),
  mass: row('mass'),
  length: row('length'),
};
export const FIGURE_KINDS = Object.keys(STATIONS) as readonly FigureKind[];

/** The place of a kind with a state for each station, spread from `start`; the fifth empty one is asked for now. */
export function placeOf(figure: FigureKind, start = 0): PlaceShown {
  const stations = STATIONS[figure].map((one, i): StationShown => {
    const state = STATES[(i + start) % STATES.length] ?? 'empty';
    return { ...one, state, ...(state === 'empty' ? {} : { text: '4.0302' }) };
  });
  const current = stations.find((one) => one.state === 'empty')?.slot;
  return { figure, title: `Place of a ${figure}`, stations, bores: 4, ...(current === undefined ? {} : { current }) };
}
