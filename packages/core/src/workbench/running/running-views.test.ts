import { describe, expect, it } from 'vitest';
import { figureToText } from '../../drawing/index.js';
import { valvesOf } from '../../engine/index.js';
import { engineOf, Scribe, SHEETS } from '../bench.suite.js';
import {
  cylinderTestsView,
  ignitionView,
  proposeCompression,
  proposeGauge,
  proposeLeakage,
  proposeStart,
  recordView,
  remindersView,
  runInView,
  startView,
} from '../index.js';
import type { Proposal } from '../propose.js';

const v8 = engineOf(SHEETS.v8);
const six = engineOf(SHEETS.six);

/** A bench whose clock the test sets. */
class Running extends Scribe {
  minute = 0;
  protected override at(): string {
    return this.now(this.minute);
  }
  now(minute: number): string {
    return new Date(Date.UTC(2026, 4, 2, 9, 0, Math.round(minute * 60))).toISOString();
  }
  take(proposal: Proposal): void {
    if (!proposal.ok) throw new Error(proposal.fault);
    for (const entry of proposal.value) this.append(entry);
  }
  act(act: string, result: 'good' | 'bad' = 'good'): void {
    this.append({
      kind: 'work-act-done',
      data: { act, answer: { kind: 'felt-or-seen', words: `${act} seen`, result }, method: 'by hand' },
    });
  }
}
const order = v8.layout.cylinders.map(({ number }) => number);

describe('the screen before the first start', () => {
  it('lists what has to be so; nothing is ready on an empty record', () => {
    const view = startView(new Running(v8).bench);
    expect(view.ready.all).toBe(false);
    expect(view.ready.progress).toMatchObject({ done: 0, of: 14 });
    expect(view.oil.progress.words).toBe('0 of 16 seen');
    expect(view.stop).toMatchObject({ seconds: 8, origin: expect.stringContaining('invented') });
    expect(view.cautions.map(({ word }) => word)).toContain('WARNING');
  });
  it('an item is ready by its answer in the work plan, and says who gave it', () => {
    const bench = new Running(v8);
    bench.act('extinguisher-held');
    bench.act('throttle-returns', 'bad');
    const items = new Map(startView(bench.bench).ready.items.map((one) => [one.id, one]));
    expect(items.get('extinguisher')).toMatchObject({ state: 'ready', given: { by: 'Ada' } });
    expect(items.get('throttle')).toMatchObject({ state: 'not-ready', words: 'throttle-returns seen (NOT GOOD)' });
  });
  it('is ready once everything was answered and oil was seen at every rocker', () => {
    const bench = new Running(v8);
    for (const { act } of startView(bench.bench).ready.items) if (act !== undefined) bench.act(act);
    expect(startView(bench.bench).ready.all).toBe(false);
    for (const valve of valvesOf(v8)) bench.write({ kind: 'oil-seen', data: { valve } });
    const view = startView(bench.bench);
    expect(view.ready.all).toBe(true);
    expect(view.oil.places.every(({ seen }) => seen?.by === 'Ada')).toBe(true);
  });
  it('a start without oil pressure is out, and the newest go stands first', () => {
    const bench = new Running(v8);
    bench.take(proposeStart(bench.bench, { crankedSeconds: 4, pressure: '0 bar', outcome: 'stopped' }));
    bench.take(
      proposeStart(bench.bench, { crankedSeconds: 3, pressureAfterSeconds: 2, pressure: '45 psi', outcome: 'runs' }),
    );
    const { tries } = startView(bench.bench);
    expect(tries.map(({ verdict }) => verdict)).toEqual(['in', 'out']);
    expect(tries[0]?.words).toBe('3 s on the starter, oil pressure 45 psi after 2 s');
    expect(tries[1]?.says).toContain('stands until the cause is found');
  });
});

