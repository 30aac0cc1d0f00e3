/** Invented readings on invented engines; the arithmetic of what is expected stands beside it. */
import { describe, expect, it } from 'vitest';
import { cubicCentimetres, mm } from '../../quantity/index.js';
import { engineOf, Scribe, SHEETS } from '../bench.suite.js';
import type { Scratch } from '../combination-views.js';
import {
  asIfSure,
  combinationSeen,
  combinationStanding,
  combinationView,
  compressionView,
  fitView,
  inputViews,
  openBench,
  type Proposal,
  proposeCombination,
  proposeFigure,
  scratchRows,
  slid,
  springsView,
  triedOf,
  typedFigure,
} from '../index.js';

const MM = { length: 'mm' } as const;
const INCH = { length: 'in' } as const;
const v8 = engineOf(SHEETS.v8);
const bench = openBench(v8, []);
const NOTHING: Scratch = new Map();
const trying = (...figures: readonly (readonly [string, number])[]): Scratch => new Map(figures);

function write(scribe: Scribe, proposal: Proposal): readonly string[] {
  if (!proposal.ok) throw new Error(proposal.fault);
  return proposal.value.map((entry) => scribe.append(entry));
}
const rowOf = (scratch: Scratch, key: string, shownIn: typeof MM | typeof INCH = MM) =>
  compressionView(bench, triedOf(bench, scratch), shownIn, {}).answers.find((one) => one.key === key)!;

describe('the overview', () => {
  it('says of every verdict which figure it rests on', () => {
    const { subjects } = combinationView(bench, NOTHING, MM);
    for (const { id, verdict, words } of subjects) if (verdict === 'in') expect(words, id).toMatch(/wanted/);
    expect(subjects.find(({ id }) => id === 'rockers')).toMatchObject({
      verdict: 'in',
      words: expect.stringMatching(/^plunger travel by the turns 1\.28\d mm, 0\.900 to 1\.600 mm wanted/),
    });
  });
});

describe('intake faces of a vee', () => {
  it('are told once a cut or gasket moves a head, and not before', () => {
    const rows = (scratch: Scratch) => compressionView(bench, triedOf(bench, scratch), MM, {}).intake;
    expect(rows(NOTHING)).toEqual([]);
    const moved = rows(trying(['head-cut', mm(0.3)]));
    expect(moved.find(({ key }) => key === 'head-moved@left')?.value).toBe('0.300 mm');
    expect(moved).toHaveLength(6);
  });
});

describe('figures that go in', () => {
  it('show value, unit and origin, and a slider that stays where it is while it is moved', () => {
    const inputs = (scratch: Scratch) =>
      inputViews(triedOf(bench, scratch), ['stroke', 'head-cut', 'pocket-volume'], MM);
    const [stroke, cut, pocket] = inputs(NOTHING);
    expect(stroke).toMatchObject({ value: '87.400', unit: 'mm', origin: 'sheet' });
    expect(cut).toMatchObject({ value: '0.000', origin: 'assumed', from: 'nothing is planned', slider: { from: 0 } });
    expect(pocket).toMatchObject({ value: '', origin: 'missing' });
    const moved = inputs(trying(['stroke', mm(88)]))[0]!;
    expect(moved).toMatchObject({ value: '88.000', origin: 'scratch' });
    expect({ ...moved.slider, now: 0 }).toEqual({ ...stroke!.slider, now: 0 });
  });

  it('are tried for one place without touching the others, and shown in the unit of the device', () => {
    const tried = triedOf(bench, trying(['chamber-volume@3', cubicCentimetres(66)]));
    const [third, fourth] = inputViews(tried, ['chamber-volume@3', 'chamber-volume@4'], MM);
    expect(third).toMatchObject({ title: 'chamber volume, cylinder 3', value: '66.00', origin: 'scratch' });
    expect(fourth?.origin).toBe('sheet');
    expect(inputViews(tried, ['stroke'], INCH)[0]).toMatchObject({ value: '3.4409', unit: 'in' });
    // 0.1 in = 2.54 mm
    expect(slid('head-cut', 0.1, INCH)).toBeCloseTo(0.00254, 12);
  });

  it('offer words where they are words', () => {
    const [crown] = inputViews(triedOf(bench, NOTHING), ['crown@intake'], MM);
    expect(crown).toMatchObject({ value: 'parallel-pocket', choices: ['parallel-pocket', 'flat-crown'] });
    expect(typedFigure('crown@intake', 'flat-crown', MM)).toMatchObject({ ok: true, value: { value: 1, unit: '1' } });
    expect(typedFigure('crown@intake', 'round', MM)).toMatchObject({ ok: false });
  });
});

