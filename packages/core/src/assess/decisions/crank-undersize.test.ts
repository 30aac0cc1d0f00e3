import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mm } from '../../quantity/index.js';
import { alternativeOf, assessed, decisionOf, figureOf, four } from './bench.suite.js';
import { clearedJournal } from './fitted-size.js';

/** Housings 75.000..75.010, walls and clearance in the manner of reference row O-14: standard 2.512 mm, 0.25 undersize 2.637 mm. */
const crank = (more = '', shells = SHELLS) =>
  four(`crankTrain: { bore: 80 mm, stroke: 90 mm }
inspection: { mainJournals: 5 }
limits:
  - { part: crankshaft, what: main journal diameter, whenNew: 69.955..69.975 mm, wear: ">= 69.930 mm" }
  - { part: crankshaft, what: main journal out-of-round, whenNew: <= 0.005 mm, wear: <= 0.020 mm }
  - { part: crankshaft, what: main bearing clearance, whenNew: 0.012..0.022 mm }
machining: { journalCleanUp: 0.05 mm, journalFinish: "Ra 0.2" }
stock:
  mainShells:
${shells}${more}`);
const SHELLS = `    - { id: s, name: main shell, undersize: standard, wall: 2.512 mm }
    - { id: a, name: main shell, partNumber: M-25, undersize: 0.25 mm, wall: 2.637 mm }
    - { id: b, name: main shell, undersize: 0.50 mm, wall: 2.762 mm }
`;
const HOUSINGS = { 'main-housing': '75.005 mm' };