describe('the screen of the run-in', () => {
  it('calls the next step once the time of one is over', () => {
    const bench = new Running(v8);
    expect(runInView(bench.bench, bench.now(0)).clock).toMatchObject({ state: 'not-begun', step: 1 });
    bench.write({ kind: 'run-in-begun', data: { step: 2 } });
    const at = (minute: number) => runInView(bench.bench, bench.now(minute)).clock;
    expect(at(4)).toMatchObject({
      words: 'Step 2 of 4: 4 min run, 16 min left',
      leftSeconds: 960,
      nextReadingSeconds: 0,
    });
    expect(at(4)).not.toHaveProperty('call');
    expect(at(20).call).toBe('Go on with step 4: half load with changing speed');
    expect(at(21).words).toBe('Step 2 of 4: 21 min run, 1 min beyond its time');
  });
  it('is finished once every timed line has run or has its answer in the work plan', () => {
    const bench = new Running(v8);
    bench.write({ kind: 'run-in-begun', data: { step: 2 } });
    bench.minute = 20;
    bench.write({ kind: 'run-in-begun', data: { step: 4 } });
    expect(runInView(bench.bench, bench.now(60)).clock.call).toContain('Go on with step 1');
    bench.act('run-in-step@line-1');
    expect(runInView(bench.bench, bench.now(60)).clock.call).toBe(
      'All timed steps have run. Let it idle, then stop it.',
    );
    bench.minute = 61;
    bench.write({ kind: 'run-in-stopped', data: { why: 'the step is over' } });
    const { clock, schedule } = runInView(bench.bench, bench.now(62));
    expect(clock).toMatchObject({
      state: 'finished',
      totalSeconds: 3900,
      words: 'All timed steps have run: 1 h 05 min.',
    });
    expect(schedule.steps.map(({ state }) => state)).toEqual(['done', 'done', 'done', 'done']);
  });
  it('shows gauges with limits and origin; one that says stop stands above all', () => {
    const bench = new Running(v8);
    bench.write({ kind: 'run-in-begun', data: { step: 2 } });
    bench.minute = 2;
    for (const [what, text] of [
      ['speed', '2000 rpm'],
      ['oil-temperature', '85 °C'],
      ['oil-pressure', '2.5 bar'],
      ['load-words', 'none'],
    ] as const)
      bench.take(proposeGauge(bench.bench, { what, text }));
    const view = runInView(bench.bench, bench.now(3));
    const gauges = new Map(view.gauges.map((one) => [one.what, one]));
    expect(gauges.get('speed')).toMatchObject({ verdict: 'in', limit: '1800..2200 rpm', newest: { text: '2000 rpm' } });
    expect(gauges.get('oil-pressure')).toMatchObject({ verdict: 'out', says: '0.3 bar below the low end' });
    expect(gauges.get('exhaust-temperature')).toMatchObject({ verdict: 'no data', limit: '' });
    expect(view.stopNow).toEqual(['oil pressure 0.3 bar below the low end']);
    expect(view.readings).toHaveLength(4);
    expect(view.readings[3]).toMatchObject({ what: 'speed', verdict: 'in', minute: 2 });
    expect(view.clock.nextReadingSeconds).toBe(240);
  });
  it('a line that cannot be read is one clear line', () => {
    const bench = new Running(v8).bench;
    const refused = proposeGauge(bench, { what: 'oil-pressure', text: 'plenty' });
    expect(refused.ok ? '' : refused.fault).not.toBe('');
    const cold = proposeGauge(bench, { what: 'oil-temperature', text: '3 bar' });
    expect(cold.ok).toBe(false);
  });
  it('a break says what it means, and what was run counts', () => {
    const bench = new Running(v8);
    bench.write({ kind: 'run-in-begun', data: { step: 2 } });
    bench.minute = 7;
    bench.write({ kind: 'run-in-stopped', data: { why: runInView(bench.bench, bench.now(7)).stopReasons[3]!.words } });
    const view = runInView(bench.bench, bench.now(90));
    expect(view.clock).toMatchObject({ state: 'stopped', step: 2, stepSeconds: 420, leftSeconds: 780 });
    expect(view.stops[0]).toMatchObject({ words: 'step 2, after 7 min: knock or tapping' });
    expect(view.stops[0]?.meaning).toContain('7 of 20 min');
  });
  it('head bolts again only as the sheet says', () => {
    const head = (engine: typeof v8) =>
      runInView(new Running(engine).bench, '2026-05-02T09:00:00Z').afterwards.find(({ id }) => id === 'head');
    expect(head(v8)?.do).toBe('never');
    expect(head(six)).toMatchObject({ do: 'do', origin: expect.stringContaining('invented') });
  });
});

