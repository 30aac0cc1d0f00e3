import { describe, expect, it } from 'vitest';
import { degrees, inch } from '../../quantity/index.js';
import { camCorrection } from './cam-correction.js';
import { degreeing } from './degreeing.js';
import { DEGREE, EXHAUST, every, INTAKE, readingsOfLobe } from './degreeing.suite.js';
import { roomMakeup } from './valve-room.suite.js';

const makeup = roomMakeup();
const STOP = { cylinder: 1, first: -30 * DEGREE, second: 30 * DEGREE };
const degreed = (nose: number, lobe = INTAKE) =>
  degreeing(makeup, readingsOfLobe({ lobe, nose, at: every(10, 110) }), [STOP]).lobes[0]!;
const key = (angle: number) => ({
  id: `key-${angle}`,
  name: `${angle}° key`,
  angle: degrees(angle),
  marked: 'crank' as const,
});

describe('correcting a cam', () => {
  it('takes the part that leaves the least, of every part and way round (card 108, read 112: 4 degrees of advance)', () => {
    const answer = camCorrection(makeup, degreed(112), { parts: [key(2), key(4), key(6)] });
    expect(answer.choices.length).toBe(7);
    expect(answer.choices[0]).toMatchObject({ part: { id: 'key-4', turnedRound: false }, teeth: 0, verdict: 'in' });
    expect(answer.choices[0]!.middle / DEGREE).toBeCloseTo(108, 3);
    const lefts = answer.choices.map(({ left }) => Number(Math.abs(left).toFixed(9)));
    expect(lefts).toEqual([...lefts].sort((a, b) => a - b));
  });
  it('turns a part round for a cam that stands too early', () => {
    const { choices } = camCorrection(makeup, degreed(104), { parts: [key(4)] });
    expect(choices[0]).toMatchObject({ part: { turnedRound: true } });
    expect(camCorrection(makeup, degreed(104), { parts: [key(4)], bothWays: false }).choices[0]!.part).toBeUndefined();
  });
  it('counts degrees at the cam twice, and an offset key by its arm: 0.010 in at 0.500 in of the crank is 1.146 degrees', () => {
    const { choices } = camCorrection(makeup, degreed(112), {
      parts: [{ id: 'b', name: 'bushing', angle: degrees(2), marked: 'cam' }],
    });
    expect(choices[0]!.change / DEGREE).toBeCloseTo(4, 9);
    const part = { id: 'k', name: 'key', place: 'crank-key', offset: inch(0.01), radius: inch(0.5) } as const;
    const own = camCorrection(makeup, degreed(112), { parts: [part], bothWays: false }).choices.find(
      (one) => one.part,
    )!;
    // asin(0.02) = 1.14599 degrees.
    expect(own.change / DEGREE).toBeCloseTo(1.14599, 4);
  });
  it('moves teeth where it may: one of 20 is 18 degrees of the crank', () => {
    const { choices } = camCorrection(makeup, degreed(126), { parts: [key(2)], crankTeeth: 20 });
    expect(choices[0]).toMatchObject({ teeth: 1 });
    expect(choices[0]!.part).toBeUndefined();
    expect(choices.length).toBe(9);
  });
  it('brings an exhaust lobe that stands late back by advance too', () => {
    const { choices } = camCorrection(makeup, degreed(-108, EXHAUST), { parts: [key(4)] });
    expect(choices[0]!.change / DEGREE).toBeCloseTo(4, 9);
    expect(choices[0]!.middle / DEGREE).toBeCloseTo(-112, 3);
  });
  it('tells the rooms of each choice: advance takes from the intake and gives to the exhaust', () => {
    const { choices } = camCorrection(makeup, degreed(112), { parts: [key(4)], bothWays: false });
    const [fitted, bare] = [choices.find((one) => one.part)!, choices.find((one) => !one.part)!];
    expect(fitted.rooms.intake!.gap).toBeLessThan(bare.rooms.intake!.gap);
    expect(fitted.rooms.exhaust!.gap).toBeGreaterThan(bare.rooms.exhaust!.gap);
    const alone = camCorrection(makeup, degreed(112), { parts: [key(4)], bothWays: false, moves: ['intake'] });
    expect(alone.choices[0]!.rooms.exhaust!.gap).toBe(bare.rooms.exhaust!.gap);
  });
  it('says when the change wanted is within the doubt, and gives nothing without a middle', () => {
    expect(camCorrection(makeup, degreed(108.1), { parts: [] }).cautions.join(' ')).toMatch(/no larger than the doubt/);
    const grown = degreeing(makeup, readingsOfLobe({ nose: 108, at: [-50, -40] }), [STOP]).lobes[0]!;
    expect(camCorrection(makeup, grown, { parts: [key(4)] }).choices).toEqual([]);
  });
});
