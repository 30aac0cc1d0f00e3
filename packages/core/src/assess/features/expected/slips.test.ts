import { describe, expect, it } from 'vitest';
import { readingGate } from '../../gates/index.js';
import { sheet } from '../../limits/limit.suite.js';
import type { Measured } from '../../model.js';
import { inspectionPlan } from '../index.js';

const UNIT: Readonly<Record<Measured, readonly [string, number]>> = {
  length: ['mm', 1e-3],
  volume: ['cm3', 1e-6],
  mass: ['g', 1e-3],
  force: ['N', 1],
  angle: ['deg', Math.PI / 180],
  torque: ['N·m', 1],
};

/** Every place of the invented V8 whose usual sizes do not begin at nothing, with the gate that its figures go through. */
const gated = inspectionPlan(sheet('quernside')).features.flatMap(({ kind, places }) =>
  places
    .filter(({ expected }) => (expected?.usual.low ?? 0) > 0)
    .map((place) => ({
      name: `${kind.id} of ${place.name}`,
      nominal: place.expected?.nominal ?? 0,
      level: (value: number) => {
        const [unit, size] = UNIT[kind.measured];
        const text = `${(value / size).toFixed(4)} ${unit}`;
        const { one: what, measured, instrument, resolution: step } = kind;
        const expected = place.expected && { expected: place.expected };
        return readingGate({ text, what, measured, kind: instrument, step, ...expected, sisters: [] }).level;
      },
    })),
);

describe('figures keyed for the invented V8 go through the gate', () => {
  it.each([
    ['ten times too large', 10],
    ['ten times too small', 0.1],
    ['inches taken for millimetres', 1 / 25.4],
    ['millimetres taken for inches', 25.4],
  ])('%s: asked about or refused at every place', (_words, slip) => {
    expect(gated.length).toBeGreaterThan(300);
    expect(gated.filter(({ level, nominal }) => level(nominal * slip) === 'fine').map(({ name }) => name)).toEqual([]);
  });

  it('right: passed without a question at every place', () => {
    expect(gated.filter(({ level, nominal }) => level(nominal) !== 'fine').map(({ name }) => name)).toEqual([]);
  });
});
