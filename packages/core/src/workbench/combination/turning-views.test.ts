import { describe, expect, it } from 'vitest';
import { lobeLift } from '../../calc/cam/index.js';
import type { Engine } from '../../engine/index.js';
import { engineOf, read } from '../../engine/load/try-sheets.suite.js';
import { degrees, mm } from '../../quantity/index.js';
import { chainOf, type Wish } from '../../record/samples.suite.js';
import { openBench } from '../bench.js';
import type { Scratch } from '../combination-views.js';
import { degreeingView } from './degreeing-view.js';
import type { DegreeingWish } from './degreeing-views.js';
import { judgeLift } from './lift-gate.js';
import { motionMoving, motionView } from './motion-view.js';
import { rockersView } from './rockers-view.js';
import { type PartTyped, timingPart, USUAL_PARTS } from './timing-part.js';
import { timingView } from './timing-view.js';
import { triedOf } from './tried.js';
import { proposeCamRead, proposeStop, proposeTrial } from './turning-commands.js';
import { valveRoomMoving } from './valve-room-moving.js';
import { valveRoomView } from './valve-room-view.js';

const v8 = engineOf(read('sheets/quernside-51-v8.yaml'));
const four = engineOf(read('sheets/pellgarth-t4-twin-cam.yaml'));
const MM = { length: 'mm' } as const;
const INTAKE = { cylinder: 1, kind: 'intake', index: 1 } as const;
const DEGREE = Math.PI / 180;
const benchOf = (engine: Engine, wishes: readonly Wish[] = []) => openBench(engine, chainOf(wishes));
const look = (bench: ReturnType<typeof benchOf>, scratch: Scratch = new Map()) => triedOf(bench, scratch);

/** The wheel reads 4° too much; the intake lobe of the V8 stands 3.5° later than its card (middle 110° after top). */
const TOP = 4;
const MIDDLE = 110 + 3.5;
const LOBE = lobeLift({ peakLift: mm(7.35), halfDuration: degrees(128), exponents: [6, 8, 10] });
const angle = (text: string, value: number) => ({ text, value: value * DEGREE, unit: 'rad' });
const stop: Wish = {
  kind: 'dead-centre-read',
  data: { cylinder: 1, first: angle(`${TOP - 36} deg`, TOP - 36), second: angle(`${TOP + 36} deg`, TOP + 36) },
};
function readAt(fromMiddle: number, error = 0): Wish {
  const wheel = MIDDLE + TOP + fromMiddle;
  const lift = Math.round((LOBE(fromMiddle * DEGREE) + error) * 1e5) / 1e5;
  return {
    kind: 'cam-read',
    data: {
      lobe: INTAKE,
      wheel: angle(`${wheel} deg`, wheel),
      lift: { text: `${lift * 1e3} mm`, value: lift, unit: 'm' },
      at: 'lifter',
    },
  };
}
const PLACES = [-90, -75, -60, -45, -30, -15, 0, 15, 30, 45, 60, 75, 90];
const NONE = { atHand: { parts: [] } };