describe('typed figures', () => {
  it.each([
    ['stroke', '88.9', mm(88.9)],
    ['stroke', '3.5 in', mm(88.9)],
    ['chamber-volume', '64', cubicCentimetres(64)],
    ['ratio-least', '9.5', 9.5],
    ['deck-clearance', '-0.2', mm(-0.2)],
  ])('%s: "%s" is read', (key, text, value) => {
    const typed = typedFigure(key, text, MM);
    expect(typed.ok && typed.value.value).toBeCloseTo(value, 12);
  });
  it.each([
    ['stroke', 'long'],
    ['stroke', ''],
    ['stroke', '0'],
    ['head-cut', '-0.1'],
    ['colour', '3'],
  ])('%s: "%s" is refused with one line', (key, text) => {
    const typed = typedFigure(key, text, MM);
    expect(typed.ok).toBe(false);
    expect(!typed.ok && typed.fault).not.toContain('\n');
  });
});

describe('answers', () => {
  it('say value, doubt, limit, distance and chance; a head cut moves the ratio by its volume', () => {
    const before = rowOf(NOTHING, 'ratio@1');
    expect(before).toMatchObject({ name: 'compression ratio, cylinder 1', limit: '8.60 to 9.10', verdict: 'in' });
    expect(before.doubt).toMatch(/^±0\.\d\d$/);
    expect(before.distance).toMatch(/from the (low|high) limit$/);
    // 0.2 mm × 5450 mm² = 1.09 cm³ off a room of about 85 cm³ under 668 cm³: 668/84 − 668/85 is about 0.10.
    const after = rowOf(trying(['head-cut', mm(0.2)]), 'ratio@1');
    expect(Number(after.value) - Number(before.value)).toBeGreaterThan(0.08);
    expect(Number(after.value) - Number(before.value)).toBeLessThan(0.13);
  });

  it('that a hand is moving show the same values, without doubts that are still to be worked out', () => {
    const tried = triedOf(bench, trying(['head-cut', mm(0.2)]));
    const whole = compressionView(bench, tried, MM, {});
    const moving = compressionView(bench, asIfSure(tried), MM, {});
    expect(moving.answers.map(({ key, value }) => [key, value])).toEqual(
      whole.answers.map(({ key, value }) => [key, value]),
    );
    expect(moving.answers.some(({ chance }) => chance !== undefined)).toBe(false);
    expect(moving.stack).toEqual(whole.stack);
  });

  it('of one spring alone are those that it has among all of them', () => {
    const tried = triedOf(bench, NOTHING);
    const whole = springsView(bench, tried, { kind: 'exhaust' }, MM);
    const alone = springsView(bench, tried, { kind: 'exhaust', valve: whole.valve, alone: true }, MM);
    expect(alone.answers.length).toBeGreaterThan(8);
    for (const row of alone.answers) expect(whole.answers).toContainEqual(row);
    expect(alone.plots).toEqual(whole.plots);
  });

  it('are solved for the chosen cylinder only', () => {
    const { solved } = compressionView(bench, triedOf(bench, NOTHING), MM, { cylinder: 4, goal: { ratio: 9.5 } });
    expect(new Set(solved.map(({ key }) => key.split('@')[1]))).toEqual(new Set(['4']));
  });

  it('of a sheet with gaps name what is missing and keep the rest', () => {
    const single = { ...v8, stock: v8.stock, figures: {} } as typeof v8;
    const { crankTrain, ...rest } = single;
    const { compressionHeight: _, chamberVolume: __, ...train } = crankTrain;
    const gap = openBench({ ...rest, crankTrain: train, limits: [] }, []);
    const view = compressionView(gap, triedOf(gap, NOTHING), MM, {});
    expect(view.missing.map(({ key }) => key)).toContain('chamber-volume');
    expect(view.answers.find(({ key }) => key === 'swept@1')?.value).toMatch(/^66\d\.\d\d cm3$/);
    expect(view.cylinders[0]).toEqual({ id: '1', name: '1', value: '' });
    expect(view.stack.parts.find(({ part }) => part === 'chamber')).toMatchObject({ words: 'not known' });
    expect(springsView(gap, triedOf(gap, NOTHING), { kind: 'intake' }, MM).missing.length).toBeGreaterThan(0);
    const overview = combinationView(gap, NOTHING, MM).subjects.find(({ id }) => id === 'compression');
    expect(overview).toMatchObject({ verdict: 'no data' });
    expect(overview?.words).toMatch(/figures are missing/);
  });
});

