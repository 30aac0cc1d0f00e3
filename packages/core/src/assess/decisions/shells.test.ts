import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mm } from '../../quantity/index.js';
import { assess } from '../assess.js';
import type { Decision, Readings } from '../model.js';
import { alternativeOf, assessed, decisionOf, figureOf, four, type Sizes } from './bench.suite.js';

const HEAD = `crankTrain: { bore: 80 mm, stroke: 90 mm }
inspection: { mainJournals: 3 }
`;
const bearings = (limits: string, stock: string, machining = '') =>
  four(`${HEAD}limits:\n${limits}${machining}stock:\n${stock}`);
const WINDOW = `  - { part: crankshaft, what: main bearing clearance, whenNew: 0.020..0.040 mm, wear: { clearance: <= 0.060 mm } }\n`;
const shell = (id: string, wall: string, more = '') =>
  `    - { id: ${id}, name: main shell, undersize: standard, grade: ${id}, wall: ${wall} mm${more} }\n`;
const mains = (decision: Decision, id: string) =>
  ['main 1', 'main 2', 'main 3'].map((place) => figureOf(decision, id, place) ?? '');

describe('shells for the mains', () => {
  const stock = `  mainShells:\n${shell('red', '2.000', ', count: 4')}${shell('blue', '2.005', ', count: 2')}${shell('green', '2.010')}`;
  // Room for two walls and the clearance: 4.030, 4.030 and 4.040 mm.
  const sizes: Sizes = { 'main-housing': '64.030 mm', 'main-housing/main-3': '64.040 mm', 'main-journal': '60.000 mm' };

  it('come from what is on hand before anything is bought, with the clearance nearest to the middle', () => {
    const decision = decisionOf(assessed(bearings(WINDOW, stock), sizes), 'shells', 'main');
    expect(decision.recommended).toBe('alike-on-hand');
    expect(alternativeOf(decision, 'alike-on-hand').buys).toEqual([]);
    expect(mains(decision, 'alike-on-hand').map((text) => /grade (\w+)/.exec(text)?.[1])).toEqual([
      'red',
      'red',
      'blue',
    ]);
    expect(figureOf(decision, 'alike-on-hand', 'main 3')).toMatch(
      /clearance 0\.0300 ±0\.00\d+ mm, asked 0\.020\.\.0\.040 mm/,
    );
    expect(decision.proof).toContain('Every pairing of halves was weighed');
  });

  it('may differ by one step where the maker says how far, the thicker half below in a main', () => {
    const machining = 'machining: { widestShellMix: 0.005 mm }\n';
    const narrow = WINDOW.replace('0.020..0.040', '0.020..0.030');
    const place = { ...sizes, 'main-housing': '64.030 mm', 'main-housing/main-3': '64.030 mm' };
    const two = `  mainShells:\n${shell('red', '2.000', ', count: 6')}${shell('blue', '2.005', ', count: 3')}`;
    const decision = decisionOf(assessed(bearings(narrow, two, machining), place), 'shells', 'main');
    // 4.030 - 2.000 - 2.005 = 0.025 in the middle; alike red 0.030 and blue 0.020 lie on the limits.
    expect(mains(decision, 'mixed-on-hand').every((text) => text.startsWith('above grade red'))).toBe(true);
    expect(figureOf(decision, 'mixed-on-hand', 'main 1')).toContain('clearance 0.0250');
    expect(alternativeOf(decision, 'mixed-on-hand').against[0]).toContain('0.005 mm');
  });

  it('are never mixed where the maker says so, whatever the clearance', () => {
    const never = 'machining: { widestShellMix: 0 mm }\n';
    const narrow = WINDOW.replace('0.020..0.040', '0.022..0.028');
    const two = `  mainShells:\n${shell('red', '2.000')}${shell('blue', '2.005')}`;
    const decision = decisionOf(assessed(bearings(narrow, two, never), sizes), 'shells', 'main');
    expect(decision.alternatives.map(({ id }) => id).filter((id) => id.startsWith('mixed'))).toEqual([]);
    expect(decision.recommended).toBeUndefined();
  });

  it('fall by half the undersize for one half of 0.001 in undersize (TM 9-2815-237-34, p. 200)', () => {
    const stock237 = `  rodShells:
    - { id: std, name: rod shell, undersize: standard, wall: 0.0945 in }
    - { id: one, name: rod shell, undefined: 1 }
`.replace(', undefined: 1', ', undersize: 0.001 in, wall: 0.0950 in');
    const limit = `  - { part: connecting rod, what: bearing clearance, whenNew: 0.0020..0.0024 in }\n`;
    const engine = bearings(limit, stock237);
    const rods = { 'big-end-bore': '2.5897 in', crankpin: '2.3980 in' };
    const decision = decisionOf(assessed(engine, rods), 'shells', 'rod', 'in');
    // 2.5897 - 2.3980 - 2 x 0.0945 = 0.0027: too loose alike; one half undersize 0.0022; both 0.0017: too tight.
    expect(alternativeOf(decision, 'alike-bought').possible).toBe(false);
    expect(decision.recommended).toBe('mixed-bought');
    expect(figureOf(decision, 'mixed-bought', 'cylinder 1')).toMatch(
      /^above 0\.0010 in undersize.*below standard.*clearance 0\.0022/,
    );
  });

  it('name the half on the bench that would save buying most', () => {
    const bought = shell('red', '2.000').replace('id: red', 'id: red-bought');
    const short = `  mainShells:\n${shell('red', '2.000', ', count: 5')}${bought}`;
    const place = { ...sizes, 'main-housing/main-3': '64.030 mm' };
    const decision = decisionOf(assessed(bearings(WINDOW, short), place), 'shells', 'main');
    expect(alternativeOf(decision, 'alike-on-hand').against).toEqual([
      'Nothing gives the clearance asked for at main 3.',
    ]);
    expect(alternativeOf(decision, 'alike-bought').buys).toEqual([expect.objectContaining({ count: 1 })]);
    // One from the bench and one bought of the same grade are no mix.
    expect(decision.alternatives.map(({ id }) => id)).not.toContain('mixed-bought');
    expect(decision.cautions).toContain(
      'One more half that would help most: grade red, wall 2.000 mm (1 fewer to buy).',
    );
  });

  it('with a count are never taken beyond it: nothing more of them can be had', () => {
    const short = `  mainShells:\n${shell('red', '2.000', ', count: 5')}`;
    const place = { ...sizes, 'main-housing/main-3': '64.030 mm' };
    const decision = decisionOf(assessed(bearings(WINDOW, short), place), 'shells', 'main');
    expect(decision.recommended).toBeUndefined();
    for (const { buys } of decision.alternatives) expect(buys).toEqual([]);
  });

  it('leave 0.018 mm with the thin and the thick grade mixed, 0.021 and 0.015 mm alike (O-13)', () => {
    const two = `  mainShells:\n${shell('3', '2.009..2.012')}${shell('4', '2.012..2.015')}`;
    const machining = 'machining: { widestShellMix: 0.003 mm }\n';
    const H = { 'main-housing': '64.006 mm', 'main-journal': '59.964 mm' };
    const asked = (window: string) =>
      decisionOf(assessed(bearings(WINDOW.replace('0.020..0.040', window), two, machining), H), 'shells', 'main');
    const all = asked('0.015..0.021');
    // The printed chart names this pair "34", the thicker half above. The thicker half is below here: common practice for a main, and the
    // alternative says that the maker's rule decides. The clearance is the same.
    expect(figureOf(all, 'mixed-bought', 'main 1')).toMatch(/^above grade 3.*below grade 4.*clearance 0\.0180/);
    expect(alternativeOf(all, 'mixed-bought').against.join()).toContain("the maker's rule decides");
    expect(figureOf(asked('0.019..0.023'), 'alike-bought', 'main 1')).toMatch(/^grade 3.*clearance 0\.0210/);
    expect(figureOf(asked('0.013..0.017'), 'alike-bought', 'main 1')).toMatch(/^grade 4.*clearance 0\.0150/);
  });

  it('are not chosen while a housing is past its limits: it would not hold them', () => {
    const housing = `  - { part: main bearing housing, what: bore, whenNew: 64.020..64.045 mm }\n`;
    const worn = { ...sizes, 'main-housing/main-2': '64.060 mm' };
    const decision = decisionOf(assessed(bearings(WINDOW + housing, stock), worn), 'shells', 'main');
    expect(decision.recommended).toBe('resize-housings');
    expect(alternativeOf(decision, 'resize-housings').orders[0]).toMatchObject({
      id: 'main-housings/all',
      places: ['main-2'],
    });
    for (const one of decision.alternatives.slice(1)) {
      expect(one.possible).toBe(false);
      expect(one.against[0]).toContain('housing of main 2 is past its limits');
    }
  });

  it('that are fitted stay where their clearance is as new, and may stay while it is inside the wear limit', () => {
    const fresh = decisionOf(
      assessed(bearings(WINDOW, stock), { ...sizes, 'main-housing/main-3': '64.030 mm', 'main-shell': '2.000 mm' }),
      'shells',
      'main',
    );
    expect(fresh.alternatives.map(({ id }) => id)).toContain('as-fitted');
    expect(alternativeOf(fresh, 'as-fitted')).toMatchObject({ possible: true, against: [] });
    const worn = decisionOf(
      assessed(bearings(WINDOW, stock), { ...sizes, 'main-shell': '1.995 mm', 'main-housing/main-3': '64.035 mm' }),
      'shells',
      'main',
    );
    expect(alternativeOf(worn, 'as-fitted').against).toEqual(['Worn past the new range, inside the wear limit.']);
    expect(worn.recommended).not.toBe('as-fitted');
    const out = decisionOf(assessed(bearings(WINDOW, stock), { ...sizes, 'main-shell': '1.980 mm' }), 'shells', 'main');
    expect(alternativeOf(out, 'as-fitted').possible).toBe(false);
  });

  it('wait for a crank that is away at the shop', () => {
    const order = {
      id: 'main-journals/all',
      operation: 'grind',
      part: 'crankshaft',
      property: 'main-journal.diameter',
      places: ['main-1', 'main-2'],
      notes: [],
    };
    const choice = {
      decision: 'crank-undersize',
      scope: 'main',
      alternative: 'grind-250',
      words: '',
      figures: [],
      orders: [order],
      buys: [],
      reason: '',
      entry: 'e',
      at: '2026-03-05T10:00:00+00:00',
      by: 'A',
    };
    const decision = decisionOf(assessed(bearings(WINDOW, stock), sizes, [choice]), 'shells', 'main');
    expect(decision.alternatives).toEqual([]);
    expect(decision.missing).toContain('main journal of main 2: measure it when it comes back from the shop');
    expect(decision.missing.join(' ')).not.toContain('main 3');
    // Read again after the decision, but not back: still the worn journal.
    const { readings } = assessed(bearings(WINDOW, stock), sizes, [choice]);
    const later = [...readings.bySlot].map(
      ([slot, taken]) => [slot, taken.map((one) => ({ ...one, at: '2026-03-06T10:00:00+00:00' }))] as const,
    );
    const read = { ...readings, bySlot: new Map(later) };
    const waits = (occasions: Readings['occasions']) =>
      decisionOf(assess(bearings(WINDOW, stock), { ...read, occasions }), 'shells', 'main').missing;
    expect(waits(new Map())).toEqual(decision.missing);
    const back = new Map(['main-1', 'main-2'].map((place) => [`main-journal/${place}`, 2]));
    expect(waits(back)).toEqual([]);
  });

  it('are not chosen before housing, journal and clearance are known', () => {
    const decision = decisionOf(
      assessed(bearings('  - { part: piston, what: clearance, whenNew: 0.03..0.05 mm }\n', stock), {
        'main-housing': '64.03 mm',
      }),
      'shells',
      'main',
    );
    expect(decision.missing).toEqual([
      'main journal: measure all 3 places',
      'clearance of the main bearings: the sheet prints no window with both ends',
    ]);
  });
});