describe('degreeing on the screen', () => {
  it('asks for the stop first, and names the place from which everything counts once it is read', () => {
    expect(degreeingView(benchOf(v8), look(benchOf(v8)), MM, NONE).stop).toMatchObject({ cylinder: 1, found: false });
    const bench = benchOf(v8, [stop]);
    const { stop: found, figure } = degreeingView(bench, look(bench), MM, NONE);
    expect(found.words).toContain('true top of cylinder 1 the wheel reads 4°');
    expect(figure.description).toContain('at true top it reads 4°');
  });
  it('tells the middle with its doubt and how much later than the card it stands, in whichever order it was read', () => {
    const bench = benchOf(v8, [stop, ...PLACES.toReversed().map((one) => readAt(one))]);
    const view = degreeingView(bench, look(bench), MM, NONE);
    // The card 18-58 has its middle at 256/2 − 18 = 110°: worked by hand.
    expect(view.lobe.words).toMatch(/^13 readings\. Middle 113\.[45]° after top ±0\.\d+°, 3\.[45]° later than wanted/);
    const later = view.answers.find(({ key }) => key === 'later-than-card@1-intake-1');
    expect(later).toMatchObject({ verdict: 'out', value: expect.stringMatching(/^3\.[45] deg/) });
    expect(view.plots.map(({ id }) => id)).toEqual(['lobe-1-intake-1', 'off-curve-1-intake-1']);
    expect(view.plots[0]!.curves.map(({ id }) => id)).toEqual(['card', 'fit', 'read']);
    expect(view.readings[0]!.words).toMatch(/^wheel 207\.5 deg, lift 0\.\d+ mm; 203\.5° after top$/);
  });
  it('names the reading that looks wrong, and lets go of it when it is struck out', () => {
    const wrong = readAt(-40, 0.0005);
    const wishes = [stop, ...PLACES.map((one) => readAt(one)), wrong];
    const bench = benchOf(v8, wishes);
    const { readings, figure } = degreeingView(bench, look(bench), MM, NONE);
    const named = readings.filter(({ wrong: words }) => words !== undefined);
    expect(named).toHaveLength(1);
    expect(named[0]!.words).toContain('wheel 77.5 deg');
    expect(named[0]!.wrong).toMatch(/above the curve of the others; without it the middle moves by/);
    expect(figure.description).toContain('1 of them look wrong');
    const struck = benchOf(v8, [
      ...wishes,
      { kind: 'struck-out', data: { entry: named[0]!.entry, reason: 'misread' } },
    ]);
    expect(degreeingView(struck, look(struck), MM, NONE).readings).toHaveLength(13);
  });
  it('lays every part at hand side by side, nearest first, with what it leaves and what it does to the rooms', () => {
    const bench = benchOf(v8, [stop, ...PLACES.map((one) => readAt(one))]);
    const parts = [2, 4].map((one) => ({
      id: `${one}`,
      name: `bushing ${one}°`,
      angle: one * DEGREE,
      marked: 'crank' as const,
    }));
    const { corrections } = degreeingView(bench, look(bench), MM, { atHand: { parts, crankTeeth: 22 } });
    expect(corrections[0]).toMatchObject({ name: 'bushing 4°', change: '4° earlier', verdict: 'in' });
    expect(corrections[0]!.left).toMatch(/0\.[456]° earlier than wanted/);
    expect(corrections[0]!.rooms.map(({ kind }) => kind)).toEqual(['intake', 'exhaust']);
    // None, 2° and 4° at hand, of the stock 2° that lies here and 6° that is bought, each either way round and with three teeth.
    expect(corrections).toHaveLength(9 * 3);
    // 3.5° late and turned 4° ahead: half a degree ahead of the card.
    expect(corrections[0]!.advance / DEGREE).toBeCloseTo(0.5, 1);
    // Tried on the scratch copy it changes the rooms, not what was read.
    const tried = look(bench, new Map([['cam-advance', corrections[0]!.advance]]));
    expect(degreeingView(bench, tried, MM, NONE).lobe.words).toMatch(/3\.[45]° later than wanted/);
  });
  it('offers the bushings of the stock, says which must be bought, and buys none that lies here', () => {
    const bench = benchOf(v8, [stop, ...PLACES.map((one) => readAt(one))]);
    const ways = (atHand: DegreeingWish['atHand']) => degreeingView(bench, look(bench), MM, { atHand }).corrections;
    const [best] = ways({ parts: [] });
    expect(best).toMatchObject({ name: 'dowel bushing Q51-614, 4°', buy: 'must be bought, price 9' });
    const lying = ways({ parts: [] }).find(({ name }) => name === 'dowel bushing Q51-612, 2°');
    expect(lying).toBeDefined();
    expect(lying).not.toHaveProperty('buy');
    const own = ways({ parts: USUAL_PARTS });
    expect(own[0]!.name).toMatch(/^[34] deg crank$/);
    expect(own.some(({ buy }) => buy !== undefined)).toBe(false);
    expect(degreeingView(bench, look(bench), MM, NONE).stock).toEqual([
      'dowel bushing Q51-612, 2°: 1 here',
      'dowel bushing Q51-614, 4°: must be bought, price 9',
      'dowel bushing Q51-616, 6°: must be bought, price 9',
    ]);
  });
  it('counts what a correction does to the rooms from where the cam stands, as its valve room does once it is tried', () => {
    const bench = benchOf(v8, [stop, ...PLACES.map((one) => readAt(one))]);
    const atHand = { parts: USUAL_PARTS };
    const { corrections: ways } = degreeingView(bench, look(bench), MM, { atHand });
    // Left as it is the cam stands 3.5° later than its card: no scratch figure, and the slider begins there.
    const asItIs = valveRoomMoving(bench, look(bench), MM, {});
    expect(asItIs.cam).toMatchObject({
      origin: 'measured',
      value: '-3.5',
      from: expect.stringContaining('as degreed'),
    });
    const intake = (words: string) => Number.parseFloat(words);
    const still = ways.find(({ name }) => name === 'As it is')!;
    expect(intake(still.rooms[0]!.words)).toBeCloseTo(intake(asItIs.least[0]!.words), 3);
    const tried = look(bench, new Map([['cam-advance', ways[0]!.advance]]));
    const moved = valveRoomMoving(bench, tried, MM, {});
    expect(intake(moved.least[0]!.words)).toBeCloseTo(intake(ways[0]!.rooms[0]!.words), 3);
    expect(
      intake(valveRoomView(bench, tried, MM, {}).answers.find(({ key }) => key === 'valve-room@intake')!.value),
    ).toBeCloseTo(intake(ways[0]!.rooms[0]!.words), 3);
    // An intake that opens earlier has less room.
    expect(intake(moved.least[0]!.words)).toBeLessThan(intake(asItIs.least[0]!.words));
  });
  it('asks about a lift that the other readings do not bear out, and about one that no lobe has', () => {
    const bench = benchOf(v8, [stop, ...PLACES.map((one) => readAt(one))]);
    const keyed = (fromMiddle: number, text: string) =>
      judgeLift(
        bench,
        look(bench),
        { lobe: INTAKE, at: 'lifter', wheel: (MIDDLE + TOP + fromMiddle) * DEGREE, text },
        MM,
      );
    const there = LOBE(-40 * DEGREE) * 1e3;
    expect(keyed(-40, `${there.toFixed(2)} mm`).level).toBe('fine');
    expect(keyed(-40 - 360, `${there.toFixed(2)} mm`).level).toBe('fine');
    expect(keyed(-40, `${(there / 10).toFixed(2)} mm`)).toMatchObject({
      level: 'unlikely',
      expected: expect.stringMatching(/^5\./),
    });
    expect(keyed(0, '73.5 mm')).toMatchObject({
      level: 'unlikely',
      hint: expect.stringContaining('Higher than this lobe'),
    });
    const inches = judgeLift(
      bench,
      look(bench),
      { lobe: INTAKE, at: 'lifter', wheel: undefined, text: '7.3 in' },
      { length: 'in' },
    );
    expect(inches).toMatchObject({ hint: expect.stringContaining('Is it 7.30 mm?') });
  });
  it('makes entries of what is keyed, and says in one line what cannot be read', () => {
    const bench = benchOf(v8);
    const made = proposeCamRead(bench, { lobe: INTAKE, wheel: '72.5 deg', lift: '3.21 mm', at: 'lifter' });
    expect(made).toMatchObject({ ok: true, value: [{ kind: 'cam-read', data: { lift: { value: 0.00321 } } }] });
    expect(proposeStop(bench, { cylinder: 1, first: '36 deg', second: '36 deg' })).toMatchObject({ ok: false });
    expect(proposeCamRead(bench, { lobe: INTAKE, wheel: '72.5 mm', lift: '3 mm', at: 'lifter' })).toMatchObject({
      ok: false,
      fault: expect.stringContaining('wheel'),
    });
  });
});

