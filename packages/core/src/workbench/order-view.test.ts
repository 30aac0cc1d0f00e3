/** A worked example with invented readings: a worn V8 as found, what is decided, the order, and the work that came back. */
import { beforeAll, describe, expect, it } from 'vitest';
import { windowsOf } from '../assess/index.js';
import { formatQuantity } from '../quantity/index.js';
import { engineOf, Scribe, SHEETS } from './bench.suite.js';
import {
  assessmentOf,
  decisionsAt,
  type OrderLineView,
  type OrderView,
  orderView,
  type Proposal,
  proposeCheck,
  proposeDecided,
  proposeInstrument,
  proposeMeasured,
  proposeReturned,
  slotsOf,
} from './index.js';

const engine = engineOf(SHEETS.v8);
const scribe = new Scribe(engine);
const IN_MM = { length: 'mm' } as const;
const shown = (): OrderView => orderView(scribe.bench, IN_MM);
const lineWith = (view: OrderView, id: string): OrderLineView => {
  const found = view.lines.find((line) => line.id === id);
  if (found === undefined) throw new Error(`no line ${id} among ${view.lines.map((one) => one.id).join(', ')}`);
  return found;
};

function write(proposal: Proposal): void {
  if (!proposal.ok) throw new Error(proposal.fault);
  for (const entry of proposal.value) scribe.append(entry);
}
/** A question of the number gate is answered with yes, as a person who has looked twice does. */
function measure(slot: string, text: string, instrument?: string): void {
  const wish = { slot, text, source: 'keyed', ...(instrument === undefined ? {} : { instrument }) } as const;
  const first = proposeMeasured(scribe.bench, wish);
  write(first.ok ? first : proposeMeasured(scribe.bench, { ...wish, answered: [first.fault] }));
}
const slotsAt = (feature: string, place: string) =>
  [...slotsOf(engine).values()].filter((at) => at.feature.kind.id === feature && at.place.id === place);
const CYLINDERS = ['1', '2', '3', '4', '5', '6', '7', '8'];

function boresAsFound(): void {
  for (const cylinder of CYLINDERS)
    for (const { slot, station } of slotsAt('cylinder-bore', cylinder))
      measure(
        slot,
        station.id === 'top-thrust' ? '98.71 mm' : station.id.startsWith('top') ? '98.66 mm' : '98.61 mm',
        'bore-gauge',
      );
}
function decide(decision: string, scope: string, reason: string, alternative?: string): void {
  const seen = decisionsAt(scribe.bench, IN_MM);
  const one = seen.find(({ id, scope: of }) => id === decision && of === scope);
  const chosen = alternative ?? one?.recommended;
  if (chosen === undefined) throw new Error(`${decision} recommends nothing: ${one?.missing.join()}`);
  write(proposeDecided(scribe.bench, seen, { decision, scope, alternative: chosen, reason }));
}
/** Reads every station of the bores at a size relative to the middle of what was ordered. */
function boresBack(off: Readonly<Record<string, number>>): void {
  const line = assessmentOf(scribe.bench)
    .readings.choices.flatMap(({ orders }) => orders)
    .find(({ id }) => id === 'bore/all');
  if (line === undefined) throw new Error('no bore was ordered');
  for (const { place, window } of windowsOf(line)) {
    const middle = ((window.low ?? 0) + (window.high ?? 0)) / 2;
    for (const { slot } of slotsAt('cylinder-bore', place))
      measure(slot, formatQuantity('length', middle + (off[place] ?? 0), 'mm', 3), 'bore-gauge');
  }
}

describe('an order before anything is decided', () => {
  it('has no line and no part, and names every decision that waits, with what it waits for', () => {
    const view = orderView(new Scribe(engine).bench, IN_MM);
    expect(view.lines).toEqual([]);
    expect(view.buys).toEqual([]);
    expect(view.open.some((text) => /waits for .*bore/.test(text))).toBe(true);
    expect(view.measuredWith).toEqual([]);
    expect(view.invented).toBe(true);
  });
});

