import { describe, expect, it } from 'vitest';
import { FEATURE_RULES } from '../../assess/features/index.js';
import { sheet } from '../../assess/limits/limit.suite.js';
import { type Engine, valveKey, valvesOf } from '../../engine/index.js';
import { workPlan } from './build-plan.js';
import { FEATURES_WITH_A_MOMENT, roleOfJoint } from './homes.js';
import type { Edge, WorkPlan } from './model.js';
import { operationsInOrder } from './operations/index.js';
import { allBefore, comesBefore, PLANS, planNamed, planOf, worksheetsOf } from './work.suite.js';

const V8 = planNamed('quernside');
const TWIN_CAM = planNamed('pellgarth');
const DIESEL = planNamed('tollbarrow');
const rules = (plan: WorkPlan) => new Set(plan.acts.map(({ rule }) => rule));
const count = (plan: WorkPlan, rule: string) => plan.acts.filter((act) => act.rule === rule).length;

/** Takes away what waits for nothing until nothing is left; written apart from the builder. */
function leftOver(plan: WorkPlan): number {
  const waits = new Map(plan.acts.map(({ id }) => [id, (plan.before.get(id) ?? []).length]));
  const free = [...waits].filter(([, edges]) => edges === 0).map(([id]) => id);
  let taken = 0;
  for (const id of free) {
    taken += 1;
    for (const { to } of plan.after.get(id) ?? []) {
      waits.set(to, (waits.get(to) ?? 0) - 1);
      if (waits.get(to) === 0) free.push(to);
    }
  }
  return plan.acts.length - taken;
}

describe.each(PLANS)('the work plan of %s', (_path, engine, plan) => {
  const subjects = plan.acts.flatMap(({ subject }) => (subject === undefined ? [] : [subject]));

  it('never lets an act wait for itself', () => {
    expect(leftOver(plan)).toBe(0);
  });
  it('stands in an order that breaks no precedence', () => {
    const place = new Map(plan.acts.map(({ id }, index) => [id, index]));
    const backwards = ({ from, to }: Edge) => (place.get(from) ?? 0) >= (place.get(to) ?? 0);
    expect([...plan.before.values()].flat().filter(backwards)).toEqual([]);
  });
  it('tightens every joint of the sheet once', () => {
    const joints = subjects.flatMap((one) => (one.kind === 'joint' ? [one.joint] : []));
    expect([...joints].sort()).toEqual(engine.joints.map(({ id }) => id).sort());
  });
  it('fills in every worksheet of every place once', () => {
    const filled = subjects.flatMap((one) => (one.kind === 'worksheet' ? [`${one.feature}/${one.place}`] : []));
    const all = worksheetsOf(engine).flatMap(({ feature, places }) => places.map(({ id }) => `${feature}/${id}`));
    expect([...filled].sort()).toEqual([...all].sort());
  });
  it('sets every valve once', () => {
    const set = subjects.flatMap((one) => (one.kind === 'valve' ? [valveKey(one.valve)] : []));
    expect([...set].sort()).toEqual(valvesOf(engine).map(valveKey).sort());
  });
  it('has one act of each kind at each head, main cap, rod and piston', () => {
    const heads = engine.heads.length > 0 ? engine.heads.length : engine.layout.banks.length;
    const cylinders = engine.layout.cylinders.length;
    const mains = worksheetsOf(engine).find(({ feature }) => feature === 'main-journal')?.places.length;
    expect(count(plan, 'gasket-down')).toBe(heads);
    expect(count(plan, 'main-cap-on')).toBe(mains);
    expect(['rod-cap-on', 'piston-in', 'rings-filed'].map((rule) => count(plan, rule))).toEqual([
      cylinders,
      cylinders,
      cylinders,
    ]);
    expect(new Set(plan.acts.map(({ id }) => id)).size).toBe(plan.acts.length);
  });
  it('leads every act to the signature', () => {
    expect(allBefore(plan, 'signed-off').size).toBe(plan.acts.length - 1);
  });
  it('begins with the look at the engine as found, and with nothing else', () => {
    const first = plan.acts.filter(({ id }) => (plan.before.get(id) ?? []).length === 0);
    expect(new Set(first.map(({ operation }) => operation))).toEqual(new Set(['identify']));
  });
  it('cuts long operations into chunks of five to nine', () => {
    for (const { id } of plan.operations) {
      const chunks = plan.acts.filter(({ operation }) => operation === id).map(({ chunk }) => chunk);
      const sizes = [...new Set(chunks)].map((chunk) => chunks.filter((one) => one === chunk).length);
      if (chunks.length >= 5) expect(Math.min(...sizes), id).toBeGreaterThanOrEqual(5);
      expect(Math.max(...sizes), id).toBeLessThanOrEqual(9);
    }
  });
  it('asks each act for a value, a felt result, a photo or an entry, never for a tick', () => {
    for (const act of plan.acts) {
      expect(act.ask.length, act.id).toBeGreaterThan(3);
      expect(act.ask, act.id).not.toMatch(/^(done|checked|ok)\b/i);
      expect(act.answer === 'value' ? act.asked : 'value', act.id).toBeDefined();
      expect(act.minutes, act.id).toBeGreaterThan(0);
    }
  });
});

