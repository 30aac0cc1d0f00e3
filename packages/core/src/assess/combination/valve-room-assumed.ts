/** What is taken for granted of the room between valve and piston where nobody says it. */
import { fromHalfWidth, megapascals } from '../../quantity/index.js';
import type { GivenFigure } from './model.js';

const PRACTICE = 'common practice, no source';
/** Mean temperatures are known to about so much (common practice, no source). */
const WARMTH = fromHalfWidth(30);

const assumed = (key: string, value: number, u: number, from: string): GivenFigure => ({
  key,
  value,
  u,
  origin: 'assumed',
  from,
});

/** Figures of hot pistons, and the smaller of both rooms where nobody says what the valve meets. */
export const VALVE_ROOM_ASSUMED: readonly GivenFigure[] = [
  assumed('crown', 0, 0, 'a pocket parallel to the valve: the smaller room of the two'),
  assumed('pushrod-tilt', 0, 0, 'pushrod in line with the travel of the lifter'),
  assumed('rod-modulus', megapascals(205_000), fromHalfWidth(megapascals(5_000)), `a steel rod; ${PRACTICE}`),
  assumed('rod-shank-share', 0, 0, 'the weighed small end holds its share of the shank'),
  assumed('running-play', 0, 0, 'no play is taken up'),
  assumed('rod-warmer', 90, WARMTH, `mean of the rod at full load; ${PRACTICE}`),
  assumed('piston-warmer', 180, WARMTH, `mean between pin and crown at full load; ${PRACTICE}`),
  assumed('block-warmer', 70, WARMTH, `coolant; ${PRACTICE}`),
  assumed('rod-expansion', 11.5e-6, 0, 'steel; bibliography of materials'),
  assumed('piston-expansion', 20.5e-6, fromHalfWidth(1.5e-6), `aluminium alloys of pistons; ${PRACTICE}`),
  assumed('block-expansion', 11e-6, 0, 'cast iron; an aluminium block has 23 ppm/K'),
];
