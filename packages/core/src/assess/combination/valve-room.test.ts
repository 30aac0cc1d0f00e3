import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findCalculation } from '../../calc/index.js';
import type { Angle, Length } from '../../quantity/index.js';
import { degrees, inch, mm } from '../../quantity/index.js';
import { camCorrection } from './cam-correction.js';
import { camWindowOf } from './cam-window.js';
import { degreeing } from './degreeing.js';
import { DEGREE, every, LOBE, readingsOfLobe } from './degreeing.suite.js';
import { motionOf } from './lift-motion.js';
import { type ReadCurves, readCurves } from './lift-motion-curve.js';
import { preloadOf } from './preload.js';
import { pushrodOf } from './pushrod.js';
import { rockersOf } from './rockers.js';
import { answerIn, bareEngine, makeupWith, valueIn } from './rows.suite.js';
import { timingOf } from './timing.js';
import { roomSweep, valveRoomOf } from './valve-room.js';
import { HOT_FIGURES, ROOM_FIGURES, roomMakeup } from './valve-room.suite.js';

const INTAKE = { kind: 'intake' } as const;
const EXHAUST = { kind: 'exhaust' } as const;
const room = (more: Parameters<typeof roomMakeup>[0] = {}, options: Parameters<typeof valveRoomOf>[1] = {}) =>
  valveRoomOf(roomMakeup(more), options);
const least = (answer: ReturnType<typeof room>, of: typeof INTAKE | typeof EXHAUST = INTAKE) =>
  valueIn(answer, 'valve-room', of)!;