describe('the scratch copy', () => {
  it('tells each change beside what was, over all cylinders where they differ', () => {
    const scratch = trying(['gasket-thickness', mm(1.45)], ['pocket-volume', cubicCentimetres(2)]);
    expect(scratchRows(triedOf(bench, scratch), scratch, MM)).toEqual([
      {
        key: 'gasket-thickness',
        title: 'gasket thickness',
        now: '1.450 mm',
        was: expect.stringMatching(/^1\.\d+ mm$/),
      },
      { key: 'pocket-volume', title: 'pocket volume', now: '2.00 cm3', was: '' },
    ]);
  });

  it('is decided with a reason and the numbers as seen; from then on its figures count', () => {
    const scribe = new Scribe(v8);
    expect(combinationStanding(scribe.bench)).toMatchObject({ finished: false });
    const scratch = trying(['gasket-thickness', mm(1.45)], ['head-cut', mm(0.3)]);
    const { answers } = combinationSeen(scribe.bench, scratch, MM);
    const ratio = answers.find(({ name }) => name === 'compression ratio')!;
    expect(proposeCombination(scribe.bench, NOTHING, 'why not', MM)).toMatchObject({ ok: false });
    expect(proposeCombination(scribe.bench, scratch, ' ', MM)).toMatchObject({ ok: false });
    write(scribe, proposeCombination(scribe.bench, scratch, 'least metal', MM));
    const view = combinationView(scribe.bench, NOTHING, MM);
    expect(view.decided).toMatchObject({
      by: 'Ada',
      reason: 'least metal',
      words: 'gasket thickness 1.450 mm, head cut 0.300 mm',
      differs: [],
    });
    const now = compressionView(scribe.bench, triedOf(scribe.bench, NOTHING), MM, {});
    // All eight are alike on a sheet without readings.
    expect(ratio.text).toBe(`${now.cylinders[0]!.value}: ${now.cylinders[0]!.verdict?.toUpperCase()}`);
    expect(now.inputs.find(({ key }) => key === 'head-cut')).toMatchObject({ value: '0.300', origin: 'stated' });
    expect(combinationStanding(scribe.bench)).toMatchObject({ finished: true });
    // Fit asks for no such decision, and does not take it for one that is gone.
    expect(fitView(scribe.bench, MM).decisions.some(({ id }) => id === 'combination')).toBe(false);
  });

  it('tells cylinders that get the same cut together', () => {
    const cut = [1, 3, 5, 7].map((number) => [`head-cut@${number}`, mm(0.1)] as const);
    expect(combinationSeen(bench, new Map(cut), MM)).toMatchObject({
      words: 'head cut, cylinders 1, 3, 5, 7 0.100 mm',
      changes: [{ name: 'head cut, cylinders 1, 3, 5, 7', text: '0.100 mm (was 0.000 mm)' }],
    });
  });

  it('says what is computed otherwise once another figure is stated', () => {
    const scribe = new Scribe(v8);
    write(scribe, proposeCombination(scribe.bench, trying(['head-cut', mm(0.3)]), 'least metal', MM));
    write(scribe, proposeFigure(scribe.bench, { key: 'chamber-volume', text: '66', why: 'burette' }, MM));
    const { differs } = combinationView(scribe.bench, NOTHING, MM).decided!;
    expect(differs.length).toBeGreaterThan(0);
    expect(differs[0]).toMatch(/^compression ratio: \d\.\d\d.* when it was decided, \d\.\d\d.* now$/);
    // Shown in inches the same is told: only figures that differ count, not the unit.
    expect(combinationView(scribe.bench, NOTHING, INCH).decided!.differs.length).toBe(differs.length);
  });
});

describe('a stated figure', () => {
  it('needs words where it comes from', () => {
    expect(proposeFigure(bench, { key: 'gasket-thickness', text: '1.2', why: ' ' }, MM)).toEqual({
      ok: false,
      fault: 'Say where the figure comes from: card, drawing, scale, catalogue page.',
    });
    expect(proposeFigure(bench, { key: 'gasket-thickness', text: 'thin', why: 'box' }, MM).ok).toBe(false);
  });
});
