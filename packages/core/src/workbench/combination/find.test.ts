/** The search from form to scratch copy, on the invented Quernside V8. */
import { describe, expect, it } from 'vitest';
import { advance, answerOf, beginSearch, chancesOf, type FinderInput } from '../../assess/combination/finder/index.js';
import { mm } from '../../quantity/index.js';
import { engineOf, Scribe, SHEETS } from '../bench.suite.js';
import type { Scratch } from '../combination-views.js';
import {
  chancesView,
  compressionView,
  type FindForm,
  findInput,
  firstForm,
  foundAsScratch,
  foundView,
  openBench,
  pistonsOfStock,
  pistonWords,
  proposeFigure,
  type Tried,
  triedOf,
  wantedRows,
} from '../index.js';

const MM = { length: 'mm' } as const;
const INCH = { length: 'in' } as const;
const v8 = engineOf(SHEETS.v8);
const bench = openBench(v8, []);
const NOTHING: Scratch = new Map();
const tried = triedOf(bench, NOTHING);
const form = firstForm(tried, MM);

function inputOf(given: FindForm, shownIn: typeof MM | typeof INCH = MM, figures: Tried = tried): FinderInput {
  const input = findInput(figures, given, shownIn);
  if (!input.ok) throw new Error(input.fault);
  return input.value;
}
/** `asked`: limits of the test's own, beside those of the sheet. */
function find(given: FindForm, figures: Tried = tried, asked: FinderInput['wanted'] = {}) {
  const input = inputOf(given, MM, figures);
  const begun = beginSearch({ ...input, wanted: { ...input.wanted, ...asked } });
  if (!begun.ok) throw new Error('refused');
  while (!advance(begun.value, 1e6).done);
  return answerOf(begun.value);
}
const refusal = (given: FindForm) => {
  const input = findInput(tried, given, MM);
  return input.ok ? '' : input.fault;
};

describe('the form of a search', () => {
  it('begins with the gaskets of the stock and cuts down to what may be left', () => {
    expect(form.gaskets).toMatchObject({ on: true, stock: ['gasket', 'gasket-thick'] });
    expect(Number(form.deckCut.limit)).toBeLessThanOrEqual(0.3);
    expect(wantedRows(tried, MM)).toContainEqual({ name: 'ratio', title: 'compression ratio', words: '8.60 to 9.10' });
  });
  it('asks the same in inches', () => {
    const inches = inputOf(firstForm(tried, INCH), INCH);
    // 0.002 in steps
    expect(inches.offer.headCut?.step).toBeCloseTo(0.0000508, 12);
  });
  it('leaves out a limit that is waived this time', () => {
    expect(inputOf({ ...form, waived: ['ratio'] }).wanted.ratio).toBeUndefined();
    expect(inputOf(form).wanted.ratio).toEqual({ low: 8.6, high: 9.1 });
  });
  it.each([
    ['a cut in words', { headCut: { ...form.headCut, limit: 'deep' } }, 'head cut, at most'],
    ['a price below 0', { headCut: { ...form.headCut, price: '-3' } }, 'head cut: a price is a number, 0 or more.'],
    ['no gasket at all', { gaskets: { on: true, stock: [], others: '' } }, 'head gasket: choose one'],
    [
      'a piston without sizes',
      { pistons: { ...form.pistons, on: true, rows: [{ name: '', height: '', crown: '', price: '' }] } },
      'piston',
    ],
    [
      'no piston at all',
      { pistons: { on: true, keep: true, stock: [], rows: [] } },
      'piston: choose one, type one, or close the choice',
    ],
  ])('refuses %s by name', (_, part, words) => {
    expect(refusal({ ...form, ...part })).toContain(words);
  });
  it('refuses a search with nothing to choose', () => {
    const closed = {
      ...form,
      gaskets: { ...form.gaskets, on: false },
      deckCut: { ...form.deckCut, on: false },
      headCut: { ...form.headCut, on: false },
      camAdvance: { ...form.camAdvance, on: false },
    };
    expect(refusal(closed)).toContain('Open at least one choice');
  });
});

