import type { InspectionLimit, ValveKind } from '../../engine/index.js';
import { plainWords } from './words.js';

const wordsOf = (limit: InspectionLimit) =>
  plainWords(`${limit.part} ${limit.what} ${limit.applies === undefined ? (limit.scope ?? '') : ''}`);

/** Valves that the row's words or its property name; both kinds where it names both or none. */
export function kindsNamed(limit: InspectionLimit): readonly ValveKind[] {
  const words = wordsOf(limit);
  const property = limit.property ?? '';
  const intake = /\b(intake|inlet)\b/.test(words) || property.endsWith('-intake');
  const exhaust = /\bexhaust\b/.test(words) || property.endsWith('-exhaust');
  if (intake === exhaust) return ['intake', 'exhaust'];
  return intake ? ['intake'] : ['exhaust'];
}

/**
 * Journals that the row's words name, by number from the front of `last` journals; undefined where it names none. Understands
 * "1-4", "No. 2 and 3", "1, 5", "front", "rear", "middle"; a number with decimals is a size, not a journal.
 */
export function journalsNamed(limit: InspectionLimit, last: number): readonly number[] | undefined {
  const text = `${limit.what} ${limit.applies === undefined ? (limit.scope ?? '') : ''}`.toLowerCase();
  const named = numbersIn(text).concat(endsIn(text, last));
  return named.length === 0 ? undefined : [...new Set(named)];
}

/** The highest journal that the row numbers. */
export function highestNumber(limit: InspectionLimit): number | undefined {
  const numbers = numbersIn(limit.what.toLowerCase());
  return numbers.length === 0 ? undefined : Math.max(...numbers);
}

function numbersIn(text: string): readonly number[] {
  const found = [...text.matchAll(/(?<![\d.])(\d{1,2})(?:\s*(?:-|to)\s*(\d{1,2}))?(?![\d.]|\s*(?:mm|in|deg|c)\b)/g)];
  return found.flatMap(([, from, to]) => {
    const first = Number(from);
    const count = to === undefined ? 1 : Math.max(1, Number(to) - first + 1);
    return Array.from({ length: count }, (_, index) => first + index);
  });
}

function endsIn(text: string, last: number): readonly number[] {
  const ends: number[] = [];
  if (/\bfront\b/.test(text)) ends.push(1);
  if (/\brear\b/.test(text)) ends.push(last);
  if (/\b(middle|centre|center)\b/.test(text)) ends.push(Math.ceil(last / 2));
  return ends;
}

/** Height [m] at which a spring's load is printed, e.g. "load at 42.0 mm"; undefined where the row gives none. */
export function loadHeight(limit: InspectionLimit): { readonly text: string; readonly value: number } | undefined {
  const found = /(\d+(?:\.\d+)?)\s*(mm|in)\b/.exec(limit.what);
  if (found === null) return undefined;
  return { text: `${found[1]} ${found[2]}`, value: Number(found[1]) * (found[2] === 'in' ? 0.0254 : 0.001) };
}