describe('the undersize of a crank', () => {
  it('is ground to the housing less both walls less the clearance: 69.714 mm (O-14)', () => {
    const target = clearedJournal(mm(75.005), { low: mm(2.637), high: mm(2.637) }, { low: mm(0.017), high: mm(0.017) });
    expect(target?.low).toBeCloseTo(mm(69.714), 12);
    expect(target?.high).toBeCloseTo(mm(69.714), 12);
  });

  it('is the smallest for which there are shells and at which every journal cleans up', () => {
    const worn = { 'main-journal': '69.960 mm', 'main-journal/main-4': '69.900 mm', ...HOUSINGS };
    const decision = decisionOf(assessed(crank(), worn), 'crank-undersize', 'main');
    expect(decision.recommended).toBe('grind-250');
    const { orders, buys } = alternativeOf(decision, 'grind-250');
    expect(orders[0]?.target?.low).toBeCloseTo(mm(69.709), 9);
    expect(orders[0]?.target?.high).toBeCloseTo(mm(69.719), 9);
    expect(orders[0]).toMatchObject({ id: 'main-journals/all', property: 'main-journal.diameter', finish: 'Ra 0.2' });
    expect(orders[0]?.places).toHaveLength(5);
    expect(buys).toEqual([expect.objectContaining({ partNumber: 'M-25', count: 10 })]);
    expect(alternativeOf(decision, 'as-is').against).toEqual(['main journal diameter, main 4: past the wear limit.']);
  });

  it('is left alone where every journal is inside its limits: polish', () => {
    const decision = decisionOf(assessed(crank(), { 'main-journal': '69.965 mm' }), 'crank-undersize', 'main');
    expect(decision.recommended).toBe('as-is');
    expect(alternativeOf(decision, 'as-is').orders[0]).toMatchObject({ operation: 'polish', places: [] });
  });

  it('of one that was ground before is judged by shape, not by the printed standard size', () => {
    const decision = decisionOf(
      assessed(crank(), { 'main-journal': '69.714 mm', ...HOUSINGS }),
      'crank-undersize',
      'main',
    );
    expect(decision.recommended).toBe('as-is');
    expect(alternativeOf(decision, 'as-is').against[0]).toContain('Ground before to 0.250 mm undersize');
  });

  it('is not kept for being worn to somewhere between standard and an undersize', () => {
    const decision = decisionOf(assessed(crank(), { 'main-journal': '69.800 mm' }), 'crank-undersize', 'main');
    expect(alternativeOf(decision, 'as-is').possible).toBe(false);
  });

  it('goes by the printed journal less the undersize while the housings are not measured', () => {
    const decision = decisionOf(assessed(crank(), { 'main-journal': '69.900 mm' }), 'crank-undersize', 'main');
    expect(figureOf(decision, 'grind-250', 'Ground size')).toBe('69.705..69.725 mm');
    expect(figureOf(decision, 'grind-250', 'From')).toContain('printed journal');
  });

  it('cannot be one for which too few halves lie there, nor one that leaves a score', () => {
    const few = SHELLS.replace('undersize: 0.25 mm', 'undersize: 0.25 mm, count: 6');
    const worn = { 'main-journal': '69.900 mm', ...HOUSINGS };
    const decision = decisionOf(assessed(crank('', few), worn), 'crank-undersize', 'main');
    expect(alternativeOf(decision, 'grind-250').against).toEqual([
      'Only 6 halves of this size can be had; 10 are needed.',
    ]);
    expect(decision.recommended).toBe('grind-500');
    const deep = decisionOf(
      assessed(crank(), { ...worn, 'main-journal/main-2': '69.70 mm' }),
      'crank-undersize',
      'main',
    );
    expect(alternativeOf(deep, 'grind-250').against[0]).toContain('main 2 does not clean up: 0.064 mm short');
  });

  it('asks for readings and shells before it offers anything', () => {
    const decision = decisionOf(assessed(crank(), { 'main-journal/main-1': '69.9 mm' }), 'crank-undersize', 'main');
    expect(decision.alternatives).toEqual([]);
    expect(decision.missing).toContain('main journal of main 2: measure it');
    const pins = decisionOf(assessed(crank(), { crankpin: '50 mm' }), 'crank-undersize', 'rod');
    expect(pins.missing).toEqual(['shells for the crankpins: the sheet lists none that can be had (stock)']);
  });

  it('says that it cannot tell the size where neither clearance nor new journal is printed', () => {
    const bare = four(`crankTrain: { bore: 80 mm, stroke: 90 mm }
stock:
  rodShells: [{ id: a, name: rod shell, undersize: 0.25 mm, wall: 1.618 mm }]
`);
    const decision = decisionOf(assessed(bare, { crankpin: '49.9 mm' }), 'crank-undersize', 'rod');
    expect(decision.recommended).toBeUndefined();
    expect(decision.alternatives.map(({ verdict, possible }) => [verdict, possible])).toEqual([
      ['no data', false],
      ['no data', false],
    ]);
  });

  it('is what trying every size by hand gives', () => {
    const list = fc.uniqueArray(fc.integer({ min: 1, max: 12 }), { minLength: 1, maxLength: 4 });
    const journals = fc.array(fc.integer({ min: 0, max: 250 }), { minLength: 5, maxLength: 5 });
    fc.assert(
      fc.property(list, journals, (steps, worn) => {
        const shells = steps
          .map(
            (step, at) =>
              `    - { id: u${at}, name: shell, undersize: ${(step * 0.1).toFixed(1)} mm, wall: ${(2.512 + step * 0.05).toFixed(3)} mm }\n`,
          )
          .join('');
        const sizes = Object.fromEntries(worn.map((off, at) => [`main-journal/main-${at + 1}`, mm(69.9 - off / 100)]));
        const decision = decisionOf(assessed(crank('', shells), { ...sizes, ...HOUSINGS }), 'crank-undersize', 'main');
        // By hand: 75.005 - 2 walls - 0.017 is ground; the worst journal less 0.05 mm must be over it by its uncertainty, 0.006 mm.
        const worst = 69.9 - Math.max(...worn) / 100 - 0.05;
        const spare = (step: number) => worst - (75.005 - 2 * (2.512 + step * 0.05) - 0.017);
        fc.pre(steps.every((step) => Math.abs(spare(step)) > 0.008));
        // Not a crank that was ground to one of these before: 69.930 to 69.975 less the undersize.
        const kept = (step: number) => worn.every((off) => Math.abs(69.9 - off / 100 + step * 0.1 - 69.9525) < 0.024);
        fc.pre(!steps.some(kept));
        const best = Math.min(...steps.filter((step) => spare(step) > 0));
        expect(decision.recommended).toBe(Number.isFinite(best) ? `grind-${best * 100}` : undefined);
      }),
      { numRuns: 25 },
    );
  });
});
