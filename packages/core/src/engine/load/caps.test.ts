/** Stages that are gone through cap by cap, and the sheets that cannot be. */
import { describe, expect, it } from 'vitest';
import { engineOf, faultsOf, JOINT, read } from './try-sheets.suite.js';

const mains = (stages: string, more = '') =>
  JOINT.replace('  - id: head\n', `  - id: mains\n${more}`).replace(/stages:[\s\S]*$/, `stages:\n${stages}`);
const CAPS = '    caps: { 1: "1, 2", 2: "3, 4" }\n';
const line = (text: string) =>
  engineOf(text).joints[0]!.stages.map(
    ({ number, cap, holes, act }) => `${number} ${cap ?? 'all'} ${holes} ${act.kind} ${act.text}`,
  );

// Turning the crank after each cap: trade-map O19 (common practice).
describe('a joint with bearing caps', () => {
  const stages =
    '      - { torque: 20 N·m }\n      - { each: cap, torque: 60 N·m }\n      - { each: cap, feel: turn it }\n';

  it('does all the entries of one cap before the next cap begins', () => {
    expect(line(mains(stages, CAPS))).toEqual([
      '1 all all torque 20 N·m',
      '2 cap 1 1,2 torque 60 N·m',
      '3 cap 1 1,2 feel turn it',
      '4 cap 2 3,4 torque 60 N·m',
      '5 cap 2 3,4 feel turn it',
    ]);
  });
  it('comes to the caps in the printed order of their bolts', () => {
    const from = mains(stages, CAPS).replace('order: 1-4', 'order: 4, 3, 2, 1');
    expect(line(from).filter((one) => one.includes('feel'))).toEqual([
      '3 cap 2 3,4 feel turn it',
      '5 cap 1 1,2 feel turn it',
    ]);
  });
  it('goes on with the whole joint after the caps', () => {
    expect(line(mains(`${stages}      - { verify: 60 N·m }\n`, CAPS)).at(-1)).toBe('6 all all verify 60 N·m');
  });
  it.each([
    ['caps that nobody named', mains(stages), 'each: cap needs "caps" of the joint'],
    ['a hole that is not there', mains(stages, '    caps: { 1: "1, 9" }\n'), 'hole 9 is under a cap'],
    ['a hole under two caps', mains(stages, '    caps: { 1: "1, 2", 2: "2, 3" }\n'), 'hole 2 is under two caps'],
    [
      'holes beside the cap',
      mains('      - { each: cap, holes: 1-2, torque: 60 N·m }\n', CAPS),
      'each: cap takes the holes of the cap',
    ],
  ])('is refused with %s, in one line', (_, text, what) => {
    expect(
      faultsOf(text)
        .map(({ message }) => message)
        .filter((one) => one.includes(what)),
    ).toHaveLength(1);
  });
});

describe('the mains of the invented engines', () => {
  it.each(['quernside-51-v8', 'pellgarth-t4-twin-cam', 'tollbarrow-6w-diesel-six'])(
    '%s: the thrust is seated while the bolts are only hand tight, and the crank is turned after each cap',
    (sheet) => {
      const engine = engineOf(read(`sheets/${sheet}.yaml`));
      const { stages, holes } = engine.joints.find(({ id }) => id === 'mains')!;
      const at = (test: (text: string, kind: string) => boolean) =>
        stages.findIndex(({ act }) => test(act.text, act.kind));
      const seated = at((text) => /crank to the rear/.test(text));
      expect(at((text) => /by hand until their heads touch/.test(text))).toBeLessThan(seated);
      expect(seated).toBeGreaterThan(0);
      expect(seated).toBeLessThan(at((_, kind) => kind === 'torque'));
      expect(stages.filter(({ act }) => act.kind === 'feel').map(({ cap }) => cap)).toHaveLength(holes.length / 2);
    },
  );
  it('of the V8 begin in the middle: cap 3, where the thrust is taken', () => {
    const { stages } = engineOf(read('sheets/quernside-51-v8.yaml')).joints.find(({ id }) => id === 'mains')!;
    expect([...new Set(stages.flatMap(({ cap }) => cap ?? []))]).toEqual(['cap 3', 'cap 2', 'cap 4', 'cap 1', 'cap 5']);
  });
});
