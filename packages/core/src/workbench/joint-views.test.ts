import { describe, expect, it } from 'vitest';
import { engineOf, Scribe, SHEETS } from './bench.suite.js';
import {
  fastenersView,
  gasketView,
  nextAction,
  openBench,
  propose,
  proposeReturn,
  recordView,
  tightenView,
} from './index.js';

const HEAD = 'left';
const JOINT = 'head-left';

function checkGasket(scribe: Scribe): void {
  for (const item of gasketView(scribe.bench, HEAD)!.items)
    scribe.write({
      kind: 'gasket-checked',
      data: { head: HEAD, item: item.item, result: 'good', seen: item.answers[0]!.label },
    });
}
function placeAll(scribe: Scribe): void {
  const joint = scribe.engine.joints.find((one) => one.id === JOINT)!;
  for (const hole of joint.holes)
    scribe.write({
      kind: 'fastener-placed',
      data: {
        joint: JOINT,
        hole: hole.id,
        instance: 1,
        fastener: hole.fastener,
        condition: 'new',
        onThread: hole.onThread,
        underHead: hole.underHead,
      },
    });
}
function doActs(scribe: Scribe, count: number): void {
  for (let done = 0; done < count; done += 1) {
    const act = tightenView(scribe.bench, JOINT)?.current;
    if (act === undefined) return;
    scribe.write({
      kind: 'act-done',
      data: {
        joint: JOINT,
        stage: act.stage,
        hole: act.hole,
        instance: act.instance,
        round: act.round,
        target: act.printed,
        seen: act.answers[0]!.id as 'reached',
      },
    });
  }
}

describe('fitting a head', () => {
  it('starts with the gasket, then the fasteners, then the wrench', () => {
    const scribe = new Scribe(engineOf(SHEETS.v8));
    expect(nextAction(scribe.bench).place).toBe('gasket/left');
    checkGasket(scribe);
    expect(nextAction(scribe.bench).place).toBe('fasteners/head-left');
    placeAll(scribe);
    expect(nextAction(scribe.bench).place).toBe('tighten/head-left');
  });

  it('lays out seventeen bolts of three lengths before the first goes in', () => {
    const view = fastenersView(openBench(engineOf(SHEETS.v8), []), JOINT)!;
    expect(view.layOut.map((row) => row.count)).toEqual([5, 5, 7]);
    expect(view.layOut.reduce((sum, row) => sum + row.count, 0)).toBe(17);
  });

  it('catches a short bolt in a long hole before anything is tightened', () => {
    const scribe = new Scribe(engineOf(SHEETS.v8));
    const result = propose(scribe.bench, {
      kind: 'fastener-placed',
      data: {
        joint: JOINT,
        hole: '1',
        instance: 1,
        fastener: 'short',
        condition: 'new',
        onThread: 'oil',
        underHead: 'oil',
      },
    });
    expect(result.ok).toBe(false);
    if (!result.ok) expect(result.fault).toMatch(/Hole 1: too short by 57.5 mm.*long head bolt/);
  });

  it('offers no act while a fastener is missing', () => {
    const scribe = new Scribe(engineOf(SHEETS.v8));
    checkGasket(scribe);
    const view = tightenView(scribe.bench, JOINT)!;
    expect(view.current).toBeUndefined();
    expect(view.hindrances.length).toBeGreaterThan(0);
  });

  it('seals a bolt that opens into water and oils one that does not', () => {
    const { holes } = fastenersView(openBench(engineOf(SHEETS.v8), []), JOINT)!;
    const by = (opens: string) =>
      new Set(holes.filter((hole) => hole.opensInto === opens).map((hole) => hole.onThread));
    expect(by('opens into water')).toEqual(new Set(['thread sealer']));
    expect(by('blind hole')).toEqual(new Set(['oil']));
  });
});

describe('tightening a head', () => {
  function ready(): Scribe {
    const scribe = new Scribe(engineOf(SHEETS.v8));
    checkGasket(scribe);
    placeAll(scribe);
    return scribe;
  }

  it('shows one target, its unit, the hole, and the next one', () => {
    const view = tightenView(ready().bench, JOINT)!;
    expect(view.current).toMatchObject({ lead: 'Tighten hole 1 to', number: '24', unit: 'N·m', hole: '1' });
    expect(view.next?.hole).toBe('2');
    expect(view.progress.words).toBe('1 of 17, stage 1 of 5');
  });

  it('goes round a torque stage again after an interruption, once three acts have been touched', () => {
    const scribe = ready();
    doActs(scribe, 20);
    const view = tightenView(scribe.bench, JOINT, 'opened-again')!;
    expect(view.resume?.verify).toHaveLength(3);
    expect(view.resume?.roundAgain).toBe(true);
    const refusal = proposeReturn(scribe.bench, JOINT, { arrival: 'opened-again', verified: [] });
    expect(refusal.ok).toBe(false);
    const answer = proposeReturn(scribe.bench, JOINT, {
      arrival: 'opened-again',
      verified: view.resume!.verify.map((one) => one.key),
    });
    if (answer.ok) for (const entry of answer.value) scribe.append(entry);
    expect(tightenView(scribe.bench, JOINT)?.current).toMatchObject({ stage: 2, hole: '1', round: 2 });
  });

  it('ends finished, and the record then names every act with its target, person and time', () => {
    const scribe = ready();
    doActs(scribe, 100);
    const view = tightenView(scribe.bench, JOINT)!;
    expect(view.finished).toBe(true);
    expect(view.progress).toMatchObject({ done: 51, of: 51 });
    const section = recordView(scribe.bench).sections.find((one) => one.key === 'tightening')!;
    expect(section.rows).toHaveLength(51);
    expect(section.rows[0]).toMatchObject({ limit: '24 N·m', by: 'Ada' });
    expect(section.open.join(' ')).toMatch(/right head: not begun, 51 acts/);
  });

  it('keeps a struck entry in the record with its reason', () => {
    const scribe = ready();
    doActs(scribe, 1);
    const entry = recordView(scribe.bench).sections.find((one) => one.key === 'tightening')!.rows[0]!.entry;
    scribe.write({ kind: 'struck-out', data: { entry, reason: 'wrench set to the wrong unit' } });
    const row = recordView(scribe.bench).sections.find((one) => one.key === 'tightening')!.rows[0];
    expect(row?.struck).toBe('wrench set to the wrong unit');
    expect(tightenView(scribe.bench, JOINT)?.current?.hole).toBe('1');
  });
});
