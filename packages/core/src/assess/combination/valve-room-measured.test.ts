import { describe, expect, it } from 'vitest';
import type { ValveId } from '../../engine/index.js';
import { bareEngine, makeupWith } from './rows.suite.js';
import { measuredRooms, type RoomReading } from './valve-room-measured.js';

const intake: ValveId = { cylinder: 1, kind: 'intake', index: 1 };
const degrees = (angle: number) => (angle * Math.PI) / 180;
/** The wheel reads 4 degrees at the true top. */
const stops = [{ cylinder: 1, first: degrees(-32), second: degrees(40) }];
const pressed = (wheel: number, mm: number, valve = intake): RoomReading => ({
  valve,
  room: mm / 1000,
  method: 'drop',
  wheel: degrees(wheel),
  uRead: 3e-6,
});
const makeup = makeupWith(bareEngine(), { 'valve-room-least': 2e-3 });

describe('room measured in the metal', () => {
  it('counts from the true top, and the least of a kind is judged with the doubt of its method', () => {
    const answer = measuredRooms(makeup, [pressed(-6, 2.9), pressed(14, 2.4), pressed(24, 2.6)], stops);
    expect(answer.rooms.map(({ angle }) => Math.round((angle! * 180) / Math.PI))).toEqual([-10, 10, 20]);
    const [least] = answer.figures;
    expect(least).toMatchObject({ key: 'valve-room-measured', value: 2.4e-3, kind: 'intake', verdict: 'in' });
    // Half widths are rectangular: 0.05 mm / √3, and the last place of the indicator.
    expect(least!.u).toBeCloseTo(Math.hypot(5e-5 / Math.sqrt(3), 3e-6), 9);
    expect(answer.cautions.join()).not.toMatch(/end of what was measured/);
  });
  it('says where it may be less beyond what was measured', () => {
    const answer = measuredRooms(makeup, [pressed(4, 2.9), pressed(14, 2.4)], stops);
    expect(answer.cautions.join()).toMatch(/intake: the least room lies at the end/);
  });
  it('takes clay without a place, less sure than an indicator, and out where it is thinner than wanted', () => {
    const clay: RoomReading = { valve: intake, room: 1.4e-3, method: 'clay', uRead: 3e-5 };
    const answer = measuredRooms(makeup, [pressed(14, 2.4), clay], stops);
    expect(answer.figures[0]).toMatchObject({ value: 1.4e-3, verdict: 'out' });
    expect(answer.rooms[1]!.angle).toBeUndefined();
    expect(answer.figures[0]!.u!).toBeGreaterThan(8e-5);
    expect(answer.assumed.join()).toMatch(/clay is good to 0.150 mm/);
  });
  it('has no place on the plot before the true top was found, and no verdict on a reading of unknown doubt', () => {
    const { uRead: _, ...unsure } = pressed(14, 2.4);
    const answer = measuredRooms(makeup, [unsure]);
    expect(answer.rooms[0]!.angle).toBeUndefined();
    expect(answer.cautions.join()).toMatch(/true top was not found/);
    expect(answer.figures[0]!.verdict).toBe('no data');
    expect(answer.figures[0]!.u).toBeUndefined();
  });
  it('another cylinder counts from its own top of overlap: 180 degrees on for the second to fire of four', () => {
    const third = pressed(4 + 180 + 10, 2.4, { ...intake, cylinder: 3 });
    expect(measuredRooms(makeup, [third], stops).rooms[0]!.angle).toBeCloseTo(degrees(10), 9);
  });
  it('nothing measured answers nothing', () => {
    expect(measuredRooms(makeup, [])).toMatchObject({ figures: [], rooms: [], assumed: [], cautions: [] });
  });
});
