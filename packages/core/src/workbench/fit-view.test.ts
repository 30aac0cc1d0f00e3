/** Invented readings on the invented Quernside V8; its limits stand in sheets/quernside-51-v8.yaml, arithmetic by hand beside. */
import { describe, expect, it } from 'vitest';
import type { Engine } from '../engine/index.js';
import { engineOf, Scribe, SHEETS } from './bench.suite.js';
import { sourceLines } from './finding-words.js';
import {
  decisionsAt,
  decisionViewOf,
  type FindingView,
  fitStanding,
  fitView,
  openBench,
  orderReturn,
  orderStanding,
  type Proposal,
  proposeDecided,
  proposeMeasured,
  proposeReturned,
  recordView,
} from './index.js';

const MM = { length: 'mm' } as const;
const INCH = { length: 'in' } as const;
const engine = engineOf(SHEETS.v8);
const STATIONS = ['top-thrust', 'top-axial', 'middle-thrust', 'middle-axial', 'bottom-thrust', 'bottom-axial'];
const CYLINDERS = ['1', '2', '3', '4', '5', '6', '7', '8'];

function write(scribe: Scribe, proposal: Proposal): string {
  if (!proposal.ok) throw new Error(proposal.fault);
  return proposal.value.map((entry) => scribe.append(entry)).join();
}
/** What the number gate asks about is answered with yes, as a person who has looked twice does. */
function read(scribe: Scribe, slot: string, text: string): string {
  const wish = { slot, text, source: 'keyed' } as const;
  const first = proposeMeasured(scribe.bench, wish);
  return write(scribe, first.ok ? first : proposeMeasured(scribe.bench, { ...wish, answered: [first.fault] }));
}
function readBore(scribe: Scribe, cylinder: string, text: string): void {
  for (const station of STATIONS) read(scribe, `cylinder-bore/${cylinder}/${station}`, text);
}
function row(scribe: Scribe, key: string, shownIn: typeof MM | typeof INCH = MM): FindingView {
  const found = fitView(scribe.bench, shownIn)
    .findings.flatMap(({ rows }) => rows)
    .find((one) => one.key === key);
  if (found === undefined) throw new Error(`no finding ${key}`);
  return found;
}
function wornCylinder(bore: string, piston: string): Scribe {
  const scribe = new Scribe(engine);
  readBore(scribe, '7', bore);
  read(scribe, 'piston-skirt/7/skirt', piston);
  return scribe;
}

