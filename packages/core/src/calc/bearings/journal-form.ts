import type { Length } from '../../quantity/index.js';

/** Diameters of one journal or bore in two directions, plane by plane along it. */
export interface PlaneReading {
  readonly x: Length;
  readonly y: Length;
}
/** `ends`: first plane against last; `spread`: largest less smallest of one direction. A limit belongs to its rule. */
export type TaperRule = 'ends' | 'spread';

export interface JournalForm {
  readonly outOfRound: Length;
  readonly taper: Length;
  readonly largest: Length;
  readonly smallest: Length;
}

/**
 * Out-of-round and taper of a journal, and its largest diameter, with which the clearance must be judged [m].
 *
 *   out-of-round = max over planes |X − Y|;  taper = max over X and Y of |first − last|, or of largest − smallest
 *
 * `planes` along the journal, one or more; `rule` of the taper. A single plane has no taper: 0.
 * Example: X 59.9640, 59.9625 and Y 59.9632, 59.9620 mm: out-of-round 0.0008, taper 0.0015 mm.
 * Source: bibliography key `journal-form`.
 */
export function journalForm(planes: readonly PlaneReading[], rule: TaperRule): JournalForm {
  const directions = [planes.map(({ x }) => x), planes.map(({ y }) => y)];
  const all = directions.flat();
  return {
    outOfRound: Math.max(...planes.map(({ x, y }) => Math.abs(x - y))) as Length,
    taper: Math.max(...directions.map((line) => taperOf(line, rule))) as Length,
    largest: Math.max(...all) as Length,
    smallest: Math.min(...all) as Length,
  };
}

function taperOf(line: readonly Length[], rule: TaperRule): number {
  if (rule === 'spread') return Math.max(...line) - Math.min(...line);
  return Math.abs((line.at(0) as Length) - (line.at(-1) as Length));
}