describe('room between valve and piston', () => {
  it('is least a few degrees after top for the intake and before it for the exhaust, not at full lift', () => {
    const answer = room();
    const at = (of: typeof INTAKE | typeof EXHAUST) => valueIn(answer, 'valve-room-at', of)! / DEGREE;
    expect(at(INTAKE)).toBeGreaterThan(4);
    expect(at(INTAKE)).toBeLessThan(20);
    expect(at(EXHAUST)).toBeLessThan(-4);
  });

  it('is held against the usual least room, with its chance and where the limit comes from', () => {
    const found = answerIn(room(), 'valve-room', INTAKE)!;
    expect(found.limit).toMatchObject({ low: inch(0.08) });
    expect(found.limit?.from).toMatch(/piston-to-valve/);
    expect(found.inside).toBeGreaterThan(0.9);
    expect(answerIn(room({ 'valve-drop': mm(4.7) }), 'valve-room', INTAKE)).toMatchObject({ verdict: 'near' });
    expect(answerIn(room({ 'valve-drop': mm(3) }), 'valve-room', INTAKE)).toMatchObject({ verdict: 'out' });
  });

  it('trades intake room for exhaust room as the cam is advanced', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 8, noNaN: true }), (advance) => {
        const [now, then] = [room(), room({}, { advance: advance * DEGREE })];
        expect(least(then)).toBeLessThan(least(now));
        expect(least(then, EXHAUST)).toBeGreaterThan(least(now, EXHAUST));
      }),
      { numRuns: 15 },
    );
  });

  it('is the same before and after top for like lobes that mirror each other', () => {
    const answer = room({ 'centreline-wanted': degrees(110), 'duration-at-lift': degrees(220) });
    expect(least(answer)).toBeCloseTo(least(answer, EXHAUST), 9);
    expect(valueIn(answer, 'valve-room-at', INTAKE)).toBeCloseTo(-valueIn(answer, 'valve-room-at', EXHAUST)!, 6);
  });

  it('grows with a thicker gasket and shrinks with a cut by the cosine of the valve angle, in a parallel pocket', () => {
    const taken = { 'valve-drop-gasket': mm(1) };
    const change = least(room({ ...taken, 'gasket-thickness': mm(1.4) })) - least(room(taken));
    expect(change).toBeCloseTo(0.0004 * Math.cos(20 * DEGREE), 9);
    expect(least(room({ 'deck-cut': mm(0.2) })) - least(room())).toBeCloseTo(-0.0002 * Math.cos(20 * DEGREE), 9);
  });

  it('does not follow the gasket where nobody says with which one the room was taken', () => {
    expect(least(room({ 'gasket-thickness': mm(2) }))).toBeCloseTo(least(room()), 12);
  });

  it('is put together from recess, gasket, deck clearance and pocket where it was not taken as a whole', () => {
    const parts = { 'valve-drop': undefined, 'valve-recess': mm(1.5), 'pocket-depth': mm(2.3) };
    const answer = room(parts);
    const whole = room({ 'valve-drop': mm(1.5 + 2.3) + mm(1.2) * Math.cos(20 * DEGREE) });
    expect(least(answer)).toBeCloseTo(least(whole), 12);
  });

  it('has a doubt that is that of its figures: a drop known to 0.1 mm brings 0.1 mm', () => {
    const sure = roomMakeup();
    const doubtful = {
      ...sure,
      figures: new Map([...sure.figures].map(([key, one]) => [key, key === 'valve-drop' ? { ...one, u: 1e-4 } : one])),
    };
    const [one, other] = [sure, doubtful].map((makeup) => answerIn(valveRoomOf(makeup), 'valve-room', INTAKE)!.u!);
    expect(Math.sqrt(other! ** 2 - one! ** 2)).toBeCloseTo(1e-4, 7);
  });

  it('says which figures are missing and still answers for the other valve', () => {
    const answer = room({ 'valve-drop': undefined, 'valve-drop@exhaust': mm(5) });
    expect(answer.rooms.map(({ kind }) => kind)).toEqual(['exhaust']);
    expect(answer.missing.map(({ key }) => key)).toContain('valve-drop');
    expect(valveRoomOf(makeupWith(bareEngine(), {})).figures).toEqual([]);
  });

  it('takes lobes as they were read in place of the card, and then no model is warned of', () => {
    const readings = readingsOfLobe({ nose: 108, at: every(5, 135) });
    const stop = { cylinder: 1, first: -30 * DEGREE, second: 30 * DEGREE };
    const read = readCurves(degreeing(roomMakeup(), readings, [stop]));
    const answer = room({}, { read });
    // The same lobe as a card of a single duration: 270 degrees, exponents 6, 8, 10.
    const card = room({ 'lobe-duration@intake': 2 * LOBE.halfDuration, 'lobe-fullness': 6 });
    expect(least(answer)).toBeCloseTo(least(card), 5);
    expect(answer.cautions.join(' ')).not.toMatch(/intake: the lift is a model/);
    const sure = answerIn(answer, 'valve-room', INTAKE)!;
    expect(sure.u).toBeGreaterThan(0);
    const adrift = room({}, { read: readCurves(degreeing(roomMakeup(), readings)) });
    expect(answerIn(adrift, 'valve-room', INTAKE)).toMatchObject({ verdict: 'no data' });
  });

  it('warns when the least room lies at the end of what was read', () => {
    const table = {
      angles: [-10, 0, 5].map((at) => degrees(at) as Angle),
      lifts: [1, 2, 2.5].map((at) => mm(at) as Length),
    };
    const read: ReadCurves = { intake: { table, at: 'valve', u: 0, uLift: 0 } };
    expect(room({}, { read }).cautions.join(' ')).toMatch(/end of the readings/);
  });

  it('gives more room with the lifter bled down and less with it pumped up', () => {
    const engine = bareEngine(
      4,
      'valveGear: { kind: pushrod, follower: flat, adjustment: hydraulic, valvesPerCylinder: { intake: 1, exhaust: 1 }, ratio: "1.5:1", adjuster: { place: none } }\n',
    );
    const figures = {
      ...ROOM_FIGURES,
      'lobe-lift': mm(8),
      'centreline-wanted': degrees(108),
      'lifter-preload': mm(1),
      'lifter-travel': mm(4),
    };
    const answer = valveRoomOf(makeupWith(engine, figures));
    const of = (key: string) => valueIn(answer, key, INTAKE)!;
    // Bled down by 3 mm, 4.5 at the valve: near the top the valve is shut and the room is that at the top, 5 mm.
    expect(of('valve-room-bled-down')).toBeCloseTo(0.005, 4);
    expect(of('valve-room')).toBeLessThan(0.005);
    expect(of('valve-room-pumped-up')).toBeLessThan(of('valve-room'));
    expect(answer.rooms[0]!.sensitivities.map(({ key }) => key)).toContain('bled-down');
  });

  it('estimates what is left hot and at speed', () => {
    const answer = room(HOT_FIGURES);
    // Pull m·r·ω²(1 + r/l) = 0.68·0.044·680.7²·1.3034 = 18.07 kN; stretch 18070·0.145/(205e9·200e-6) = 0.0639 mm;
    // growth 11.5e-6·90·189 + 20.5e-6·180·32 − 11e-6·70·221 = 0.1956 + 0.1181 − 0.1702 = 0.1435 mm; in all 0.207 mm.
    expect(valueIn(answer, 'piston-nearer')! * 1000).toBeCloseTo(0.2074, 3);
    expect(valueIn(answer, 'quench-hot')! * 1000).toBeCloseTo(1.2 - 0.2074, 3);
    expect(least(answer) - valueIn(answer, 'valve-room-hot', INTAKE)!).toBeCloseTo(
      0.0002074 * Math.cos(20 * DEGREE),
      6,
    );
  });

  it('gives a slider the same least room as the whole answer', () => {
    const sweep = roomSweep(roomMakeup());
    for (const advance of [-4, 0, 6]) {
      const [intake] = sweep(advance * DEGREE);
      expect(intake!.least.gap).toBeCloseTo(least(room({}, { advance: advance * DEGREE })), 12);
      expect(Math.min(...intake!.gaps)).toBeGreaterThanOrEqual(intake!.least.gap - 1e-12);
      // Farther from the top no valve comes near the piston: a degree apart from 120 before to 120 after.
      expect(intake!.gaps.length).toBe(241);
    }
  });

  it('is worked out for 720 degrees of both valves within a frame of a slow phone (4 ms here)', () => {
    const sweep = roomSweep(roomMakeup());
    const times = Array.from({ length: 25 }, (_, run) => {
      const start = performance.now();
      sweep(run * 1e-3);
      return performance.now() - start;
    }).sort((a, b) => a - b);
    expect(times[12]).toBeLessThan(4);
  });
});

