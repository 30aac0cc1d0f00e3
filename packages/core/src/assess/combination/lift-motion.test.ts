import { describe, expect, it } from 'vitest';
import { degrees, mm, rpm } from '../../quantity/index.js';
import { degreeing } from './degreeing.js';
import { DEGREE, every, readingsOfLobe } from './degreeing.suite.js';
import { motionOf } from './lift-motion.js';
import { readCurves } from './lift-motion-curve.js';
import { answerIn, valueIn } from './rows.suite.js';
import { roomMakeup } from './valve-room.suite.js';

const INTAKE = { kind: 'intake' } as const;
const of = (more: Parameters<typeof roomMakeup>[0] = {}, options: Parameters<typeof motionOf>[1] = {}) =>
  motionOf(roomMakeup(more), options);

describe('motion of a valve', () => {
  it('has a velocity that is the slope of its lift, and an acceleration that is the slope of its velocity', () => {
    const [intake] = of({}, { speed: rpm(6000) }).motions;
    const { lifts, slopes, bends, speeds, accelerations } = intake!;
    for (const at of [400, 440, 468, 500, 540]) {
      // Central differences over a degree either way against the formula: of the second order in the step.
      expect((lifts[at + 1]! - lifts[at - 1]!) / (2 * DEGREE)).toBeCloseTo(slopes[at]!, 5);
      expect((slopes[at + 1]! - slopes[at - 1]!) / (2 * DEGREE)).toBeCloseTo(bends[at]!, 4);
      expect(speeds![at]).toBeCloseTo(slopes[at]! * rpm(6000), 9);
      expect(accelerations![at]).toBeCloseTo(bends[at]! * rpm(6000) ** 2, 6);
    }
  });
  it('accelerates four times as much at twice the speed, and moves half as far for a degree of crank as for one of cam', () => {
    const [slow, fast] = [rpm(3000), rpm(6000)].map((speed) => of({}, { speed }));
    const nose = (answer: typeof slow) => valueIn(answer!, 'nose-acceleration', INTAKE)!;
    expect(nose(fast) / nose(slow)).toBeCloseTo(4, 9);
    expect(valueIn(fast!, 'peak-velocity', INTAKE)! / valueIn(slow!, 'peak-velocity', INTAKE)!).toBeCloseTo(2, 9);
    expect(valueIn(fast!, 'peak-slope-cam', INTAKE)).toBeCloseTo(2 * valueIn(fast!, 'peak-slope', INTAKE)!, 12);
  });
  it('is symmetric about the nose for a lobe that is', () => {
    const [intake] = of({ 'centreline-wanted@intake': degrees(108) }).motions;
    for (const off of [10, 40, 90]) {
      expect(intake!.lifts[468 + off]).toBeCloseTo(intake!.lifts[468 - off]!, 12);
      expect(intake!.slopes[468 + off]).toBeCloseTo(-intake!.slopes[468 - off]!, 12);
    }
  });
  it('answers lift and slopes without a speed, and says what wants one', () => {
    const answer = of();
    expect(valueIn(answer, 'valve-lift', INTAKE)).toBeCloseTo(0.012, 6);
    expect(valueIn(answer, 'peak-velocity')).toBeUndefined();
    expect(answer.missing.map(({ key }) => key)).toContain('highest-speed');
    expect(answer.motions[0]!.speeds).toBeUndefined();
  });
  it('carries the doubt of lift and ratio: 0.01 mm of lobe are 0.015 mm at the valve', () => {
    const makeup = roomMakeup();
    const figures = new Map(
      [...makeup.figures].map(([key, one]) => [
        key,
        key.startsWith('lobe-lift') ? { ...one, u: 1e-5 } : key.startsWith('rocker-ratio') ? { ...one, u: 0 } : one,
      ]),
    );
    const answer = motionOf({ ...makeup, figures });
    expect(answerIn(answer, 'valve-lift', INTAKE)!.u).toBeCloseTo(1.5e-5, 8);
  });
  it('follows the exact rocker where its geometry is known', () => {
    const arms = {
      'valve-arm': mm(37.5),
      'pushrod-arm': mm(25),
      'valve-arm-above': degrees(9),
      'pushrod-arm-below': degrees(9),
    };
    // Like angles keep the ratio of the arms: 37.5/25 = 1.5.
    expect(valueIn(of(arms), 'valve-lift', INTAKE)).toBeCloseTo(0.012, 6);
    const unlike = of({ ...arms, 'pushrod-arm-below': degrees(-15) });
    expect(Math.abs(valueIn(unlike, 'valve-lift', INTAKE)! - 0.012)).toBeGreaterThan(1e-4);
    expect(unlike.cautions.join(' ')).not.toMatch(/taken as constant/);
  });
  it('takes a lobe as it was read, and warns of its acceleration', () => {
    const read = readCurves(degreeing(roomMakeup(), readingsOfLobe({ nose: 108, at: every(5, 135) })));
    const answer = of({}, { read });
    expect(valueIn(answer, 'valve-lift', INTAKE)).toBeCloseTo(0.012, 5);
    expect(answer.cautions.join(' ')).toMatch(/magnified/);
  });
});
