import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Engine,
  fastenerOfHole,
  headName,
  headOfCylinder,
  holeById,
  holeName,
  holesOfStage,
  jointById,
  jointsOfHead,
  layOut,
  sameValve,
  stageTightens,
  valveKey,
  valveName,
  valveOfKey,
  valvesOf,
} from './index.js';
import { loadSheet } from './load/index.js';

function engineOf(name: string): Engine {
  const loaded = loadSheet(readFileSync(new URL(`../../../../sheets/${name}.yaml`, import.meta.url), 'utf8'));
  if (!loaded.ok) throw new Error(loaded.fault.map((each) => each.message).join('\n'));
  return loaded.value;
}
const vee = engineOf('quernside-51-v8');
const four = engineOf('pellgarth-t4-twin-cam');

describe('valves of an engine', () => {
  it('are two a cylinder in the pushrod vee, sixteen in the twin-cam four, by cylinder and intake first', () => {
    expect(valvesOf(vee)).toHaveLength(16);
    expect(valvesOf(four).map(valveKey).slice(0, 5)).toEqual([
      '1-intake-1',
      '1-intake-2',
      '1-exhaust-1',
      '1-exhaust-2',
      '2-intake-1',
    ]);
    expect(valvesOf(four)).toHaveLength(16);
  });

  it('are all drawn on the heads, each once', () => {
    for (const engine of [vee, four]) {
      const drawn = engine.heads.flatMap((head) => head.valves.map(valveKey)).sort();
      expect(drawn).toEqual(valvesOf(engine).map(valveKey).sort());
    }
  });

  it('are unknown, not zero of something, where a sheet has neither valve gear nor heads', () => {
    const { valveGear: _, ...rest } = vee;
    expect(valvesOf({ ...rest, heads: [] })).toEqual([]);
    expect(valvesOf(rest)).toHaveLength(16);
  });

  it('have keys that are read back', () => {
    const valve = fc.record({
      cylinder: fc.integer({ min: 1, max: 24 }),
      kind: fc.constantFrom('intake' as const, 'exhaust' as const),
      index: fc.integer({ min: 1, max: 4 }),
    });
    fc.assert(
      fc.property(valve, (each) => {
        expect(valveOfKey(valveKey(each))).toEqual({ ok: true, value: each });
      }),
    );
    expect(valveOfKey('0-intake-1')).toEqual({ ok: false, fault: { code: 'not-a-valve-key', given: '0-intake-1' } });
    expect(sameValve({ cylinder: 1, kind: 'intake', index: 1 }, { cylinder: 1, kind: 'intake', index: 2 })).toBe(false);
  });

  it('are named by cylinder and kind, and by place where there are several', () => {
    expect(valveName(vee, { cylinder: 3, kind: 'intake', index: 1 })).toBe('cylinder 3 intake');
    expect(valveName(four, { cylinder: 3, kind: 'exhaust', index: 2 })).toBe('cylinder 3 exhaust 2');
  });
});

describe('heads and joints', () => {
  it('turn the second head end for end, so that the last cylinder of the first lies where the first of the second does', () => {
    const [left, right] = vee.heads;
    expect(right?.cylinderCentres['2']).toEqual({ x: 0.07, y: 0 });
    expect(left?.valves[0]).toMatchObject({ cylinder: 1, kind: 'exhaust', at: { x: 0.047, y: -0.004 } });
    expect(right?.valves[0]).toMatchObject({ cylinder: 2, kind: 'exhaust', at: { x: 0.047, y: -0.004 } });
    const holeOne = (joint: string) => holeById(jointById(vee, joint)!, '3')?.at?.x;
    expect(holeOne('head-left')).toBeCloseTo(0.12525, 9);
    expect(holeOne('head-right')).toBeCloseTo(0.4715 - 0.12525, 9);
  });

  it('find head, joint, hole and fastener, and say nothing of what is not there', () => {
    expect(headOfCylinder(vee, 4)?.id).toBe('right');
    expect(headOfCylinder(vee, 9)).toBeUndefined();
    expect(headName(vee, 'left')).toBe('left head');
    expect(headName(vee, 'third')).toBe('third');
    expect(jointsOfHead(vee, 'left').map((joint) => joint.id)).toEqual(['head-left']);
    const joint = jointById(vee, 'head-left')!;
    expect(holeName(joint, joint.holes[0]!)).toBe('head bolts, left head, hole 1');
    expect(fastenerOfHole(joint, '13')?.id).toBe('medium');
    expect(fastenerOfHole(joint, '99')).toBeUndefined();
    expect(jointById(vee, 'sump')).toBeUndefined();
  });

  it('lay out five long, five medium and seven short bolts for one head of the invented vee', () => {
    const rows = layOut(jointById(vee, 'head-left')!);
    expect(rows.map((row) => [row.fastener.id, row.count])).toEqual([
      ['long', 5],
      ['medium', 5],
      ['short', 7],
    ]);
    expect(rows[1]?.holes).toEqual(['2', '3', '6', '13', '14']);
  });

  it('resolve the holes of a stage, and know a stage that tightens from one that slackens', () => {
    const joint = jointById(four, 'head')!;
    expect(holesOfStage(joint, joint.stages[0]!)).toHaveLength(10);
    const pulley = jointById(four, 'pulley')!;
    expect(holesOfStage(pulley, pulley.stages[1]!)).toEqual(['1']);
    expect(pulley.stages.map(stageTightens)).toEqual([true, false, true, true]);
  });

  it('make one bore and one bolt opening in the gasket for each cylinder and hole', () => {
    for (const head of vee.heads) {
      const kinds = head.gasket.openings.map((opening) => opening.kind);
      expect(kinds.filter((kind) => kind === 'bore')).toHaveLength(4);
      expect(kinds.filter((kind) => kind === 'bolt')).toHaveLength(17);
      expect(new Set(head.gasket.openings.map((opening) => opening.id)).size).toBe(kinds.length);
    }
  });

  it('leave metal between the openings of every invented gasket', () => {
    for (const engine of [vee, four, engineOf('tollbarrow-6w-diesel-six')]) {
      for (const { gasket } of engine.heads) {
        gasket.openings.forEach((a, index) => {
          for (const b of gasket.openings.slice(index + 1)) {
            const between = Math.hypot(a.at.x - b.at.x, a.at.y - b.at.y) - (a.diameter + b.diameter) / 2;
            expect(between, `${engine.name}: ${a.id} and ${b.id}`).toBeGreaterThan(0.0005);
          }
        });
      }
    }
  });
});
