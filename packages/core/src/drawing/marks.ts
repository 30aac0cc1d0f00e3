import type { MarkState, Point, Shape } from './figure.js';
import { at, plus, polar, times } from './geometry.js';
import { arrow, circle, label, line, polyline } from './shapes.js';

/**
 * The mark of a place. Every state has its own shape, so that it reads in black on white and to a colour-blind eye:
 * idle = a ring; lit = two rings, filled centre, four pointer lines; next = dashed ring around; done = tick inside;
 * missing = broken ring and a question mark; wrong = thick ring with a cross; doubt = two arrows apart.
 */
export function markShapes(centre: Point, radius: number, state: MarkState, part: string): readonly Shape[] {
  const look = { part, state };
  const spot = (x: number, y: number) => plus(centre, times(at(x, y), radius));
  const ring = circle(centre, radius, 'visible', { ...look, fill: 'void' });
  switch (state) {
    case 'idle':
      return [ring];
    case 'lit':
      return [
        circle(centre, radius * 1.45, 'visible', { ...look, fill: 'void' }),
        ring,
        circle(centre, radius * 0.62, 'visible', { ...look, fill: 'mark' }),
        ...[45, 135, 225, 315].map((turn) =>
          line(polar(centre, radius * 1.45, turn), polar(centre, radius * 2.15, turn), 'visible', look),
        ),
      ];
    case 'next':
      return [
        circle(centre, radius * 1.3, 'hidden', look),
        circle(centre, radius * 0.8, 'visible', { ...look, fill: 'void' }),
      ];
    case 'done':
      return [ring, polyline([spot(-0.5, 0.02), spot(-0.12, 0.42), spot(0.52, -0.42)], 'visible', look)];
    case 'missing':
      return [circle(centre, radius, 'hidden', { ...look, fill: 'void' }), label(centre, '?', radius * 1.5, look)];
    case 'wrong':
      return [
        circle(centre, radius * 1.15, 'visible', { ...look, fill: 'void' }),
        line(spot(-0.55, -0.55), spot(0.55, 0.55), 'visible', look),
        line(spot(-0.55, 0.55), spot(0.55, -0.55), 'visible', look),
      ];
    case 'doubt':
      return [
        circle(centre, radius * 1.15, 'thin', { ...look, fill: 'void' }),
        ...arrow(spot(-0.2, 0), spot(-1, 0), radius * 0.6, look),
        ...arrow(spot(0.2, 0), spot(1, 0), radius * 0.6, look),
      ];
  }
}
/** How far the mark reaches from its centre, in radii. */
export const markReach = (state: MarkState): number =>
  ({ idle: 1, lit: 1.7, next: 1.3, done: 1, missing: 1, wrong: 1.15, doubt: 1.15 })[state];

const WORDS: Record<MarkState, string> = {
  idle: '',
  lit: 'to do now',
  next: 'comes next',
  done: 'done',
  missing: 'missing',
  wrong: 'wrong',
  doubt: 'in doubt',
};
/** The state as a person hears it; `idle` has no word. */
export const stateWord = (state: MarkState): string => WORDS[state];
/** A name with its state behind it, e.g. "hole 7, done". */
export const withState = (name: string, state: MarkState): string =>
  state === 'idle' ? name : `${name}, ${WORDS[state]}`;

/** "Done: 1 and 2. To do now: 3." in the order in which a person wants to hear it. */
export function stateSentences(entries: readonly { readonly name: string; readonly state: MarkState }[]): string {
  const order: readonly MarkState[] = ['lit', 'next', 'wrong', 'missing', 'doubt', 'done'];
  return order
    .flatMap((state) => {
      const names = entries.filter((entry) => entry.state === state).map((entry) => entry.name);
      if (names.length === 0) return [];
      const word = WORDS[state];
      return [`${word.charAt(0).toUpperCase()}${word.slice(1)}: ${names.join(', ')}.`];
    })
    .join(' ');
}
