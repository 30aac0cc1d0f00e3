import { describe, expect, it } from 'vitest';
import { limitsOf } from './index.js';
import { row, sheet, withLimits } from './limit.suite.js';

/** What is printed, once where two manuals print the same. */
const texts = (rows: ReturnType<typeof limitsOf>) => [...new Set(rows.map((each) => each.whenNew?.text))];
const valve = (cylinder: number, kind: 'intake' | 'exhaust') => ({ cylinder, valve: { cylinder, kind, index: 1 } });

describe('limits of one place', () => {
  it('gives the rear pair of cylinders its own piston clearance (manual 237:2-191)', () => {
    const inches = (cylinder: number) =>
      limitsOf(sheet('237'), 'piston.clearance', { cylinder }).map(
        ({ whenNew }) => (whenNew?.window.low ?? 0) / 0.0254,
      );
    expect(new Set(inches(3).map((low) => low.toFixed(4)))).toEqual(new Set(['0.0035']));
    expect(new Set(inches(8).map((low) => low.toFixed(4)))).toEqual(new Set(['0.0040']));
  });

  it('keeps the wear limit of all pistons for a grade that prints none of its own (invented Quernside book)', () => {
    const rows = limitsOf(sheet('quernside'), 'piston-skirt.diameter', { cylinder: 7 }, { size: 0.09856 });
    expect(rows.map(({ whenNew, wear }) => [whenNew?.text, wear?.text])).toEqual([
      ['98.555..98.564 mm', undefined],
      ['98.555..98.581 mm', '0.050 mm'],
    ]);
  });

  it('tells intake from exhaust by the words', () => {
    const engine = sheet('sohc');
    expect(texts(limitsOf(engine, 'stem.clearance', valve(1, 'intake')))).toEqual(['0.020..0.069 mm']);
    expect(texts(limitsOf(engine, 'stem.clearance', valve(1, 'exhaust')))).toEqual(['0.045..0.095 mm']);
  });

  it('takes "intake and exhaust" for both', () => {
    expect(texts(limitsOf(sheet('tm10'), 'seat-width.width', valve(2, 'exhaust')))).toEqual(['1.7..1.9 mm']);
  });

  it('keeps the exhaust lobes of the two banks apart (manual SM1)', () => {
    const engine = sheet('sohc');
    const bank = (cylinder: number) => engine.layout.cylinders.find((each) => each.number === cylinder)?.bank ?? '';
    const lift = (cylinder: number) =>
      texts(limitsOf(engine, 'lobe-lift.lift', { ...valve(cylinder, 'exhaust'), bank: bank(cylinder) }));
    const banks = engine.layout.banks.map(
      ({ id }) => engine.layout.cylinders.find((each) => each.bank === id)?.number ?? 0,
    );
    expect(new Set(banks.flatMap(lift))).toEqual(new Set(['6.59579 mm', '6.58551 mm']));
  });

  it('reads journal numbers: the fifth cam journal is smaller (manual 237:2-192)', () => {
    const engine = sheet('237');
    expect(texts(limitsOf(engine, 'cam-journal.diameter', { journal: 4 }))).toEqual(['2.164..2.166 in']);
    expect(texts(limitsOf(engine, 'cam-journal.diameter', { journal: 5 }))).toEqual(['2.007..2.009 in']);
  });

  it('reads "1, 5", "2, 4" and "3" as journals and never a size in the words', () => {
    const engine = sheet('99x92');
    const bore = (journal: number) => texts(limitsOf(engine, 'cam-housing.diameter', { journal }));
    expect([bore(1), bore(4), bore(3)]).toEqual([['59.58..59.63 mm'], ['59.08..59.13 mm'], ['58.58..58.63 mm']]);
  });

  it('reads front and rear (manual 584:1-5)', () => {
    const engine = { ...sheet('584'), inspection: { camJournals: 2 } };
    expect(texts(limitsOf(engine, 'cam-journal.diameter', { journal: 1 }))).toEqual(['2.2500..2.2505 in']);
    expect(texts(limitsOf(engine, 'cam-journal.diameter', { journal: 2 }))).toEqual(['1.1875..1.1880 in']);
  });

  it('picks the grade by the size where nobody noted it, and gives all grades without a size', () => {
    const engine = sheet('sohc');
    expect(limitsOf(engine, 'cylinder-bore.diameter', { cylinder: 1 })).toHaveLength(3);
    expect(texts(limitsOf(engine, 'cylinder-bore.diameter', { cylinder: 1 }, { size: 0.090214 }))).toEqual([
      '90.21..90.22 mm',
    ]);
    expect(texts(limitsOf(engine, 'cylinder-bore.diameter', { cylinder: 1 }, { size: 0.0904 }))).toEqual([
      '90.22..90.23 mm',
    ]);
  });

  it('lets a row for just this place stand instead of the row for all', () => {
    const text = (words: string) => ({ window: { high: 1 }, text: words });
    const engine = withLimits(
      sheet('quernside'),
      row('piston', 'clearance', { whenNew: text('all') }),
      row('piston', 'clearance', { whenNew: text('rear'), applies: { cylinders: [7, 8] } }),
    );
    expect(texts(limitsOf(engine, 'piston.clearance', { cylinder: 1 }))).toEqual(['all']);
    expect(texts(limitsOf(engine, 'piston.clearance', { cylinder: 7 }))).toEqual(['rear']);
  });

  it('takes the load at the lower height for that of the open valve', () => {
    const engine = sheet('quernside');
    expect(limitsOf(engine, 'spring-load-closed.load', {}).map(({ what }) => what)).toEqual(['load at 42.0 mm']);
    expect(limitsOf(engine, 'spring-load-open.load', {}).map(({ what }) => what)).toEqual(['load at 30.2 mm']);
  });

  it('is empty for a size that the sheet does not limit', () => {
    expect(limitsOf(sheet('584'), 'crank-runout.total', {})).toEqual([]);
  });
});
