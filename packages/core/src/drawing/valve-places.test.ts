import { describe, expect, it } from 'vitest';
import { valveKey, valvesOf } from '../engine/index.js';
import type { Figure } from './figure.js';
import { registerTray } from './register-tray.js';
import { INVENTED_ENGINES, inventedEngine } from './test-engines.suite.js';
import { valveMap } from './valve-map.js';

const v8 = inventedEngine(INVENTED_ENGINES.v8!);
const place = (figure: Figure, part: string) => figure.touches.find((touch) => touch.part === part)!.centre;

describe('valves in plan', () => {
  it('has a place for every valve of the engine, and none twice', () => {
    for (const wish of Object.values(INVENTED_ENGINES)) {
      const engine = inventedEngine(wish);
      const keys = valveMap(engine).touches.map((touch) => touch.part);
      expect([...keys].sort()).toEqual(valvesOf(engine).map(valveKey).sort());
    }
  });
  it('lays the left bank of the engine left, with the front at the top', () => {
    const map = valveMap(v8);
    expect(place(map, '1-intake-1').x).toBeLessThan(place(map, '2-intake-1').x);
    expect(place(map, '1-intake-1').y).toBeLessThan(place(map, '3-intake-1').y);
  });
  it('keeps the order along the head that the sheet gives', () => {
    const head = v8.heads[0]!;
    const map = valveMap(v8);
    const along = [...head.valves].sort((a, b) => a.at.x - b.at.x).map((valve) => place(map, valveKey(valve)).y);
    expect(along).toEqual([...along].sort((a, b) => a - b));
  });
  it('sets intake and exhaust side by side where a cylinder has four valves, exhaust outside', () => {
    const map = valveMap(inventedEngine(INVENTED_ENGINES.v12!));
    expect(place(map, '1-exhaust-1').x).toBeLessThan(place(map, '1-intake-1').x);
    expect(place(map, '2-exhaust-1').x).toBeGreaterThan(place(map, '2-intake-1').x);
    expect(place(map, '1-exhaust-1').y).toBeCloseTo(place(map, '1-intake-1').y, 9);
  });
  it('says that it assumes the order along a head without valve places', () => {
    const engine = { ...v8, heads: v8.heads.map((head) => ({ ...head, valves: [] })) };
    expect(valveMap(engine).description).toContain('their order along the head is assumed');
    expect(valveMap(v8).description).not.toContain('assumed');
  });
  it('gives each valve a touch of 44 px on a phone', () => {
    for (const wish of Object.values(INVENTED_ENGINES)) {
      const map = valveMap(inventedEngine(wish));
      const px = map.bounds.width / 360;
      expect(Math.min(...map.touches.map((touch) => (2 * touch.reach) / px))).toBeGreaterThanOrEqual(43.9);
    }
  });
});

describe('register tray', () => {
  it('names part, place and state of each pocket', () => {
    const tray = registerTray(v8, 'pushrod', { '3-exhaust-1': 'done', '4-intake-1': 'wrong' });
    const name = (part: string) => tray.touches.find((touch) => touch.part === part)?.name;
    expect(name('3-exhaust-1')).toBe('pushrod, cylinder 3 exhaust, done');
    expect(name('4-intake-1')).toBe('pushrod, cylinder 4 intake, wrong');
    expect(tray.description).toContain('1 of 16 done.');
  });
  it('lies as the valve map lies', () => {
    expect(registerTray(v8, 'rocker').touches.map((touch) => touch.centre)).toEqual(
      valveMap(v8).touches.map((touch) => touch.centre),
    );
  });
});
