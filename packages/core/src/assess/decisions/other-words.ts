/** How masses, forces, volumes and differences are written in the words of a decision. */
import { formatQuantity } from '../../quantity/index.js';
import type { LengthWords } from './length-words.js';

/** Scales weigh grams in every shop. */
export const massWords = (mass: number): string => formatQuantity('mass', mass, 'g', 1);
/** Burettes read cubic centimetres in every shop. */
export const volumeWords = (volume: number): string => formatQuantity('volume', volume, 'cm3', 2);
/** A force in the unit that goes with the length: N or lbf. */
export const forceWords = (force: number, { unit }: LengthWords): string =>
  unit === 'in' ? formatQuantity('force', force, 'lbf', 1) : formatQuantity('force', force, 'N', 0);

/** "1 head gasket", "3 shims". */
export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;