describe('pistons of the stock in a search', () => {
  const ids = (given: Tried) => pistonsOfStock(given).offered.map(({ id }) => id);
  const decide = (alternative: string) => {
    const scribe = new Scribe(v8);
    const data = { decision: 'bore-oversize', scope: 'all', alternative, words: '', figures: [], orders: [], buys: [] };
    scribe.append({ kind: 'decided', data: { ...data, reason: 'worn' } });
    return triedOf(scribe.bench, NOTHING);
  };

  it('are the standard ones where nothing is decided for the bores, the grades of one form together', () => {
    expect(ids(tried)).toEqual(['std-a', 'flat', 'dished-low']);
    expect(pistonsOfStock(tried).left).toContain(
      'piston with a flat crown Q51-320-50: 0.500 mm oversize, the bores are for standard.',
    );
    expect(pistonsOfStock(tried).offered.map((one) => pistonWords(one, MM))).toContain(
      'piston with a deep dish, 0.5 mm lower Q51-321, compression height 35.100 mm, crown 6.50 cm3, the set 432',
    );
  });
  it('are those of the oversize that the bores are decided for, and none where there are two', () => {
    expect(ids(decide('bore-500'))).toEqual(['over-50', 'flat-50']);
    expect(ids(decide('as-is'))).toEqual(ids(tried));
    expect(ids(decide('some-500'))).toEqual([]);
    expect(pistonsOfStock(decide('some-500')).left).toHaveLength(1);
  });
  it('of the form that the maker fits are as the engine was made, the others as they say', () => {
    const { offer } = inputOf({ ...form, pistons: { ...form.pistons, on: true } });
    expect(offer.pistons).toMatchObject({
      keep: true,
      options: [
        { compressionHeight: { value: expect.closeTo(0.0356, 9) }, crownVolume: { value: expect.closeTo(3.8e-6, 12) } },
        { compressionHeight: 0.0356, crownVolume: 1.2e-6 },
        { compressionHeight: 0.0351, crownVolume: 6.5e-6 },
      ],
    });
    // Eight of the dearest grade (44), eight flat ones (52), eight low ones (54).
    expect(offer.pistons?.options.map(({ price }) => price)).toEqual([352, 416, 432]);
  });
  it('that lie on the bench cost nothing, and too few of them are none', () => {
    const stock = (count: number): Tried => {
      const pistons = v8.stock!.pistons.map((one) => (one.id === 'flat' ? { ...one, count } : one));
      return { ...tried, engine: { ...v8, stock: { ...v8.stock!, pistons } } };
    };
    expect(pistonsOfStock(stock(8)).offered.find(({ id }) => id === 'flat')?.price).toBe(0);
    expect(pistonsOfStock(stock(7)).left).toContain('piston with a flat crown Q51-320: there are 7, 8 are needed.');
  });
  it('are named in what was found, and on the scratch copy give the ratio and the valve room that the search named', () => {
    const pistons = { ...form.pistons, on: true, keep: false, stock: ['dished-low'] };
    const answer = find({ ...form, pistons, waived: ['ratio', 'quench'] });
    const [first] = foundView(answer, MM).rankings[0]!.combinations;
    expect(first?.parts.find(({ name }) => name === 'piston')?.text).toContain('Q51-321');
    const scratch = new Map(foundAsScratch(tried, first!.combination));
    expect(scratch.get('piston-mass')).toBeCloseTo(0.59, 9);
    const after = triedOf(bench, scratch);
    const { offer: _, ...again } = inputOf({ ...form, waived: ['ratio', 'quench'] }, MM, after);
    // Searched anew from there, with nothing but the gasket that was chosen: the same figures.
    const gasket = first!.combination.options.find(({ choice }) => choice === 'gasket')!.option.sizes;
    const offered = { gaskets: { options: [{ thickness: gasket.thickness!, bore: gasket.bore! }] } };
    const begun = beginSearch({ ...again, offer: offered });
    if (!begun.ok) throw new Error('refused');
    while (!advance(begun.value, 1e6).done);
    const figures = answerOf(begun.value).best['least-metal'][0]!.figures;
    expect(figures.map(({ key }) => key)).toContain('intake-room@left');
    for (const { key, value } of first!.combination.figures)
      expect(figures.find((one) => one.key === key)!.value).toBeCloseTo(value, 9);
  });
  it('may stay as they are, which costs nothing and changes nothing', () => {
    const answer = find({ ...form, pistons: { ...form.pistons, on: true } });
    const [cheapest] = answer.best['least-cost'];
    expect(cheapest!.options.find(({ choice }) => choice === 'piston')!.option.asIs).toBe(true);
    const view = foundView(answer, MM).rankings[0]!.combinations;
    expect(view.flatMap(({ parts }) => parts)).toContainEqual({ name: 'piston', text: 'as they are' });
    expect(foundAsScratch(tried, cheapest!).map(([key]) => key)).not.toContain('compression-height');
  });
});

