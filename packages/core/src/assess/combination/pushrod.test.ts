import { describe, expect, it } from 'vitest';
import { degrees, inch, mm } from '../../quantity/index.js';
import { preloadOf } from './preload.js';
import { pushrodOf } from './pushrod.js';
import { rockersOf } from './rockers.js';
import { answerIn, bareEngine, makeupWith, valueIn } from './rows.suite.js';

const HYDRAULIC = `valveGear:
  kind: pushrod
  follower: flat
  adjustment: hydraulic
  valvesPerCylinder: { intake: 1, exhaust: 1 }
  ratio: 1.5:1
  adjuster: { place: stud-nut, pitch: 1.25 mm }
`;
const engine = bareEngine(4, HYDRAULIC);
const INTAKE = { kind: 'intake' } as const;
const trial = (length: number, width: number, offset?: number) => ({
  length: mm(length),
  width: mm(width),
  ...(offset !== undefined && { offset: mm(offset) }),
});

describe('pushrod by trial lengths', () => {
  const of = (...trials: ReturnType<typeof trial>[]) =>
    pushrodOf(makeupWith(engine, {}), { trials: { intake: trials } });
  it('finds the narrowest mark as the vertex of a parabola, trials in any order (hand: marks 2.0, 1.5, 1.6: 1/3 mm past the middle)', () => {
    // Second differences: slope −0.5 then +0.1 over 1 mm each; vertex at 0.5 + 0.5/0.6 − 1 = 0.3333 mm past the second.
    for (const trials of [
      [trial(199, 2), trial(200, 1.5), trial(201, 1.6)],
      [trial(201, 1.6), trial(199, 2), trial(200, 1.5)],
    ])
      expect(valueIn(of(...trials), 'pushrod-narrowest', INTAKE)! * 1000).toBeCloseTo(200.3333, 3);
  });
  it('finds the length with the mark in the middle on a straight line', () => {
    const answer = of(trial(199, 2, -0.4), trial(200, 1.5, 0.0), trial(201, 1.6, 0.4));
    expect(valueIn(answer, 'pushrod-centred', INTAKE)! * 1000).toBeCloseTo(200, 6);
  });
  it('says which way to go on while the mark still narrows, and what is too little', () => {
    expect(of(trial(199, 2), trial(200, 1.5), trial(201, 1.2)).cautions.join()).toMatch(/try a longer one/);
    expect(of(trial(199, 1), trial(200, 1.5), trial(201, 1.7)).cautions.join()).toMatch(/try a shorter one/);
    expect(of(trial(199, 2)).cautions.join()).toMatch(/at least three/);
    expect(of(trial(199, 2), trial(199, 1.5), trial(200, 1)).cautions.join()).toMatch(/tried twice/);
  });
});

describe('pushrod length by the checking length', () => {
  const figures = { 'pushrod-zero-lash': mm(200), 'lifter-preload': mm(1) };
  it('gets shorter by every cut and longer by a thicker gasket and a smaller base circle', () => {
    const more = {
      ...figures,
      'deck-cut': mm(0.25),
      'head-cut': mm(0.5),
      'pushrod-gasket': mm(1),
      'gasket-thickness': mm(1.3),
      'base-circle-smaller': mm(0.6),
    };
    // 200 − 0.75 + 0.3 + 0.6 + 1 = 201.15.
    expect(valueIn(pushrodOf(makeupWith(engine, more)), 'pushrod-needed', INTAKE)! * 1000).toBeCloseTo(201.15, 9);
  });
  it('holds the preload of the nearest length against its window', () => {
    const makeup = makeupWith(engine, { ...figures, 'lifter-preload-least': mm(0.5), 'lifter-preload-most': mm(1.5) });
    const answer = pushrodOf(makeup, { offered: [mm(200.2), mm(202.8)] });
    expect(valueIn(answer, 'pushrod-chosen', INTAKE)! * 1000).toBeCloseTo(200.2, 9);
    expect(answerIn(answer, 'pushrod-preload', INTAKE)).toMatchObject({ verdict: 'out' });
  });
  it('says what is missing and still tells the change', () => {
    const answer = pushrodOf(makeupWith(engine, { 'deck-cut': mm(0.25) }));
    expect(answer.missing.map(({ key }) => key)).toEqual(
      expect.arrayContaining(['pushrod-zero-lash', 'lifter-preload']),
    );
    expect(valueIn(answer, 'pushrod-change', INTAKE)! * 1000).toBeCloseTo(-0.25, 9);
  });
  it('has nothing to say of an engine without pushrods', () => {
    const buckets = bareEngine(
      4,
      HYDRAULIC.replace('kind: pushrod', 'kind: overhead-bucket')
        .replace('stud-nut, pitch: 1.25 mm', 'none')
        .replace('  ratio: 1.5:1\n', ''),
    );
    expect(pushrodOf(makeupWith(buckets, figures)).figures).toEqual([]);
  });
});