describe('sizes and clearances of an engine', () => {
  // Bore: 98.618 + 0.15 = 98.768 mm at most. Piston of the rear pair: 98.555 - 0.050 = 98.505 mm at least.
  // Clearance: 98.690 - 98.540 = 0.150 mm, and 0.120 mm at most.
  it('says OUT, and in words, where every part is within its wear limit while the clearance is not', () => {
    const scribe = wornCylinder('98.690 mm', '98.540 mm');
    const clearance = row(scribe, 'piston.clearance@7');
    expect(row(scribe, 'cylinder-bore.diameter@7').verdict).toBe('in');
    expect(row(scribe, 'piston-skirt.diameter@7').verdict).toBe('in');
    expect([clearance.verdict, clearance.value]).toEqual(['out', '0.150 mm']);
    expect(clearance.words).toMatch(/^Every part is within its own wear limit, the clearance is not/);
    expect(clearance.words).toContain('bore of cylinder 7 and piston of cylinder 7');
  });

  it('does not call the parts good where one of them is past its own limit', () => {
    const scribe = wornCylinder('98.820 mm', '98.540 mm');
    expect(row(scribe, 'cylinder-bore.diameter@7').verdict).toBe('out');
    expect(row(scribe, 'piston.clearance@7').words).not.toContain('Every part');
  });

  it('says nothing about parts of a clearance that is in', () => {
    const scribe = wornCylinder('98.620 mm', '98.560 mm');
    expect(row(scribe, 'piston.clearance@7')).toMatchObject({ verdict: 'in', value: '0.060 mm' });
    expect(row(scribe, 'piston.clearance@7').words).not.toContain('Every part');
  });

  it('never counts what was not read among what is in, and leads to the first reading that is missing', () => {
    const scribe = new Scribe(engine);
    const view = fitView(scribe.bench, MM);
    const all = view.findings.flatMap(({ rows }) => rows);
    expect(view.counts).toEqual({ in: 0, near: 0, out: 0, 'check again': 0, 'no data': all.length });
    const bore = row(scribe, 'cylinder-bore.diameter@3');
    expect([bore.value, bore.words, bore.slot]).toEqual(['', 'not read', 'cylinder-bore/3/top-thrust']);
    read(scribe, 'cylinder-bore/3/top-thrust', '98.612 mm');
    expect(row(scribe, 'cylinder-bore.diameter@3').slot).toBe('cylinder-bore/3/top-axial');
  });

  it('shows each finding once, in the part of the engine where it belongs', () => {
    const { findings } = fitView(new Scribe(engine).bench, MM);
    const keys = findings.flatMap(({ rows }) => rows.map(({ key }) => key));
    expect(new Set(keys).size).toBe(keys.length);
    const areaOf = (key: string) => findings.find(({ rows }) => rows.some((one) => one.key === key))?.area;
    expect(areaOf('cylinder-bore.diameter@1')).toBe('block');
    expect(areaOf('piston.clearance@1')).toBe('pistons');
    expect(areaOf('main-bearing.clearance@main-1')).toBe('crankshaft');
    expect(areaOf('stem.clearance@1-intake-1')).toBe('valves');
  });

  // 0.150 mm / 25.4 = 0.00591 in.
  it('shows the same verdict in either unit', () => {
    const scribe = wornCylinder('98.690 mm', '98.540 mm');
    const inches = row(scribe, 'piston.clearance@7', INCH);
    expect([inches.verdict, inches.value]).toEqual(['out', '0.0059 in']);
  });

  it('opens with every reading and the formula in its working, and sources with how far they can be trusted', () => {
    const { working } = row(wornCylinder('98.690 mm', '98.540 mm'), 'piston.clearance@7');
    expect(working.filter((line) => line.includes('98.690 mm'))).toHaveLength(6);
    expect(working.at(-1)).toMatch(/bore at its smallest less piston/);
    expect(sourceLines(['derived-here'])[0]).toMatch(/\(derived\)|\(derived,/);
    expect(sourceLines(['cylinder.piston-clearance'])).toEqual([
      'calculation cylinder.piston-clearance of the catalogue',
    ]);
  });

  it('names the end that decides: too tight is no wear', () => {
    // New 0.036 to 0.054 mm; 98.600 - 98.580 = 0.020 mm, 0.016 mm below.
    const tight = row(wornCylinder('98.600 mm', '98.580 mm'), 'piston.clearance@7');
    expect([tight.verdict, tight.nearEnd, tight.distance]).toEqual(['out', 'low', '0.016 mm below the low limit']);
  });

  it('shows what the sheet says in two ways', () => {
    const other = engineOf(SHEETS.six);
    expect(other.cautions.length).toBeGreaterThan(0);
    expect(fitView(openBench(other, []), MM).contradictions).toEqual(other.cautions.map(({ message }) => message));
  });

  it('tells in few words what is out before what is only unknown', () => {
    const { progress, finished } = fitStanding(wornCylinder('98.690 mm', '98.540 mm').bench);
    expect(progress.words).toMatch(/^1 out, .*\d+ without data$/);
    expect(finished).toBe(false);
  });
});

function boredV8(): Scribe {
  const scribe = new Scribe(engine);
  for (const cylinder of CYLINDERS) readBore(scribe, cylinder, cylinder === '7' ? '98.690 mm' : '98.630 mm');
  return scribe;
}
const bores = (scribe: Scribe, shownIn: typeof MM | typeof INCH = MM) => {
  const view = decisionViewOf(scribe.bench, { id: 'bore-oversize', scope: 'all' }, shownIn);
  if (view === undefined) throw new Error('no decision about the bores');
  return view;
};
function decide(scribe: Scribe): void {
  const seen = decisionsAt(scribe.bench, MM);
  const alternative = seen.find(({ id }) => id === 'bore-oversize')?.recommended ?? '';
  write(
    scribe,
    proposeDecided(scribe.bench, seen, {
      decision: 'bore-oversize',
      scope: 'all',
      alternative,
      reason: 'as recommended',
    }),
  );
}

describe('a decision', () => {
  it('waits for its readings and names them', () => {
    const view = bores(new Scribe(engine));
    expect([view.state, view.alternatives]).toEqual(['waiting', []]);
    expect(view.missing.join()).toContain('measure all 8 places');
  });

  it('shows the recommended alternative first and the blocked ones with their reasons', () => {
    const { state, alternatives } = bores(boredV8());
    expect(state).toBe('open');
    expect(alternatives[0]).toMatchObject({ recommended: true, possible: true });
    expect(alternatives[0]?.orders.join()).toMatch(
      /bore and hone .*cylinders 1, 2, 3, 4, 5 and 6 .* mm; cylinders 7 and 8 /,
    );
    const blocked = alternatives.filter(({ possible }) => !possible);
    expect(blocked.length).toBeGreaterThan(0);
    for (const { against } of blocked) expect(against.join()).not.toBe('');
  });

  it('keeps what was seen, and shows what is computed otherwise since, never silently', () => {
    const scribe = boredV8();
    decide(scribe);
    expect(bores(scribe)).toMatchObject({ state: 'decided', decided: { reason: 'as recommended', differs: [] } });
    const worst = scribe.bench.state.entries.find(
      ({ reading }) =>
        reading.understood &&
        reading.known.kind === 'measured' &&
        reading.known.data.slot === 'cylinder-bore/7/top-thrust',
    );
    scribe.write({ kind: 'struck-out', data: { entry: worst?.entry.id ?? '', reason: 'gauge stood askew' } });
    read(scribe, 'cylinder-bore/7/top-thrust', '98.700 mm');
    const { state, decided } = bores(scribe);
    expect(state).toBe('changed');
    // 0.010 mm more at the worst place leaves 0.005 mm less when the bar follows the wear.
    expect(decided?.differs.join('\n')).toMatch(/Left at the worst bore: .* when it was decided, .* now/);
  });

  it('stands in the record with what was chosen, why and by whom; before that the record names it as open', () => {
    const scribe = boredV8();
    const section = () => recordView(scribe.bench).sections.find(({ key }) => key === 'decisions');
    expect(section()?.open.join()).toContain('Bores: not decided');
    const seen = decisionsAt(scribe.bench, MM);
    const offered =
      seen.find(({ id }) => id === 'bore-oversize')?.alternatives.filter(({ possible }) => possible) ?? [];
    const other = offered.at(-1);
    expect(offered.length).toBeGreaterThan(1);
    const wish = { decision: 'bore-oversize', scope: 'all', alternative: other?.id ?? '', reason: 'the block is thin' };
    write(scribe, proposeDecided(scribe.bench, seen, wish));
    expect(section()?.open.join() ?? '').not.toContain('Bores: not decided');
    const row = section()?.rows.at(-1);
    expect(row?.by).toBe('Ada');
    expect(`${row?.what} ${row?.value} ${row?.limit}`).toContain(other?.words);
    expect(`${row?.what} ${row?.value} ${row?.limit} ${row?.origin}`).toContain('the block is thin');
    const decided = scribe.bench.state.entries.at(-1)?.entry.data;
    expect(decided).toMatchObject({ figures: other?.figures, orders: other?.orders, buys: other?.buys });
  });

  it('is refused for an alternative that is blocked', () => {
    const scribe = boredV8();
    const seen = decisionsAt(scribe.bench, MM);
    const blocked = seen.find(({ id }) => id === 'bore-oversize')?.alternatives.find(({ possible }) => !possible);
    const wish = { decision: 'bore-oversize', scope: 'all', alternative: blocked?.id ?? '', reason: 'cheaper' };
    const refused = proposeDecided(scribe.bench, seen, wish);
    expect(refused.ok ? '' : refused.fault).toContain(blocked?.against[0] ?? 'nothing speaks against it');
  });

  it('does not take another unit on this device for a difference', () => {
    const scribe = boredV8();
    decide(scribe);
    expect(bores(scribe, INCH)).toMatchObject({ state: 'decided', decided: { differs: [] } });
  });

  it('stays to be seen where the sheet no longer offers it', () => {
    const scribe = boredV8();
    decide(scribe);
    const { stock: _, ...without } = engine;
    const bench = openBench(without as Engine, [...scribe.bench.entries.values()]);
    const view = decisionViewOf(bench, { id: 'bore-oversize', scope: 'all' }, MM);
    expect(view?.state).toBe('changed');
    expect(view?.decided?.differs.join()).toMatch(/cannot be computed now: pistons/);
  });

  it('leads its work back to the worksheet, where it is measured again from the beginning', () => {
    const scribe = boredV8();
    decide(scribe);
    const back = orderReturn(scribe.bench, 'bore/all');
    expect(back).toMatchObject({ feature: 'cylinder-bore', slot: 'cylinder-bore/1/top-thrust', waits: false });
    expect([...(back?.places ?? [])].sort()).toEqual(CYLINDERS);
    write(scribe, proposeReturned(scribe.bench, { feature: 'cylinder-bore', places: back?.places ?? [], why: 'back' }));
    expect(orderReturn(scribe.bench, 'bore/all')?.waits).toBe(true);
    // Readings of the finished bores are no reason to doubt a decision about the worn ones.
    expect(bores(scribe)).toMatchObject({ state: 'decided', decided: { differs: [] } });
    expect(bores(scribe).cautions[0]).toMatch(/has come back/);
    expect(orderStanding(scribe.bench).progress.words).toBe('1 piece of work, 0 back and in');
    expect(orderReturn(scribe.bench, 'no such work')).toBeUndefined();
  });
});