describe('the screen of compression and leakage', () => {
  const psi = new Map(order.map((number) => [number, number === 4 ? 109 : 150]));
  const read = (bench: Running) => {
    for (const cylinder of order)
      bench.take(proposeCompression(bench.bench, { cylinder, text: `${psi.get(cylinder)} psi`, wet: false }));
  };
  it('asks cylinder by cylinder, then for the low one wet, then says rings', () => {
    const bench = new Running(v8);
    const { compression } = cylinderTestsView(bench.bench);
    expect(compression.ask).toEqual({ cylinder: 1, wet: false });
    expect(compression.next).toContain('throttle open');
    read(bench);
    const low = cylinderTestsView(bench.bench).compression;
    expect(low).toMatchObject({ verdict: 'out', ask: { cylinder: 4, wet: true } });
    expect(low.words).toContain('at least 75 % of the highest');
    expect(low.rule.words).toContain('printed for a sound engine: 9.5..11.5 bar at 220 rpm');
    bench.take(proposeCompression(bench.bench, { cylinder: 4, text: '140 psi', wet: true }));
    const after = cylinderTestsView(bench.bench).compression;
    expect(after.findings).toEqual([
      { cylinders: [4], words: 'Cylinder 4: Oil sealed it: rings, piston or bore.', cause: 'rings or bore' },
    ]);
    expect(after.rows.find(({ cylinder }) => cylinder === 4)).toMatchObject({
      share: '72.7 %',
      says: 'low; wet rises by 28.4 %',
    });
    expect(after.next).toBe('');
  });
  it('leakage is judged by the limit of the sheet and says where it was heard', () => {
    const bench = new Running(v8);
    bench.take(proposeLeakage(bench.bench, { cylinder: 1, supply: '80 psi', held: '60 psi', heard: 'crankcase' }));
    const { leakage } = cylinderTestsView(bench.bench);
    expect(leakage.rows[0]).toMatchObject({
      leak: '25 %',
      verdict: 'out',
      says: 'heard at the oil filler: rings, piston or bore',
    });
    expect(leakage.rule.words).toBe('no more than 15 % in any cylinder');
  });
  it('refuses wet before dry, and more held than given, in one line', () => {
    const bench = new Running(v8).bench;
    const wet = proposeCompression(bench, { cylinder: 1, text: '100 psi', wet: true });
    const more = proposeLeakage(bench, { cylinder: 1, supply: '60 psi', held: '80 psi' });
    expect(wet.ok ? '' : wet.fault).toBe('Cylinder 1: read it dry first; a wet reading is held against the dry one.');
    expect(more.ok ? '' : more.fault).toBe(
      'A cylinder cannot hold 80 psi of a supply of 60 psi; are the two exchanged?',
    );
  });
});

describe('the screen of the ignition', () => {
  it('draws the cap of the V8 with its leads in firing order and warns of the overlap', () => {
    const view = ignitionView(new Running(v8).bench, { damperDiameter: '180 mm', read: '4 deg' });
    expect(view.posts.map(({ cylinder }) => cylinder)).toEqual(v8.layout.firingOrder);
    expect(view.posts[1]?.words).toBe('cylinder 5: 45° past it, clockwise; 75° clockwise from the front of the engine');
    expect(view.warnings[0]).toContain('those of cylinder 6 rock');
    expect(view.answers.map(({ name, value }) => `${name}: ${value}`)).toEqual([
      // Worked: π · 180 · 8 / 360 = 12.57, π · 180 · 34 / 360 = 53.41 mm.
      'mark on the rim, standing: 12.6 mm (0.495 in)',
      'mark on the rim, all in: 53.4 mm (2.103 in)',
      'turn of the body: 2° anticlockwise',
    ]);
    expect(view.figure?.description).toContain('passes cylinders 1, 5, 7, 2, 6, 8, 4 and 3 in this order');
    expect(figureToText(view.figure!)).toContain('Distributor cap from above');
  });
  it('says why there is nothing for a diesel and for a sheet that is silent', () => {
    expect(ignitionView(new Running(six).bench)).toMatchObject({
      known: false,
      why: expect.stringContaining('diesel'),
    });
    expect(ignitionView(new Running(engineOf(SHEETS.four)).bench).why).toBe('The sheet says nothing of a distributor.');
  });
  it('an answer that cannot be worked out says so', () => {
    const { answers } = ignitionView(new Running(v8).bench, { damperDiameter: 'wide', read: '4' });
    expect(answers.map(({ value }) => value)).toEqual(['no data', 'no data']);
  });
});

describe('the screen of service', () => {
  it('names what is due by hours and what is not known', () => {
    const bench = new Running(v8);
    expect(remindersView(bench.bench, '2026-06-01T10:00:00+02:00').words).toBe('3 not known');
    bench.take(proposeStart(bench.bench, { crankedSeconds: 3, pressureAfterSeconds: 2, outcome: 'runs' }));
    bench.write({ kind: 'hours-noted', data: { hours: 12 } });
    const view = remindersView(bench.bench, '2026-06-01T10:00:00+02:00');
    expect(view).toMatchObject({ words: '1 overdue', hours: { text: '12 h' } });
    expect(view.items[0]).toMatchObject({ what: 'oil and filter', state: 'overdue', words: 'at 10 h, 2 h over' });
    expect(view.items.find(({ what }) => what === 'coolant')?.words).toBe('by 2028-05-02, 701 days left');
  });
});

describe('the record', () => {
  it('has a section with every look at the running engine', () => {
    const bench = new Running(v8);
    bench.take(proposeGauge(bench.bench, { what: 'oil-pressure', text: '3 bar' }));
    bench.take(proposeLeakage(bench.bench, { cylinder: 1, supply: '80 psi', held: '68 psi', tester: 'two-gauge' }));
    const section = recordView(bench.bench).sections.find(
      ({ title }) => title === 'Primed, started, run in and tested',
    );
    expect(section?.rows.map(({ what, value }) => `${what}: ${value}`)).toEqual([
      'Running: oil pressure: 3 bar',
      'Leakage, cylinder 1: 68 psi held of 80 psi, 15 %, two-gauge',
    ]);
  });
});