describe('sources', () => {
  it('are calculations of the catalogue, in every answer about cam, valve room and gear', () => {
    const makeup = roomMakeup();
    const lobe = degreeing(makeup, readingsOfLobe({ nose: 108, at: every(10) })).lobes[0]!;
    const answers = [
      degreeing(makeup, []),
      timingOf(makeup),
      room(),
      camWindowOf(makeup),
      camCorrection(makeup, lobe, { parts: [] }),
      motionOf(makeup),
      rockersOf(makeup),
      pushrodOf(makeup),
      preloadOf(makeup),
    ];
    for (const { sources } of answers) {
      expect(sources.length).toBeGreaterThan(0);
      for (const id of sources) expect(findCalculation(id), id).toBeDefined();
    }
  });
});

describe('how far the cam may be moved', () => {
  it('ends where a room meets its limit', () => {
    const answer = camWindowOf(roomMakeup());
    const most = valueIn(answer, 'most-advance')!;
    expect(least(room({}, { advance: most }))).toBeCloseTo(inch(0.08), 9);
    expect(least(room({}, { advance: -valueIn(answer, 'most-retard')! }), EXHAUST)).toBeCloseTo(inch(0.1), 9);
  });
  it('is as doubtful as the room there over its slope: 1 degree of advance takes about 0.17 mm', () => {
    const makeup = roomMakeup();
    const most = answerIn(camWindowOf(makeup), 'most-advance')!;
    const at = answerIn(valveRoomOf(makeup, { advance: most.value }), 'valve-room', INTAKE)!;
    const degree =
      least(room({}, { advance: most.value - DEGREE / 2 })) - least(room({}, { advance: most.value + DEGREE / 2 }));
    expect(most.u!).toBeCloseTo((at.u! / degree) * DEGREE, 4);
  });
  it('tables the least rooms, intake falling and exhaust growing with advance', () => {
    const { table } = camWindowOf(roomMakeup(), { reach: degrees(10) });
    expect(table.length).toBe(21);
    for (const [at, one] of table.entries()) {
      if (at === 0) continue;
      expect(one.intake!).toBeLessThan(table[at - 1]!.intake!);
      expect(one.exhaust!).toBeGreaterThan(table[at - 1]!.exhaust!);
    }
  });
  it('says when nothing keeps the rooms, and when a valve is not known', () => {
    expect(camWindowOf(roomMakeup({ 'valve-drop': mm(1) })).cautions.join(' ')).toMatch(/no place of the cam/);
    const half = camWindowOf(roomMakeup({ 'valve-drop': undefined, 'valve-drop@intake': mm(5) }));
    expect(half.cautions.join(' ')).toMatch(/exhaust room is not known/);
  });
});