describe('the best shells', () => {
  const walls = [2, 2.003, 2.006, 2.009];
  const stock = fc.array(fc.record({ wall: fc.constantFrom(...walls), count: fc.integer({ min: 0, max: 3 }) }), {
    minLength: 1,
    maxLength: 3,
  });
  const rooms = fc.array(fc.integer({ min: 28, max: 50 }), { minLength: 3, maxLength: 3 });
  /** Micrometres; the walls lie 3 apart, so 1 means that none may be mixed. */
  const mixes = fc.constantFrom(1, 3);
  const of = (list: readonly { wall: number; count: number }[], rises: readonly number[], mix: number) => {
    const shells = list.map(({ wall, count }, at) => shell(`g${at}`, wall.toFixed(3), `, count: ${count}`)).join('');
    const machining = `machining: { widestShellMix: ${(mix / 1000).toFixed(3)} mm }\n`;
    const housings = Object.fromEntries(rises.map((rise, at) => [`main-housing/main-${at + 1}`, mm(64 + rise / 1000)]));
    return decisionOf(
      assessed(bearings(WINDOW, `  mainShells:\n${shells}`, machining), { ...housings, 'main-journal': '60.000 mm' }),
      'shells',
      'main',
    );
  };
  /** Every way to put halves from stock into three bearings, thicker below, in whole micrometres: least total, or infinite. */
  function byHand(list: readonly { wall: number; count: number }[], rises: readonly number[], mix: number): number {
    const pairs = list.flatMap((up, a) =>
      list.map((low, b) => ({ a, b, both: up.wall + low.wall, apart: low.wall - up.wall })),
    );
    const allowed = pairs.filter(({ apart }) => apart > -1e-9 && apart < mix / 1000 + 1e-9);
    let best = Number.POSITIVE_INFINITY;
    for (const x of allowed)
      for (const y of allowed)
        for (const z of allowed) {
          const chosen = [x, y, z];
          const used = list.map((_, at) =>
            chosen.reduce((sum, { a, b }) => sum + Number(a === at) + Number(b === at), 0),
          );
          const fits = chosen.map(({ both }, at) => Math.round(1000 * (4 - both) + (rises[at] ?? 0)));
          if (used.some((count, at) => count > (list[at]?.count ?? 0)) || fits.some((fit) => fit < 20 || fit > 40))
            continue;
          best = Math.min(
            best,
            fits.reduce((sum, fit) => sum + Math.abs(fit - 30), 0),
          );
        }
    return best;
  }
  const totalOf = (decision: Decision, id: string): number => {
    const found = decision.alternatives.find((one) => one.id === id);
    if (!found?.possible) return Number.POSITIVE_INFINITY;
    return mains(decision, id).reduce(
      (sum, text) => sum + Math.abs(Math.round(1000 * Number(/clearance ([\d.]+)/.exec(text)?.[1])) - 30),
      0,
    );
  };

  it('are those that trying every way by hand finds, alike or mixed', () => {
    fc.assert(
      fc.property(stock, rooms, mixes, (list, rises, mix) => {
        const decision = of(list, rises, mix);
        const [alike, mixed] = [byHand(list, rises, 1), byHand(list, rises, mix)];
        if (list.some(({ count }) => count > 0)) expect(totalOf(decision, 'alike-on-hand')).toBe(alike);
        if (decision.alternatives.some(({ id }) => id === 'mixed-on-hand'))
          expect(totalOf(decision, 'mixed-on-hand')).toBe(mixed);
        else expect(mixed < alike && list.some(({ count }) => count > 0) && Number.isFinite(mixed)).toBe(false);
      }),
      { numRuns: 40 },
    );
  });

  it('never get worse by one more half on the bench', () => {
    fc.assert(
      fc.property(stock, rooms, (list, rises) => {
        fc.pre(list.some(({ count }) => count > 0));
        const [one, ...others] = list;
        if (one === undefined) return;
        const more = [{ ...one, count: one.count + 1 }, ...others];
        expect(totalOf(of(more, rises, 1), 'alike-on-hand')).toBeLessThanOrEqual(
          totalOf(of(list, rises, 1), 'alike-on-hand'),
        );
      }),
      { numRuns: 20 },
    );
  });
});