describe('what was found', () => {
  const answer = find(form);
  const view = foundView(answer, MM);

  it('stands in three orders, each with its parts and figures in words', () => {
    expect(view.rankings.map(({ name }) => name)).toEqual(['least-metal', 'least-cost', 'most-margin']);
    const [first] = view.rankings[0]!.combinations;
    expect(first?.parts.map(({ name }) => name)).toEqual(['head gasket', 'deck cut', 'head cut', 'cam advance']);
    expect(first?.words).toMatch(/metal.*; .*price.*; least margin \d+ %/);
    expect(first?.figures.every(({ verdict }) => verdict === 'in' || verdict === 'near')).toBe(true);
  });

  it('gives on the scratch copy the ratio that the search named', () => {
    for (const { combination, figures } of view.rankings.flatMap(({ combinations }) => combinations)) {
      const scratch = new Map(foundAsScratch(tried, combination));
      const { cylinders } = compressionView(bench, triedOf(bench, scratch), MM, {});
      const named = figures.find(({ key }) => key === 'ratio@1')!;
      expect(cylinders[0]!.value).toBe(named.value);
    }
  });

  it('with another gasket says with which one the valve room was measured, and searched anew from there finds the same', () => {
    const thick = { ...form, gaskets: { ...form.gaskets, stock: ['gasket-thick'] } };
    const [picked] = find(thick, tried, { intakeShift: mm(3) }).best['least-metal'];
    const scratch = new Map(foundAsScratch(tried, picked!));
    expect(scratch.get('valve-drop-gasket@exhaust')).toBeCloseTo(mm(1.15), 12);
    expect(scratch.get('gasket-thickness-before')).toBeCloseTo(mm(1.15), 12);
    const [again] = find(thick, triedOf(bench, scratch), { intakeShift: mm(3) }).best['least-metal'];
    expect(again!.figures.map(({ key }) => key)).toEqual(
      expect.arrayContaining(['exhaust-room@left', 'intake-shift@left']),
    );
    for (const { key, value } of picked!.figures)
      expect(again!.figures.find((one) => one.key === key)!.value).toBeCloseTo(value, 9);
  });

  it('carries a deck clearance that was measured along with another piston', () => {
    const scribe = new Scribe(v8);
    const stated = proposeFigure(scribe.bench, { key: 'deck-clearance', text: '0.45', why: 'depth micrometer' }, MM);
    if (!stated.ok) throw new Error(stated.fault);
    for (const entry of stated.value) scribe.append(entry);
    const measured = triedOf(scribe.bench, NOTHING);
    const row = { name: 'lower', height: '35.42', crown: '3.8', price: '' };
    const pistons = { on: true, keep: false, stock: [], rows: [row] };
    const answer = find({ ...form, pistons, waived: ['ratio', 'quench'] }, measured, { ratio: { low: 5, high: 15 } });
    const [first] = foundView(answer, MM).rankings[0]!.combinations;
    const scratch = new Map(foundAsScratch(measured, first!.combination));
    expect(scratch.get('deck-clearance@1')).toBeDefined();
    const { cylinders } = compressionView(scribe.bench, triedOf(scribe.bench, scratch), MM, {});
    expect(cylinders[0]!.value).toBe(first!.figures.find(({ key }) => key === 'ratio@1')!.value);
  });

  it('has a chance for each limit and for all together', () => {
    const [first] = view.rankings[0]!.combinations;
    const chances = chancesOf(inputOf(form), first!.combination.picked, { trials: 200 });
    if (!chances.ok) throw new Error('refused');
    const told = chancesView(first!.figures, chances.value);
    expect(told.together).toMatch(/^(over |under )?\d+ %$/);
    expect(told.figures.every(({ chance }) => chance !== undefined)).toBe(true);
  });

  it('says what blocks where nothing fits', () => {
    const high = triedOf(
      bench,
      new Map([
        ['ratio-least', 9.9],
        ['ratio-most', 10.2],
      ]),
    );
    const input = findInput(high, form, MM);
    const begun = input.ok ? beginSearch(input.value) : undefined;
    if (!begun?.ok) throw new Error('refused');
    while (!advance(begun.value, 1e6).done);
    const blocked = foundView(answerOf(begun.value), MM);
    expect(blocked.words[0]).toMatch(/^None of \d+ combinations keeps everything\.$/);
    expect(blocked.rankings.every(({ combinations }) => combinations.length === 0)).toBe(true);
    expect(blocked.words.length).toBeGreaterThan(1);
  });
});