describe('preload', () => {
  it('counts the lever of a stud nut: half a turn of 1.25 mm at 1.5 is 1.0417 mm of plunger', () => {
    const answer = preloadOf(makeupWith(engine, { 'preload-turns': Math.PI, 'lifter-preload-most': mm(1.2) }));
    expect(valueIn(answer, 'preload-travel', INTAKE)! * 1000).toBeCloseTo(0.625 * (1 + 1 / 1.5), 9);
    expect(answerIn(answer, 'preload-travel', INTAKE)).toMatchObject({ limit: { high: mm(1.2) } });
  });
  it('takes turns and window from the sheet where nobody states others', () => {
    const asked = bareEngine(4, `${HYDRAULIC}  preload: { turns: 1/2 turn, plungerTravel: 0.5..1.5 mm }\n`);
    const answer = preloadOf(makeupWith(asked, { 'lifter-travel': mm(4) }));
    expect(answerIn(answer, 'preload-travel', INTAKE)).toMatchObject({ limit: { low: mm(0.5), high: mm(1.5) } });
    // 4 − 1.0417 of travel left, times the ratio.
    expect(valueIn(answer, 'gap-left', INTAKE)! * 1000).toBeCloseTo(1.5 * (4 - 1.041667), 5);
    const pushrod = pushrodOf(makeupWith(asked, { 'pushrod-zero-lash': mm(200) }));
    expect(valueIn(pushrod, 'pushrod-needed', INTAKE)! * 1000).toBeCloseTo(201.041667, 5);
  });
  it('says that turns are of no use without a thread', () => {
    const bare = bareEngine(4, HYDRAULIC.replace('stud-nut, pitch: 1.25 mm', 'stud-nut'));
    expect(preloadOf(makeupWith(bare, { 'preload-turns': Math.PI })).missing.map(({ key }) => key)).toContain(
      'adjuster-pitch',
    );
  });
});

describe('rockers', () => {
  it('tells both ways of setting from the arm alone, about four times apart', () => {
    const answer = rockersOf(
      makeupWith(engine, { 'lobe-lift': inch(1 / 3), 'valve-arm': inch(1.47), 'valve-lash': 0 }),
    );
    const [half, closed] = ['sweep-half-lift', 'sweep-closed'].map((key) => valueIn(answer, key, INTAKE)!);
    expect(closed! / half!).toBeGreaterThan(3.8);
    expect(answer.cautions.join()).toMatch(/two ways of setting/);
  });
  it('warns of a rocker far off the half-lift rule', () => {
    const arms = { 'lobe-lift': mm(8), 'valve-arm': mm(37.5), 'pushrod-arm': mm(25), 'pushrod-arm-below': degrees(9) };
    const at = (above: number) =>
      rockersOf(makeupWith(engine, { ...arms, 'valve-arm-above': degrees(above) })).cautions.join();
    expect(at(9)).not.toMatch(/half-lift/);
    expect(at(16)).toMatch(/half-lift rule/);
  });
});