describe('the operations', () => {
  it('are the 38 of the trade map, each once, in either order', () => {
    const keys = Array.from({ length: 38 }, (_, index) => `O${`${index + 1}`.padStart(2, '0')}`);
    for (const cam of ['yes', 'no', 'unknown'] as const)
      expect(
        operationsInOrder(cam)
          .map(({ key }) => key)
          .sort(),
      ).toEqual(keys);
  });
  it('name at most one WARNING-sized thing a caution: what can happen, why, what to do', () => {
    for (const { cautions, id } of operationsInOrder('no'))
      for (const { can, because, act } of cautions)
        expect(
          [can, because, act].every((words) => words.length > 5),
          id,
        ).toBe(true);
  });
  it('give a moment only to features that can be measured', () => {
    const known = FEATURE_RULES.map(({ kind }) => kind.id);
    expect(FEATURES_WITH_A_MOMENT.filter((id) => !known.includes(id))).toEqual([]);
  });
});

// trade-map.md section 2.2, the hard gates, read row by row.
describe('the hard gates', () => {
  it.each([
    ['block-cracks', 'block-machined'],
    ['head-cracks@left', 'head-machined@left'],
    ['new-piston-read@3', 'bore-honed@3'],
    ['fasteners-final', 'bore-honed@3'],
    ['fasteners-final', 'mains-honed'],
    ['mains-honed', 'main-room@main-2'],
    ['fasteners-final', 'rods-resized'],
    ['rods-resized', 'rod-room@3'],
    ['rings-filed@3', 'piston-set-washed@3'],
    ['edges-broken', 'block-washed'],
    ['gallery-plugs-in', 'drive-fitted'],
    ['gallery-plugs-in', 'cover-tightened@timing-cover'],
    ['hidden-plug-in', 'main-cap-on@main-5'],
    ['hidden-plug-in', 'flywheel-tightened@flywheel'],
    ['cam-oil-holes-seen', 'cam-in'],
    ['dead-centre-found', 'cam-read'],
    ['cam-read', 'pointer-proved'],
    ['pointer-proved', 'spark-set'],
    ['cam-timing-accepted', 'cover-tightened@timing-cover'],
    ['piston-room-tried@3-intake-1', 'gasket-down@left'],
    ['spring-margin-tried@3-intake-1', 'gasket-down@left'],
    ['pushrod-length-tried@3-intake-1', 'gasket-down@left'],
    ['pump-drive-free', 'pan-tightened@oil-pan'],
    ['pickup-gap', 'pan-tightened@oil-pan'],
    ['bottom-last-seen', 'pan-tightened@oil-pan'],
    ['follower-turns@3-intake-1', 'pushrod-in@3-intake-1'],
    ['pushrod-in@3-intake-1', 'intake-tightened@intake'],
    ['set-two-turns', 'covers-tightened@valve-covers'],
    ['plugs-counted-again', 'primed'],
    ['oil-filled', 'primed'],
    ['filter-filled', 'primed'],
    ['oil-at-valve@3-intake-1', 'drive-home'],
    ['coolant-filled', 'started'],
    ['fuel-joints-closed', 'started'],
    ['spark-set', 'started'],
    ['extinguisher-held', 'started'],
    ['roles-told', 'started'],
    ['pressure-seen', 'run-in-step@line-2'],
    ['filter-cut', 'head-again@left'],
    ['head-again@left', 'leakage-read@3'],
    ['leakage-read@3', 'signed-off'],
  ])('%s comes before %s', (first, then) => {
    const has = [V8.byId.has(first), V8.byId.has(then)];
    expect(has, 'both are acts of the plan').toEqual([true, true]);
    expect(comesBefore(V8, first, then)).toBe(true);
  });
});