describe('the order of a worn V8 (invented readings)', () => {
  let ordered: OrderView;
  beforeAll(() => {
    const gauge = {
      id: 'bore-gauge',
      name: 'bore gauge with dial',
      kind: 'bore-gauge',
      measured: 'length',
      unit: 'mm',
    } as const;
    write(proposeInstrument(scribe.bench, { ...gauge, resolution: '0.001 mm', expanded: '0.002 mm' }));
    write(
      proposeCheck(scribe.bench, {
        instrument: 'bore-gauge',
        moment: 'start',
        standard: '98.600 mm',
        reading: '98.600 mm',
      }),
    );
    boresAsFound();
    for (const { slot } of slotsAt('deck-flatness', 'left')) measure(slot, '0.14 mm');
    for (const { slot } of slotsAt('deck-height', 'left')) measure(slot, '231.20 mm');
    decide('bore-oversize', 'all', 'smallest that cleans up all eight');
    decide('deck-cut', 'left', 'gasket has leaked there');
    ordered = shown();
  });

  it('has the bores with the piston that they are for, the plate that must be on, the finish, and who decided', () => {
    const bores = lineWith(ordered, 'bore/all');
    expect(bores.places).toHaveLength(8);
    expect(bores.with).toContain('40 mm iron plate');
    expect(bores.finish).toContain('plateau honed');
    expect(bores.decidedBy).toMatchObject({ by: 'Ada', reason: 'smallest that cleans up all eight' });
    expect(bores.notes.join(' ')).toContain('plate off as well');
  });
  it('gives the rear pair its own size, because its clearance is its own', () => {
    const bores = lineWith(ordered, 'bore/all');
    const at = (name: string) => bores.places.find((place) => place.name === name)?.target;
    expect(at('cylinder 1')).toBe(at('cylinder 3'));
    expect(at('cylinder 8')).not.toBe(at('cylinder 1'));
    expect(bores.target).toBe('each place its own');
  });
  it('gives the deck a height with its tolerance, and that it must be flat', () => {
    // 231.200 − 0.140 = 231.060, ± 0.001 in = 0.0254 mm
    expect(lineWith(ordered, 'deck-height/left')).toMatchObject({ target: '231.060 mm', tolerance: '±0.025 mm' });
    expect(lineWith(ordered, 'deck-flatness/left')).toMatchObject({ target: 'at most 0.040 mm', tolerance: '' });
  });
  it('lists the pistons and rings to buy once, summed', () => {
    const pistons = ordered.buys.filter(({ part }) => part.startsWith('piston'));
    expect(pistons.reduce((sum, { count }) => sum + count, 0)).toBe(8);
    expect(new Set(ordered.buys.map(({ part, partNumber, size }) => `${part} ${partNumber} ${size}`)).size).toBe(
      ordered.buys.length,
    );
  });
  it('names the gauge behind it, and what is still open', () => {
    expect(ordered.measuredWith).toEqual([
      'bore gauge with dial (bore gauge, reads 0.001 mm, held to a standard once)',
    ]);
    expect(ordered.open.join(' ')).toContain('Cut of the right deck: waits for');
    expect(ordered.open.join(' ')).not.toContain('Cut of the left deck: to be decided');
  });
  it('is not back: nothing that was read on the worn bores counts for the finished ones', () => {
    for (const { returned } of ordered.lines) expect(returned).toEqual({ state: 'no data', words: 'not back yet' });
  });
  it('is shown in inches where the device asks for them, and stays the same order', () => {
    // 231.060 / 25.4 = 9.09685
    const inches = orderView(scribe.bench, { length: 'in' });
    expect(lineWith(inches, 'deck-height/left').target).toBe('9.0969 in');
    expect(inches.lines.map(({ id }) => id)).toEqual(ordered.lines.map(({ id }) => id));
  });

  describe('when the block comes back', () => {
    it('is unknown until it is measured again', () => {
      write(proposeReturned(scribe.bench, { feature: 'cylinder-bore', places: CYLINDERS, why: 'bored and honed' }));
      const { returned, places } = lineWith(shown(), 'bore/all');
      expect(returned).toEqual({ state: 'no data', words: '0 of 8 in; 8 to measure again' });
      expect(places[0]?.returned?.words).toBe('back, 0 of 6 read again');
    });
    it('says place by place what is in and what is out, with the doubt, and by how much', () => {
      boresBack({ '3': 15e-6 });
      const { returned, places } = lineWith(shown(), 'bore/all');
      expect(returned.state).toBe('out');
      expect(returned.words).toContain('out: cylinder 3');
      const third = places.find(({ name }) => name === 'cylinder 3')?.returned;
      expect(third?.state).toBe('out');
      expect(third?.words).toMatch(/^\d+\.\d+ mm ±0\.00\d+ mm, 0\.01\d mm too large$/);
      expect(places.filter((place) => place.returned?.state === 'out')).toHaveLength(1);
    });
    it('leaves the deck, which is not back, as it was', () => {
      expect(lineWith(shown(), 'deck-height/left').returned.words).toBe('not back yet');
    });
    it('has no line any more where a changed choice orders nothing', () => {
      decide('deck-cut', 'left', 'a thicker gasket was found', 'leave');
      expect(shown().lines.map(({ id }) => id)).toEqual(['bore/all']);
    });
  });
});
