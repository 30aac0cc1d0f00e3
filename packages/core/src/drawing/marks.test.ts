import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { MarkState, Shape } from './figure.js';
import { anyState } from './figures.suite.js';
import { at, distance } from './geometry.js';
import { markReach, markShapes, stateSentences, withState } from './marks.js';

const STATES: readonly MarkState[] = ['idle', 'lit', 'next', 'done', 'missing', 'wrong', 'doubt'];
/** The mark without its colour: geometry, line type and whether it is filled solid. */
const withoutColour = (shapes: readonly Shape[]): string =>
  JSON.stringify(shapes.map(({ state: _state, ...rest }) => rest));

describe('marks', () => {
  // Bench ergonomics, section 4 of the design notes: shape and word before colour (WCAG 2.2, 1.4.1).
  it('differ from each other without any colour', () => {
    const drawn = STATES.map((state) => withoutColour(markShapes(at(0, 0), 10, state, 'x')));
    expect(new Set(drawn).size).toBe(STATES.length);
  });
  it('have a word for every state but idle', () => {
    const names = STATES.map((state) => withState('hole 7', state));
    expect(new Set(names).size).toBe(STATES.length);
    expect(withState('hole 7', 'idle')).toBe('hole 7');
  });
  it('keep within the reach that they claim, pointer lines apart', () => {
    fc.assert(
      fc.property(anyState, (state) => {
        for (const shape of markShapes(at(3, 4), 10, state, 'x')) {
          if (shape.kind !== 'circle') continue;
          expect(distance(shape.centre, at(3, 4)) + shape.radius).toBeLessThanOrEqual(markReach(state) * 10 + 1e-9);
        }
      }),
    );
  });
  it('are told with what is to be done first', () => {
    const entries = [
      { name: 'hole 1', state: 'done' },
      { name: 'hole 2', state: 'lit' },
      { name: 'hole 3', state: 'idle' },
    ] as const;
    expect(stateSentences(entries)).toBe('To do now: hole 2. Done: hole 1.');
  });
});