describe('the type of the engine changes the list', () => {
  it('has pushrods in the V8 and none in the twin-cam', () => {
    expect(rules(V8)).toContain('pushrod-in');
    expect(rules(TWIN_CAM)).not.toContain('pushrod-in');
  });
  it('times an overhead cam with the heads on, and a cam in the block before', () => {
    expect(comesBefore(TWIN_CAM, 'head-tightened@head', 'cam-read')).toBe(true);
    const place = (plan: WorkPlan, rule: string) => plan.acts.findIndex((act) => act.rule === rule);
    expect(place(V8, 'cam-read')).toBeLessThan(place(V8, 'head-tightened'));
    expect(place(V8, 'cam-read')).toBeGreaterThan(0);
    expect(rules(TWIN_CAM)).not.toContain('cam-bearings-in');
  });
  it('lets only flat lifters be watched turning', () => {
    expect(rules(V8)).toContain('follower-turns');
    expect(rules(planNamed('sm-ohv-v8-99x92'))).not.toContain('follower-turns');
  });
  it('bleeds hydraulic lifters, and reads lash again only where there is lash', () => {
    expect(rules(V8)).toContain('lifters-bled');
    expect(rules(DIESEL)).not.toContain('lifters-bled');
    expect(rules(DIESEL)).toContain('lash-again');
  });
  it('fits wet liners where the engine has them', () => {
    expect(count(DIESEL, 'liner-in')).toBe(6);
    expect(rules(V8)).not.toContain('liner-in');
  });
  it('has a spark in petrol engines and an injection pump in diesels', () => {
    expect([rules(V8).has('spark-set'), rules(V8).has('injection-set')]).toEqual([true, false]);
    expect([rules(DIESEL).has('spark-set'), rules(DIESEL).has('injection-set')]).toEqual([false, true]);
  });
  it('tries the intake on the decks of a vee only', () => {
    expect(rules(V8)).toContain('intake-fit-tried');
    expect(rules(DIESEL)).not.toContain('intake-fit-tried');
  });
  it('takes the run-in of the sheet line by line', () => {
    expect(count(V8, 'run-in-step')).toBe(4);
  });
  it('puts in what the sheet leaves open, and says so', () => {
    const plan = planNamed('tm10-3930');
    const act = plan.acts.find(({ rule }) => rule === 'pushrod-in');
    expect(act?.unsure).toBe('the sheet does not say whether pushrods work the valves');
    expect(plan.assumptions.join()).toContain('valves');
  });
});

describe('joints of the sheet', () => {
  const named = (name: string, head?: string) =>
    ({
      ...(sheet('quernside').joints[0] as Engine['joints'][number]),
      id: 'x',
      name,
      ...(head === undefined ? { head: undefined } : { head }),
    }) as Engine['joints'][number];
  it.each([
    ['main caps, inner and outer', 'mains'],
    ['connecting rod cap nuts', 'rods'],
    ['crank pulley bolt', 'damper'],
    ['rocker arm bolts', 'rockers'],
    ['rocker cover screws', 'valve-covers'],
    ['camshaft bearing caps', 'cam-caps'],
    ['camshaft sprocket bolt', 'cam-gear'],
    ['oil pump screws', 'pump'],
    ['oil pan screws', 'pan'],
    ['timing cover screws', 'timing-cover'],
    ['intake manifold bolts', 'intake'],
    ['flywheel bolts', 'flywheel'],
    ['exhaust manifold nuts', 'other'],
  ] as const)('%s are tightened as %s', (name, role) => {
    expect(roleOfJoint(named(name))).toBe(role);
  });
  it('holds a head when the sheet says that it does', () => {
    expect(roleOfJoint(named('long studs', 'left'))).toBe('head');
  });
  it('asks for the value and whence it is where the sheet has no such joint', () => {
    const engine = sheet('quernside');
    const plan = planOf({ ...engine, joints: engine.joints.filter(({ id }) => id !== 'intake') });
    const act = plan.acts.find(({ rule }) => rule === 'intake-tightened');
    expect([act?.answer, act?.ask]).toEqual(['value', 'Value and where it is from']);
  });
  it('never turns a joint twice that is turned by angle', () => {
    const engine = sheet('pellgarth');
    const plan = planOf(engine);
    const byAngle = engine.joints.filter(({ stages }) => stages.some(({ act }) => act.kind === 'angle'));
    expect(byAngle.length).toBeGreaterThan(0);
    for (const { id } of byAngle)
      expect(
        plan.acts.find(({ subject }) => subject?.kind === 'joint' && subject.joint === id)?.noReturn,
      ).toBeDefined();
  });
});

it('makes a plan without worksheets too, with all mains as one act', () => {
  const plan = workPlan(sheet('quernside'), []);
  expect(count(plan, 'main-cap-on')).toBe(1);
  expect(leftOver(plan)).toBe(0);
});
