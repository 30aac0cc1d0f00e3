/** Words and numbers of the degree wheel. */
import { formatNumber, wrapped } from '../../quantity/index.js';

const DEGREE = Math.PI / 180;
const TURN = 360;
/** Wheels are read to a quarter of a degree at best. */
const PLACES = 2;

export const inDegrees = (angle: number): number => angle / DEGREE;
const tidy = (number: number): string => formatNumber(number, PLACES).replace(/\.?0+$/, '');

/** What a wheel that counts 0 to 360 shows [rad in]: "252.5°". */
export const wheelText = (angle: number): string => `${tidy(wrapped(Math.round(inDegrees(angle) * 100) / 100, TURN))}°`;
/** "12.5°" without a sign. */
export const degreesText = (angle: number): string => `${tidy(Math.abs(inDegrees(angle)))}°`;
/** "108° after top", of a crank angle after the top of overlap. */
export function fromTop(angle: number): string {
  const text = tidy(Math.round(Math.abs(inDegrees(angle)) * 10) / 10);
  return text === '0' ? 'at top' : `${text}° ${angle < 0 ? 'before' : 'after'} top`;
}
/** "1.5° later than wanted". */
export const laterText = (later: number): string =>
  `${formatNumber(Math.abs(inDegrees(later)), 1)}° ${later < 0 ? 'earlier' : 'later'}`;
