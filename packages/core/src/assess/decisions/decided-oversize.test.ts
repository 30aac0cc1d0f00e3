import { describe, expect, it } from 'vitest';
import { inch } from '../../quantity/index.js';
import type { Choice } from '../model.js';
import { assessed, four } from './bench.suite.js';
import { decidedOversize } from './decided-oversize.js';

const engine = four(`crankTrain: { bore: 4.0000 in, stroke: 3.5 in }
limits:
  - { part: cylinder bore, what: diameter, whenNew: 4.0000 in, wear: "<= 4.0050 in" }
stock:
  pistons:
    - { id: a, name: piston, oversize: standard }
    - { id: b, name: piston, oversize: 0.0155 in }
    - { id: c, name: piston, oversize: 0.020 in }
`);
const chosen = (...alternatives: readonly string[]): readonly Choice[] =>
  alternatives.map((alternative) => ({
    decision: 'bore-oversize',
    scope: 'all',
    alternative,
    words: '',
    figures: [],
    orders: [],
    buys: [],
    reason: 'worn',
    entry: alternative,
    at: '2026-03-02T09:00:00+00:00',
    by: 'A',
  }));
const of = (bore: string | undefined, ...alternatives: readonly string[]) =>
  decidedOversize(assessed(engine, bore === undefined ? {} : { 'cylinder-bore': bore }, chosen(...alternatives)));

describe('the oversize that pistons must have', () => {
  it('is standard where nothing was measured or decided', () => {
    expect(of(undefined)).toEqual({ kind: 'one', oversize: 0, decided: false });
    expect(of('4.0020 in')).toEqual({ kind: 'one', oversize: 0, decided: false });
  });
  it('is that of bores which were bored before and stay as they are', () => {
    expect(of('4.0210 in')).toEqual({ kind: 'one', oversize: inch(0.02), decided: false });
    expect(of('4.0210 in', 'as-is')).toEqual({ kind: 'one', oversize: inch(0.02), decided: true });
  });
  it('is the one to which all bores are decided to be cut, the last decision counting', () => {
    expect(of('4.0020 in', 'bore-508')).toEqual({ kind: 'one', oversize: inch(0.02), decided: true });
    // 0.0155 in is 393.7 µm; the alternative says 394.
    expect(of('4.0020 in', 'bore-508', 'bore-394')).toEqual({ kind: 'one', oversize: inch(0.0155), decided: true });
  });
  it('is none where some bores are cut and the rest are not', () => {
    expect(of('4.0020 in', 'some-508')).toEqual({ kind: 'several' });
  });
});
