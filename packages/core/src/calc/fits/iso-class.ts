import type { Length } from '../../quantity/index.js';
import { type Deviations, holeDeviations, LETTERS, shaftDeviations } from './iso-deviations.js';

/** A tolerance class such as H7 (hole, capital letter) or p6 (shaft). */
export interface ToleranceClass {
  readonly of: 'hole' | 'shaft';
  readonly letter: string;
  readonly grade: number;
}

const CLASS = /^(js|[a-z])\s*(\d{1,2})$/i;

/** Reads "H7", "p6", "JS8", "js6"; undefined when the letter is not known here or the grade is not 1 to 18. */
export function readToleranceClass(text: string): ToleranceClass | undefined {
  const [, letter = '', digits = ''] = CLASS.exec(text.trim()) ?? [];
  const grade = Number(digits);
  const hole = letter === letter.toUpperCase();
  const shaft = letter === letter.toLowerCase();
  if (!(hole || shaft) || !LETTERS.includes(letter.toLowerCase()) || !(grade >= 1 && grade <= 18)) return undefined;
  return { of: hole ? 'hole' : 'shaft', letter, grade };
}

/** Limits of a class about the nominal size [µm]; undefined where the class does not exist at that size. */
export const deviationsOf = ({ of, letter, grade }: ToleranceClass, size: Length): Deviations | undefined =>
  of === 'hole' ? holeDeviations(letter, grade, size) : shaftDeviations(letter, grade, size);
