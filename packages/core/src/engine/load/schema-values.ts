import { z } from 'zod';
import { MOST_CYLINDERS } from './bounds.js';

/** Pieces that every section of the sheet's schema uses. Texts are read further on; the schema holds the shape. */
export const words = z.string().min(1).max(1500);
/** A grade that is marked by a number alone. */
export const bareMark = z.int().min(0).max(9999).transform(String);
export const from = z.string().min(1).max(300).meta({
  description:
    'Where the figure comes from. Begins with manual, part maker, measured, rule of thumb, memory or invented, then says where, e.g. "manual p. 4-38"; or is a key of `sources`.',
});
export const note = words.meta({ description: 'A remark that is shown beside the figure.' });

const typed = z.union([z.string().min(1).max(200), z.number()]);
/** A quantity: typed text with its unit, or the text with its origin and a remark. Bare numbers are refused later, by name. */
export function quantity(description: string, example: string) {
  return z
    .union([typed, z.strictObject({ value: typed, from: from.optional(), note: note.optional() })])
    .meta({ description, examples: [example, { value: example, from: 'manual p. 12' }] });
}
export const length = (description: string, example = '101.6 mm') => quantity(description, example);

export const plain = (description: string, example: string) => typed.meta({ description, examples: [example] });

export const cylinderNumber = z.int().min(1).max(MOST_CYLINDERS);
export const id = z
  .union([z.string(), z.int().min(0).max(9999).transform(String)])
  .pipe(z.string().regex(/^[A-Za-z0-9][A-Za-z0-9-]{0,39}$/, 'letters, digits and hyphens, at most 40'));
/** "1-10", "A-H", "1-8, 11", 5, or a list of these. */
export const selection = z
  .union([
    z.string().min(1).max(300),
    z.int(),
    z
      .array(z.union([z.string().min(1).max(20), z.int()]))
      .min(1)
      .max(200),
  ])
  .meta({ description: 'Ids: one, a range, or a list.', examples: ['1-10', 'A-H', '1-8, 11', [1, 2, 'A']] });

export const place = {
  x: plain('Along the crank from the front end of the head.', '66 mm'),
  y: plain('Across, positive toward the exhaust side.', '-40 mm'),
};
