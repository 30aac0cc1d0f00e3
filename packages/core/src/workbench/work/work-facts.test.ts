import { describe, expect, it } from 'vitest';
import { valvesOf } from '../../engine/index.js';
import { tighteningActs, walk } from '../../plan/index.js';
import { engineOf, SHEETS } from '../bench.suite.js';
import { proposeMeasured } from '../measuring-commands.js';
import { slotsOf } from '../slot-names.js';
import { Builder } from './work.suite.js';
import { workAt } from './work-facts.js';

const single = engineOf(SHEETS.single);
const builder = (operation?: string) => {
  const made = new Builder(single);
  if (operation !== undefined) made.begin(operation);
  return made;
};
function read(person: Builder, slot: string, text: string): void {
  const proposal = proposeMeasured(person.bench, { slot, text, source: 'keyed', decimalMark: '.' });
  if (!proposal.ok) throw new Error(proposal.fault);
  for (const entry of proposal.value) person.append(entry);
}
const boreSlots = [...slotsOf(single).keys()].filter((slot) => slot.startsWith('cylinder-bore/1/'));

describe('a worksheet', () => {
  it('finishes its act with the reading that leaves nothing open, and not before', () => {
    const person = builder('measuring');
    const act = workAt(person.bench).plan.acts.find(({ place }) => place.id === 'cylinder-bore/1');
    expect(boreSlots.length).toBeGreaterThan(3);
    for (const slot of boreSlots.slice(0, -1)) read(person, slot, '80.011 mm');
    expect(person.state(act!.id)).not.toBe('done');
    read(person, boreSlots.at(-1)!, '80.012 mm');
    expect(person.state(act!.id)).toBe('done');
  });
  it('is open again when its part came back from work, and when one of its readings is struck out', () => {
    const person = builder('measuring');
    const act = workAt(person.bench).plan.acts.find(({ place }) => place.id === 'cylinder-bore/1')!.id;
    for (const slot of boreSlots) read(person, slot, '80.011 mm');
    const last = person.bench.state.entries.at(-1)!.entry.id;
    person.write({ kind: 'struck-out', data: { entry: last, reason: 'wrong anvil' } });
    expect(person.state(act)).not.toBe('done');
    read(person, boreSlots.at(-1)!, '80.012 mm');
    expect(person.state(act)).toBe('done');
    person.write({ kind: 'work-returned', data: { feature: 'cylinder-bore', places: ['1'], why: 'honed' } });
    expect(workAt(person.bench).standing.stands.get(act)?.again?.why).toBe('honed');
  });
});

describe('a joint', () => {
  const joint = single.joints.find(({ id }) => id === 'flywheel')!;
  const tighten = (person: Builder) => {
    const hole = joint.holes[0]!.id;
    person.write({
      kind: 'fastener-placed',
      data: {
        joint: joint.id,
        hole,
        instance: 1,
        fastener: 'nut',
        condition: 'used',
        onThread: 'dry',
        underHead: 'dry',
      },
    });
    for (const act of tighteningActs(joint).acts)
      person.write({
        kind: 'act-done',
        data: {
          joint: joint.id,
          stage: act.stage,
          hole: act.hole,
          instance: 1,
          round: 1,
          target: '120 N·m',
          seen: 'reached',
        },
      });
  };
  it('finishes its act when its walk is finished, and opens it when the joint is opened', () => {
    const person = builder('front-and-rear');
    const act = workAt(person.bench).plan.acts.find(
      ({ subject }) => subject?.kind === 'joint' && subject.joint === joint.id,
    )!.id;
    tighten(person);
    expect(walk(joint, person.bench.facts).finished).toBe(true);
    expect(person.state(act)).toBe('done');
    person.write({ kind: 'joint-opened', data: { joint: joint.id, reason: 'wrong washer' } });
    expect(workAt(person.bench).standing.stands.get(act)?.again?.why).toContain('wrong washer');
  });
});

describe('valves and parts', () => {
  const valve = valvesOf(single)[0]!;
  it('are done where they are recorded: a valve set, read again, its gear tagged', () => {
    const person = builder('valve-setting');
    person.write({
      kind: 'valve-set',
      data: {
        valve,
        method: 'stop',
        adjustment: 'lash',
        lash: { text: '0.17 mm', value: 0.00017, unit: 'm' },
        condition: 'cold',
      },
    });
    const acts = workAt(person.bench).plan.acts.filter(({ place }) => place.valve !== undefined);
    const idOf = (rule: string) => acts.find((act) => act.rule === rule)!.id;
    expect(person.state(idOf('valve-set'))).toBe('done');
    person.write({ kind: 'valve-rechecked', data: { valve, result: 'bad', seen: 'tight' } });
    expect(workAt(person.bench).standing.stands.get(idOf('valve-read-again'))?.foundBad).toBe(true);
    for (const part of ['lifter', 'pushrod', 'rocker'] as const) {
      expect(person.state(idOf('valve-gear-tagged'))).not.toBe('done');
      person.write({ kind: 'part-tagged', data: { part, valve, condition: 'good' } });
    }
    expect(person.state(idOf('valve-gear-tagged'))).toBe('done');
  });
});

describe('an answer that is struck out', () => {
  it('opens its act and what was built on it', () => {
    const person = builder('crankshaft');
    person.felt('saddles-wiped');
    const entry = person.bench.state.entries.at(-1)!.entry.id;
    for (const act of workAt(person.bench).plan.acts.filter(({ rule }) => rule === 'main-shell-in'))
      person.felt(act.id);
    const shell = workAt(person.bench).plan.acts.find(({ rule }) => rule === 'main-shell-in')!.id;
    expect(person.state(shell)).toBe('done');
    person.write({ kind: 'struck-out', data: { entry, reason: 'wrong engine' } });
    expect(person.state('saddles-wiped')).toBe('ready');
    expect(person.state(shell)).toBe('waiting');
  });
});
