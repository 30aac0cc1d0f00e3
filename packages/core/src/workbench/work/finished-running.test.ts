import { describe, expect, it } from 'vitest';
import { valvesOf } from '../../engine/index.js';
import { engineOf, SHEETS } from '../bench.suite.js';
import type { Proposal } from '../propose.js';
import { proposeCompression, proposeLeakage, proposeStart } from '../running/index.js';
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
  it('a start with pressure in time finishes both acts; without pressure the second is bad; unread it stays open', () => {
    const start = (data: Partial<Parameters<typeof proposeStart>[1]>) => {
      const person = new Builder(v8);
      take(person, proposeStart(person.bench, { crankedSeconds: 4, outcome: 'runs', ...data }));
      return person;
    };
    expect(held(start({ pressureAfterSeconds: 3, pressure: '3 bar' }), 'pressure-seen')).toMatchObject({
      words: '3 bar after 3 s',
      result: 'good',
    });
    expect(held(start({ pressure: '0 bar', outcome: 'stopped' }), 'pressure-seen')).toMatchObject({ result: 'bad' });
    expect(held(start({}), 'started')).toMatchObject({ result: 'good' });
    expect(held(start({}), 'pressure-seen')).toBeUndefined();
    expect(held(start({ outcome: 'no-start' }), 'started')).toBeUndefined();
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
    expect(held(person, 'run-in-step@line-2')).toMatchObject({ words: 'run for 20 min', result: 'good' });
  });
  it('compression dry and leakage are the base of their cylinder', () => {
    const person = new Builder(v8);
    take(person, proposeCompression(person.bench, { cylinder: 3, text: '10.4 bar', wet: false }));
    take(person, proposeLeakage(person.bench, { cylinder: 3, supply: '6 bar', held: '5.5 bar' }));
    expect(held(person, 'compression-read@3')).toMatchObject({ words: '10.4 bar' });
    expect(held(person, 'leakage-read@3')).toMatchObject({ words: '5.5 bar held of 6 bar' });
    expect(held(person, 'compression-read@4')).toBeUndefined();
  });
});