describe('a grade chart', () => {
  /** Reference row O-10: marks of housings and journals, walls 2 to 6, shell = sum of the marks, clearance 0.042 to 0.060 mm. */
  const marks = (part: string, what: string, sizes: readonly string[]) =>
    sizes
      .map((size, at) => `  - { part: ${part}, what: ${what}, whenNew: ${size} mm, scope: { grade: "${at + 1}" } }\n`)
      .join('');
  const limits =
    marks('main bearing housing', 'bore', ['74.026..74.032', '74.032..74.038', '74.038..74.044']) +
    marks('crankshaft', 'main journal diameter', ['68.994..69.000', '68.988..68.994', '68.982..68.988']) +
    '  - { part: crankshaft, what: main bearing clearance, whenNew: 0.042..0.060 mm }\n';
  const rows = [1, 2, 3]
    .flatMap((h) => [1, 2, 3].map((j) => `        - { housing: ${h}, journal: ${j}, shell: ${h + j} }\n`))
    .join('');
  const chart = (first: number) =>
    `  mainShells:\n${[0, 1, 2, 3, 4].map((step) => `    - { id: g${step}, name: main shell, undersize: standard, grade: ${first + step}, wall: ${(2.489 + 0.003 * step).toFixed(3)}..${(2.492 + 0.003 * step).toFixed(3)} mm }\n`).join('')}  gradeCharts:\n    - for: main\n      rows:\n${rows}`;
  const parts = { 'main-housing': '74.035 mm', 'main-journal': '68.997 mm' };

  it('gives the shell of the marks in which the sizes lie, and outranks what is computed (O-10: bore 2, journal 1, shell 3)', () => {
    const decision = decisionOf(assessed(bearings(limits, chart(2)), parts), 'shells', 'main');
    expect(figureOf(decision, 'chart', 'main 1')).toMatch(/^grade 3.*clearance 0\.0510/);
    expect(decision.recommended).toBe('chart');
    expect(decision.cautions.filter((one) => one.startsWith('Chart'))).toEqual([]);
  });

  it('whose rows cannot give the printed clearance is named row by row (O-11: labels one lower)', () => {
    const decision = decisionOf(assessed(bearings(limits, chart(1)), parts), 'shells', 'main');
    expect(decision.cautions).toContain(
      'Chart, housing 2 with journal 1: shell 3 gives 0.036..0.054 mm, printed 0.042..0.060 mm.',
    );
    expect(decision.cautions.filter((one) => one.startsWith('Chart')).length).toBeGreaterThanOrEqual(6);
  });

  it('says nothing for a size outside its ranges', () => {
    const decision = decisionOf(
      assessed(bearings(limits, chart(2)), { ...parts, 'main-housing/main-2': '74.060 mm' }),
      'shells',
      'main',
    );
    expect(alternativeOf(decision, 'chart')).toMatchObject({ possible: false });
  });
});
