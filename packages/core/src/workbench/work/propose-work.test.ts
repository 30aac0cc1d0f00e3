import { describe, expect, it } from 'vitest';
import { engineOf, SHEETS } from '../bench.suite.js';
import { recordView } from '../record-view.js';
import { Builder } from './work.suite.js';
import { workAt } from './work-facts.js';

const single = engineOf(SHEETS.single);
const at = (operation: string) => {
  const made = new Builder(single);
  made.begin(operation);
  return made;
};

describe('a wish about the work', () => {
  it('is written when the plan allows it', () => {
    const person = at('crankshaft');
    person.felt('saddles-wiped', 'dry, holes open');
    expect(person.state('saddles-wiped')).toBe('done');
  });
  it('names in one line what an act waits for', () => {
    const person = at('crankshaft');
    const line = person.refusal({
      kind: 'done',
      act: 'crank-spins',
      answer: { kind: 'felt-or-seen', words: 'free', result: 'good' },
      method: 'by hand',
    });
    expect(line).toMatch(/^“Turn the crank by hand” waits for “/);
    expect(line).not.toContain('\n');
  });
  it('is refused where another screen records it: one way only', () => {
    const person = at('valve-setting');
    const act = workAt(person.bench).plan.acts.find(({ rule }) => rule === 'valve-set')!.id;
    const answer = { kind: 'value', text: '0.17 mm', result: 'good' } as const;
    expect(person.refusal({ kind: 'done', act, answer, method: 'feeler' })).toContain('setting the valves');
  });
  it('of several is written whole or not at all', () => {
    const person = at('heads-on');
    const before = person.bench.state.entries.length;
    const [first] = workAt(person.bench).standing.ready;
    const line = person.refusal({ kind: 'skip', acts: [first!.act.id, 'nowhere'], reason: 'not needed' });
    expect(line).toBe("This engine's work has no act “nowhere”.");
    expect(person.bench.state.entries).toHaveLength(before);
  });
  it('to put an act in numbers it, and it is offered where it was put', () => {
    const person = at('crankshaft');
    const wish = {
      kind: 'add',
      after: 'saddles-wiped',
      does: 'Blow through every oil way once more.',
      ask: 'Air felt at each',
      answer: 'felt-or-seen',
      minutes: 5,
      critical: true,
      why: 'the block stood open',
    } as const;
    person.wish(wish);
    person.wish(wish);
    person.felt('saddles-wiped');
    const ready = workAt(person.bench).standing.ready.map(({ act }) => act.id);
    expect(ready).toEqual(expect.arrayContaining(['own-1', 'own-2']));
  });
  it('to return names what is not as recorded: it is open again, with what was found', () => {
    const person = at('crankshaft');
    person.felt('saddles-wiped');
    person.wish({
      kind: 'resume',
      arrival: 'paused',
      verified: [],
      notAsRecorded: [{ act: 'saddles-wiped', found: 'lint in saddle 2' }],
    });
    expect(workAt(person.bench).standing.stands.get('saddles-wiped')?.again?.why).toContain('lint in saddle 2');
  });
});

describe('a second look', () => {
  const critical = () => {
    const person = at('crankshaft');
    person.wish({ kind: 'make-critical', act: 'saddles-wiped', why: 'grit was found once' });
    person.felt('saddles-wiped');
    return person;
  };
  const look = { kind: 'look', act: 'saddles-wiped', method: 'by lamp', result: 'good', seen: 'dry' } as const;
  it('alone is refused within ten minutes and by the same method, and kept as a look alone', () => {
    const person = critical();
    person.wait(4);
    expect(person.refusal({ ...look, looker: 'Ada' })).toContain('4 have passed');
    person.wait(10);
    expect(person.refusal({ ...look, looker: 'Ada', method: 'By Hand' })).toContain('another method');
    person.wish({ ...look, looker: 'Ada' });
    expect(workAt(person.bench).standing.stands.get('saddles-wiped')?.look).toBe('alone');
  });
  it('by another person counts at once, as independent', () => {
    const person = critical();
    person.wish({ ...look, looker: 'Ben' });
    expect(workAt(person.bench).standing.stands.get('saddles-wiped')?.look).toBe('independent');
  });
});

describe('the record', () => {
  it('tells each wish in words: what, where, and what was found', () => {
    const person = at('crankshaft');
    person.felt('saddles-wiped', 'dry, holes open');
    person.wish({ kind: 'aid-out', aid: 'checking spring', count: 2, where: 'cylinder 1' });
    person.wish({ kind: 'leave', halfDone: 'shell 2', loose: '', missing: '', uncovered: '', doubt: '' });
    const rows = recordView(person.bench).sections.find(({ title }) => title.startsWith('The work'))!.rows;
    expect(rows.map(({ what, value }) => `${what}: ${value}`)).toEqual([
      expect.stringContaining('Book begun at:'),
      'Wipe saddles, caps and shell backs dry: dry, holes open, by hand',
      'Aid put in: checking spring: 2, cylinder 1',
      'Work left: half done: shell 2',
    ]);
  });
});