describe('a part at hand that turns the cam', () => {
  const part = (marking: PartTyped['marking'], amount: string, radius = '') =>
    timingPart({ marking, amount, radius }, MM);
  it('is told by its degrees or by its offset and where it sits', () => {
    expect(part('crank', '4')).toMatchObject({ ok: true, value: { name: '4 deg crank', marked: 'crank' } });
    expect(part('cam', '2,5')).toMatchObject({ ok: true, value: { name: '2.5 deg cam' } });
    expect(part('crank-key', '0.5', '17')).toMatchObject({ ok: true, value: { offset: 0.0005, radius: 0.017 } });
  });
  it('is refused with what is valid', () => {
    expect(part('crank', '40')).toMatchObject({ ok: false, fault: expect.stringContaining('30') });
    expect(part('crank', 'four')).toMatchObject({ ok: false });
    expect(part('cam-key', '9', '17')).toMatchObject({ ok: false, fault: expect.stringContaining('Offset') });
    expect(part('cam-key', '0.5', '')).toMatchObject({ ok: false });
  });
});

describe('valve room on the screen', () => {
  const bench = benchOf(four);
  it('moves the valves that the cam carries and leaves the others as they are', () => {
    const rest = valveRoomMoving(bench, look(bench), MM, { carries: 'intake' });
    const moved = valveRoomMoving(bench, look(bench, new Map([['cam-advance', 5 * DEGREE]])), MM, {
      carries: 'intake',
    });
    expect(rest.least.map(({ kept }) => kept)).toEqual([true, true]);
    expect(moved.least[1]).toEqual(rest.least[1]);
    expect(moved.least[0]).not.toEqual(rest.least[0]);
    expect(moved.plots[0]!.curves.map(({ name }) => name)).toEqual(['intake', 'exhaust', 'intake, cam as it is']);
  });
  it('draws the same least room as it answers', () => {
    const tried = look(bench, new Map([['cam-advance', 3 * DEGREE]]));
    const quick = valveRoomMoving(bench, tried, MM, {});
    const whole = valveRoomView(bench, tried, MM, {});
    const answer = whole.answers.find(({ key }) => key === 'valve-room@intake');
    expect(quick.least[0]!.words).toContain(answer!.value);
    expect(whole.window).toMatch(/^From where it stands the cam may be advanced by \d/);
    expect(whole.sensitivities.map(({ key }) => key)).toEqual(['gasket', 'cut', 'lash', 'advance']);
  });
  it('says that the cam may go as far as was looked where no limit is met', () => {
    const wide = benchOf(v8);
    expect(valveRoomView(wide, look(wide), MM, {}).window).toContain('advanced by at least 20.0 deg');
  });
  it('uses the lobes as they were read once they are, and the card where the person asks for it', () => {
    const read8 = benchOf(v8, [stop, ...[-110, 110, ...PLACES].map((one) => readAt(one))]);
    const asRead = valveRoomView(read8, look(read8), MM, {});
    const byCard = valveRoomView(read8, look(read8), MM, { from: 'card' });
    expect([asRead.from, byCard.from]).toEqual(['read', 'card']);
    const least = (view: typeof asRead) => view.answers.find(({ key }) => key === 'valve-room@intake')!.value;
    // A cam that stands later leaves the intake valve more room.
    expect(Number.parseFloat(least(asRead))).toBeGreaterThan(Number.parseFloat(least(byCard)));
  });
  it('follows a slider within a quarter of a frame', () => {
    for (const engine of [v8, four]) {
      const own = benchOf(engine);
      const times = Array.from({ length: 30 }, (_, n) => {
        const tried = look(own, new Map([['cam-advance', (n - 15) * 0.3 * DEGREE]]));
        const start = performance.now();
        valveRoomMoving(own, tried, MM, {});
        return performance.now() - start;
      }).sort((a, b) => a - b);
      // The machine may be busy: the fastest quarter of the steps tells what the work itself takes.
      expect(times[7]).toBeLessThan(4);
    }
  });
});

