import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mm } from '../../quantity/index.js';
import { alternativeOf, assessed, figureOf, four } from './bench.suite.js';
import { lengthWords } from './length-words.js';
import { pins } from './pins.js';

const LIMITS = `limits:
  - { part: piston pin, what: clearance in piston, whenNew: 0.002..0.012 mm }
  - { part: piston pin, what: clearance in rod, whenNew: 0.006..0.018 mm }
`;
const engine = four(`crankTrain: { bore: 80 mm, stroke: 90 mm }\n${LIMITS}`);
const read = (feature: string, base: number, um: readonly number[]) =>
  Object.fromEntries(um.map((one, at) => [`${feature}/${at + 1}`, mm(base + one / 1000)]));
const decide = (...given: Parameters<typeof assessed>) => {
  const [decision] = pins(assessed(...given), lengthWords('mm'));
  if (decision === undefined) throw new Error('an engine with pins has this decision');
  return decision;
};

describe('piston pins', () => {
  const sizes = {
    ...read('piston-pin', 20, [0, 0, 0, 0]),
    ...read('pin-bore', 20, [7, 7, 7, 7]),
    ...read('small-end-bore', 20, [12, 12, 12, 12]),
  };

  it('stay with the pistons that they ran in where nothing is better', () => {
    const decision = decide(engine, sizes);
    expect(decision.recommended).toBe('as-tagged');
    expect(figureOf(decision, 'as-tagged', 'cylinder 1')).toMatch(
      /^pin 1: in the piston 0\.0070.*, in the rod 0\.0120/,
    );
  });

  it('change places where a tagged one binds in the piston or rattles in the rod', () => {
    const decision = decide(engine, {
      ...sizes,
      ...read('piston-pin', 20, [6, 0, 0, 0]),
      ...read('pin-bore', 20, [7, 13, 7, 7]),
      ...read('small-end-bore', 20, [12, 18, 12, 12]),
    });
    expect(alternativeOf(decision, 'as-tagged').possible).toBe(false);
    expect(alternativeOf(decision, 'as-tagged').against).toContain(
      'cylinder 1: clearance in the piston 0.001 mm is outside 0.002..0.012 mm.',
    );
    expect(figureOf(decision, decision.recommended ?? '', 'cylinder 2')).toMatch(/^pin 1/);
  });

  it('that none fit are said, with what can be done', () => {
    const decision = decide(engine, { ...sizes, ...read('pin-bore', 20, [7, 7, 7, 40]) });
    expect(decision.recommended).toBeUndefined();
    expect(alternativeOf(decision, 'least-total').against[0]).toContain('cylinder 4');
  });

  it('are judged on one side only where the maker prints one window, and that is said', () => {
    const one = four(`crankTrain: { bore: 80 mm, stroke: 90 mm }
limits:
  - { part: piston pin, what: clearance in rod, whenNew: 0.006..0.018 mm }
`);
    const decision = decide(one, {
      ...read('piston-pin', 20, [0, 0, 0, 0]),
      ...read('small-end-bore', 20, [12, 12, 12, 12]),
    });
    expect(decision.cautions[0]).toBe(
      'The sheet prints no clearance window of the pin in the piston: that side is not judged.',
    );
    expect(figureOf(decision, 'as-tagged', 'cylinder 1')).not.toContain('in the piston');
    expect(decide(engine, {}).missing).toEqual([
      'piston pin: measure all 4 places',
      'pin bore: measure all 4 places',
      'small-end bore: measure all 4 places',
    ]);
  });

  it('are shared out as well as the best of all 24 ways', () => {
    const um = fc.array(fc.integer({ min: 0, max: 8 }), { minLength: 4, maxLength: 4 });
    function* orders(list: readonly number[]): Generator<readonly number[]> {
      if (list.length === 0) yield [];
      for (const one of list) for (const rest of orders(list.filter((other) => other !== one))) yield [one, ...rest];
    }
    fc.assert(
      fc.property(um, um, um, (shafts, pistons, rods) => {
        const decision = decide(engine, {
          ...read('piston-pin', 20, shafts),
          ...read('pin-bore', 20.004, pistons),
          ...read('small-end-bore', 20.009, rods),
        });
        const totals = [...orders([0, 1, 2, 3])].map((way) =>
          way.reduce((sum, pin, at) => {
            const [inPiston, inRod] = [
              4 + (pistons[at] ?? 0) - (shafts[pin] ?? 0),
              9 + (rods[at] ?? 0) - (shafts[pin] ?? 0),
            ];
            const fits = inPiston >= 2 && inPiston <= 12 && inRod >= 6 && inRod <= 18;
            return fits ? sum + Math.abs(inPiston - 7) + Math.abs(inRod - 12) : Number.POSITIVE_INFINITY;
          }, 0),
        );
        const best = Math.min(...totals);
        expect(alternativeOf(decision, 'least-total').possible).toBe(Number.isFinite(best));
        if (Number.isFinite(best))
          expect(decision.proof).toContain(`none lies nearer in all than ${(best / 1000).toFixed(3)} mm`);
      }),
      { numRuns: 30 },
    );
  });
});
