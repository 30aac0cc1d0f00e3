import { describe, expect, it } from 'vitest';
import { valvesOf } from '../../engine/index.js';
import { engineOf, SHEETS } from '../bench.suite.js';
import type { Proposal } from '../propose.js';
import { cylinderTestsView, proposeCompression, proposeGauge, proposeLeakage, proposeStart } from '../running/index.js';
import { Builder } from './work.suite.js';
import { workAt } from './work-facts.js';

const v8 = engineOf(SHEETS.v8);
const take = (person: Builder, proposal: Proposal) => {
  if (!proposal.ok) throw new Error(proposal.fault);
  for (const entry of proposal.value) person.append(entry);
};
const held = (person: Builder, act: string) => workAt(person.bench).standing.stands.get(act)?.held.done?.data.answer;

describe('what was read while the engine ran need not be told again', () => {
  it('oil seen at a rocker finishes its act', () => {
    const person = new Builder(v8);
    const [valve] = valvesOf(v8);
    person.write({ kind: 'oil-seen', data: { valve: valve! } });
    const { cylinder, kind, index } = valve!;
    expect(person.state(`oil-at-valve@${cylinder}-${kind}-${index}`)).toBe('done');
  });
  it('a start with oil pressure finishes both acts; late pressure is bad, and where nobody read it that act stays open', () => {
    const start = (data: Partial<Parameters<typeof proposeStart>[1]>) => {
      const person = new Builder(v8);
      take(person, proposeStart(person.bench, { crankedSeconds: 4, outcome: 'runs', ...data }));
      return person;
    };
    const good = start({ pressureAfterSeconds: 3, pressure: '3 bar' });
    expect(held(good, 'started')).toMatchObject({ words: '4 s on the starter', result: 'good' });
    expect(held(good, 'pressure-seen')).toMatchObject({ words: expect.stringContaining('3 bar'), result: 'good' });
    expect(held(start({ pressureAfterSeconds: 30, pressure: '3 bar' }), 'pressure-seen')?.result).toBe('bad');
    expect(held(start({}), 'pressure-seen')).toBeUndefined();
    expect(held(start({ outcome: 'no-start' }), 'started')).toBeUndefined();
    expect(held(start({ outcome: 'stopped', pressure: '0 bar' }), 'started')).toBeUndefined();
  });
  it('a gauge read while it runs finishes the act too, and is bad below what the sheet allows at that speed', () => {
    const person = new Builder(v8);
    take(person, proposeStart(person.bench, { crankedSeconds: 4, outcome: 'runs' }));
    for (const [what, text] of [
      ['speed', '2000 rpm'],
      ['oil-temperature', '90 degC'],
      ['oil-pressure', '1.0 bar'],
    ] as const)
      take(person, proposeGauge(person.bench, { what, text }));
    expect(held(person, 'pressure-seen')).toMatchObject({ words: '1.0 bar', result: 'bad' });
  });
  it('a line of the run-in is done once its time has run, not when it is broken off', () => {
    const person = new Builder(v8);
    person.write({ kind: 'run-in-begun', data: { step: 2 } });
    person.wait(7);
    person.write({ kind: 'run-in-stopped', data: { why: 'too hot' } });
    expect(held(person, 'run-in-step@line-2')).toBeUndefined();
    person.wait(30);
    person.write({ kind: 'run-in-begun', data: { step: 2 } });
    person.wait(13);
    person.write({ kind: 'run-in-stopped', data: { why: 'the step is over' } });
    expect(held(person, 'run-in-step@line-2')).toMatchObject({ words: '20 min run', result: 'good' });
  });
  it('compression and leakage are the base of the built engine: what was read of it as found is not', () => {
    const person = new Builder(v8);
    const read = () => {
      take(person, proposeCompression(person.bench, { cylinder: 3, text: '10.4 bar', wet: false }));
      take(person, proposeLeakage(person.bench, { cylinder: 3, supply: '6 bar', held: '5.5 bar' }));
    };
    const shown = () => cylinderTestsView(person.bench).compression.rows.find(({ cylinder }) => cylinder === 3)?.dry;
    read();
    expect(held(person, 'compression-read@3')).toBeUndefined();
    expect(shown()?.text).toBe('10.4 bar');
    take(person, proposeStart(person.bench, { crankedSeconds: 4, outcome: 'runs', pressure: '3 bar' }));
    expect(shown()).toBeUndefined();
    read();
    expect(shown()?.text).toBe('10.4 bar');
    expect(held(person, 'compression-read@3')).toMatchObject({ words: '10.4 bar' });
    expect(held(person, 'leakage-read@3')).toMatchObject({ words: '5.5 bar held of 6 bar' });
    expect(held(person, 'compression-read@4')).toBeUndefined();
  });
});
