import { describe, expect, it } from 'vitest';
import { engineOf, read } from '../../engine/load/try-sheets.suite.js';
import { mm } from '../../quantity/index.js';
import { assess } from '../assess.js';
import { reading, readingsOf } from '../assess.suite.js';
import type { BuyLine, Choice, OrderLine, Readings, SlotReading } from '../model.js';
import { orderLines, partsList, returnedWork, windowsOf } from './index.js';

const engine = engineOf(read('sheets/quernside-51-v8.yaml'));
const DECIDED = '2026-03-03T10:00:00+00:00';
const line = (over: Partial<OrderLine> = {}): OrderLine => ({
  id: 'deck-height/left',
  operation: 'mill',
  part: 'block',
  property: 'deck-height.height',
  places: ['left'],
  target: { low: mm(231.03), high: mm(231.09) },
  measured: 'length',
  notes: [],
  ...over,
});
const choice = (over: Partial<Choice> = {}): Choice => ({
  decision: 'deck-cut',
  scope: 'left',
  alternative: 'clean-up',
  words: '',
  figures: [],
  orders: [line()],
  buys: [],
  reason: 'leaked',
  entry: 'e',
  at: DECIDED,
  by: 'A',
  ...over,
});
const buy = (over: Partial<BuyLine> = {}): BuyLine => ({
  part: 'shim',
  size: '0.4 mm',
  count: 2,
  for: 'intake springs',
  ...over,
});
const withChoices = (...choices: readonly Choice[]): Readings => ({ ...readingsOf([]), choices });

describe('the lines of the order', () => {
  it('are those of the choices that stand, one for each piece of work: a later choice replaces the line', () => {
    const later = choice({ decision: 'other', orders: [line({ operation: 'grind' })] });
    expect(orderLines(withChoices(choice(), later)).map(({ line: one }) => one.operation)).toEqual(['grind']);
    expect(
      orderLines(withChoices(choice(), choice({ scope: 'right', orders: [line({ id: 'deck-height/right' })] }))),
    ).toHaveLength(2);
  });
  it('take the target of the place before that of the line, and the part that it is fitted to', () => {
    const own = line({
      places: ['1', '2'],
      targets: [{ place: '2', window: { low: 1, high: 2 }, fittedTo: 'piston of cylinder 2' }],
    });
    expect(windowsOf(own)).toEqual([
      { place: '1', window: { low: mm(231.03), high: mm(231.09) } },
      { place: '2', window: { low: 1, high: 2 }, fittedTo: 'piston of cylinder 2' },
    ]);
  });
});

describe('the parts list', () => {
  it('sums the same part in the same size, and keeps what each is for', () => {
    const other = choice({
      scope: 'right',
      buys: [buy({ count: 3, for: 'exhaust springs' }), buy({ size: '0.8 mm' })],
    });
    expect(partsList(withChoices(choice({ buys: [buy()] }), other))).toEqual([
      buy({ count: 5, for: 'intake springs; exhaust springs' }),
      buy({ size: '0.8 mm' }),
    ]);
  });
  it('buys nothing of which nothing is needed', () => {
    expect(partsList(withChoices(choice({ buys: [buy({ count: 0 })] })))).toEqual([]);
  });
});

describe('work that came back', () => {
  const STATIONS = ['front-valley-side', 'rear-valley-side', 'rear-outer-side', 'front-outer-side'];
  const corners = (text: string, over: Partial<SlotReading>) =>
    STATIONS.map((at) => reading(`deck-height/left/${at}`, text, over));
  const found = corners('231.200 mm', { at: '2026-03-02T09:00:00+00:00' });
  const back = (text: string, at = '2026-03-09T09:00:00+00:00'): Readings => {
    const before = new Map(found.map((one) => [one.slot, [one]]));
    return {
      ...readingsOf(corners(text, { at, occasion: 2 })),
      before,
      occasions: new Map([['deck-height/left', 2]]),
      choices: [choice()],
    };
  };
  const judge = (readings: Readings, one = line()) => returnedWork(assess(engine, readings), one, choice());

  it('is not judged by the reading of the worn part, even one inside of what was ordered', () => {
    const readings = readingsOf(corners('231.060 mm', { at: '2026-03-02T09:00:00+00:00' }));
    expect(judge(readings)).toMatchObject({ verdict: 'no data', places: [{ state: 'away' }] });
  });
  it('is not judged by a second look at the worn part after the decision either', () => {
    const readings = readingsOf(corners('231.060 mm', { at: '2026-03-04T09:00:00+00:00' }));
    expect(judge(readings)?.places[0]?.state).toBe('away');
  });
  it('is in, near or out by the new reading and its doubt', () => {
    expect(judge(back('231.060 mm'))).toMatchObject({ verdict: 'in', places: [{ state: 'measured', read: 4, of: 4 }] });
    expect(judge(back('231.089 mm'))?.verdict).toBe('near');
    const out = judge(back('231.150 mm'));
    expect(out?.verdict).toBe('out');
    expect(out?.places[0]?.beyond).toBeCloseTo(mm(0.06), 6);
  });
  it('counts for a second order only when it came back a second time', () => {
    const again = choice({ at: '2026-03-10T09:00:00+00:00' });
    const readings = back('231.060 mm');
    expect(returnedWork(assess(engine, readings), line(), again)?.places[0]?.state).toBe('away');
    const third = { ...readings, bySlot: new Map(), occasions: new Map([['deck-height/left', 3]]) };
    const moved = { ...third, before: new Map([...readings.bySlot].map(([slot, taken]) => [slot, taken])) };
    expect(returnedWork(assess(engine, moved), line(), again)?.places[0]?.state).toBe('to-measure');
  });
  it('cannot be measured where the line names no size', () => {
    const { property: _, ...plain } = line();
    expect(judge(back('231.060 mm'), plain)).toBeUndefined();
  });
});
