import type { InspectionLimit } from '../../engine/index.js';
import { NOT_SIZES } from './not-sizes.js';
import type { Phrase } from './phrase.js';
import { PROPERTIES } from './properties.js';
import { PHRASES } from './vocabulary.js';
import { plainWords, says } from './words.js';

/** Part and what of a row as one plain text, e.g. `valve stem clearance intake`. */
export function limitWords(limit: InspectionLimit): string {
  return plainWords(`${limit.part} ${limit.what}`);
}

/**
 * Sizes that a row of the sheet limits: what its `property` key says, else what its words say; several where the row names
 * several ("taper and out-of-round, mains and pins"). Empty where it is no size of a worksheet (`whyNoSize`) or not understood.
 * A `property` that ends in `-intake` or `-exhaust` means the size itself for valves of that kind.
 */
export function propertiesOfLimit(limit: InspectionLimit): readonly string[] {
  if (limit.property !== undefined) return [withoutKind(limit.property)];
  const plain = limitWords(limit);
  if (NOT_SIZES.some((row) => row.says.test(plain))) return [];
  const phrase = PHRASES.find((each) => fits(each, plain, limit));
  if (phrase === undefined) return [];
  const apart = says(plain, 'spread') && !phrase.words.includes('spread');
  return phrase.gives
    .flatMap((pattern) => spelled(pattern, plain))
    .map((id) => (apart ? spreadOf(id) : id))
    .filter((id) => PROPERTIES.has(id));
}

/** A difference of sizes is never the size: it is the spread over the points of one part, where the project reads it. */
const spreadOf = (id: string): string =>
  id.replace(/\.(diameter|width|thickness|height|depth|length|mass|volume|load|lift|clearance|wall|angle)$/, '.spread');

/** The size that a row limits, the first where it limits several; undefined where it limits none that is measured. */
export function propertyOfLimit(limit: InspectionLimit): string | undefined {
  return propertiesOfLimit(limit)[0];
}

/** Why a row is no size of a worksheet; undefined for one that is, or that is not understood. */
export function whyNoSize(limit: InspectionLimit): string | undefined {
  if (limit.property !== undefined) return undefined;
  const plain = limitWords(limit);
  return NOT_SIZES.find((row) => row.says.test(plain))?.why;
}

function withoutKind(property: string): string {
  const plain = property.replace(/-(intake|exhaust)$/, '');
  return PROPERTIES.has(plain) ? plain : property;
}

function fits(phrase: Phrase, plain: string, limit: InspectionLimit): boolean {
  return (
    phrase.words.every((word) => says(plain, word)) &&
    !(phrase.without ?? []).some((word) => says(plain, word)) &&
    (phrase.only?.(limit) ?? true)
  );
}

function spelled(pattern: string, plain: string): readonly string[] {
  if (pattern.includes('?')) return ringsIn(plain).map((ring) => pattern.replace('?', ring));
  if (!pattern.endsWith('*')) return [pattern];
  return formsIn(plain, pattern.slice(0, -2)).map((form) => pattern.replace('*', form));
}

/** A taper is read in all directions unless the row names one. The relief side of a piston is the side of its pin. */
function formsIn(plain: string, feature: string): readonly string[] {
  const forms: string[] = [];
  if (says(plain, 'out of round')) forms.push('out-of-round');
  if (says(plain, 'taper')) forms.push(feature === 'cylinder-bore' ? boreTaper(plain) : 'taper');
  return forms.length > 0 ? forms : ['diameter'];
}
function boreTaper(plain: string): string {
  if (/\bthrust\b/.test(plain)) return 'taper-thrust';
  return /\b(relief|axial|pin) (side|direction)\b/.test(plain) ? 'taper-axial' : 'taper';
}

const RING_WORDS: readonly (readonly [string, RegExp])[] = [
  ['top', /\b(top|first|1st|no\.? ?1|number 1)\b/],
  ['second', /\b(second|2nd|no\.? ?2|number 2|intermediate|middle)\b/],
  ['third', /\b(third|3rd|no\.? ?3|number 3)\b/],
  ['oil', /\b(oil|scraper|rails?)\b/],
];
/** Rings that a row names; a row that names none means the compression rings. */
function ringsIn(plain: string): readonly string[] {
  const named = RING_WORDS.filter(([, pattern]) => pattern.test(plain)).map(([ring]) => ring);
  return named.length > 0 ? named : ['top', 'second'];
}