describe('timing, motion and rockers on the screen', () => {
  it('draws the card from seat to seat and at its checking lift', () => {
    const bench = benchOf(four);
    const { figure } = timingView(bench, look(bench), MM);
    expect(figure.description).toContain('from seat to seat');
    expect(figure.description).toMatch(/above 1\.\d+ mm at the lobe/);
  });
  it('draws lift, speed and acceleration at the speed that is chosen', () => {
    const bench = benchOf(v8);
    const speed = (4000 * Math.PI) / 30;
    const whole = motionView(bench, look(bench), MM, { speed });
    expect(whole.plots.map(({ title }) => title)).toEqual([
      'Valve lift',
      'Valve speed at 4000 r/min',
      'Valve acceleration at 4000 r/min',
    ]);
    const moving = motionMoving(bench, look(bench), MM, { speed });
    expect(moving.plots.map(({ title }) => title)).toEqual(whole.plots.map(({ title }) => title));
    const [first] = moving.plots[2]!.curves[0]!.points;
    expect(whole.plots[2]!.curves[0]!.points).toContainEqual(first);
  });
  it('keeps trials of pushrods by valve and finds the narrowest mark among them', () => {
    const tried = (length: number, width: number, offset: number): Wish => {
      const metres = (value: number) => ({ text: `${value} mm`, value: value / 1e3, unit: 'm' });
      return {
        kind: 'pushrod-tried',
        data: { valve: INTAKE, length: metres(length), width: metres(width), offset: metres(offset) },
      };
    };
    const bench = benchOf(v8, [tried(196, 2.4, -1), tried(197, 1.6, 0.1), tried(198, 2, 1.1)]);
    const view = rockersView(bench, look(bench), MM, {});
    expect(view.trials.map(({ words }) => words)[0]).toMatch(
      /^pushrod 196 mm: mark 2.4 mm wide, -1 mm from the middle/,
    );
    expect(view.answers.find(({ key }) => key === 'pushrod-narrowest@intake')).toBeDefined();
    expect(view.figure.description).toContain('It is centred at');
    expect(view.plots.map(({ id }) => id)).toEqual(['contact-intake', 'ratio-intake']);
    expect(rockersView(bench, look(bench), MM, { valve: '1-exhaust-1' }).trials).toEqual([]);
  });
  it('makes an entry of a trial, and has no pushrods to try over buckets', () => {
    const made = proposeTrial(benchOf(v8), { valve: INTAKE, length: '198 mm', width: '1.9 mm', offset: '-0.4 mm' });
    expect(made).toMatchObject({ ok: true, value: [{ data: { offset: { value: -0.0004 } } }] });
    const buckets = benchOf(four);
    expect(rockersView(buckets, look(buckets), MM, {}).pushrods).toBe(false);
  });
});
