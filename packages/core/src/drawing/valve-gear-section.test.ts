import { describe, expect, it } from 'vitest';
import type { Engine, ValveGearKind, ValveId } from '../engine/index.js';
import type { Length } from '../quantity/index.js';
import { shapeBox } from './extent.js';
import type { Figure } from './figure.js';
import { degrees } from './figures.suite.js';
import { inventedEngine, MILD_CAM } from './test-engines.suite.js';
import { valveGearSection } from './valve-gear-section.js';

const KINDS: readonly ValveGearKind[] = ['pushrod', 'overhead-rocker', 'overhead-finger', 'overhead-bucket'];
const engineWith = (gear: ValveGearKind): Engine =>
  inventedEngine({ form: 'inline', cylinders: 4, firingOrder: [1, 3, 4, 2], gear });
const intake = (cylinder: number): ValveId => ({ cylinder, kind: 'intake', index: 1 });
const exhaust = (cylinder: number): ValveId => ({ cylinder, kind: 'exhaust', index: 1 });
const stateOf = (figure: Figure): string => {
  const found = figure.shapes.find((shape) => shape.kind === 'label' && shape.part === 'state');
  return found?.kind === 'label' ? found.text : '';
};
const bottomOf = (figure: Figure, part: string): number =>
  Math.max(...figure.shapes.filter((shape) => shape.part === part).map((shape) => shapeBox(shape).bottom));

describe('valve gear in section', () => {
  // Intake 18 BTDC to 54 ABDC is 342 to 594 degrees after firing TDC, full lift at 468: definition of the events.
  it.each([
    [0, 'on base circle'],
    [341, 'on base circle'],
    [343, 'opening'],
    [468, 'open'],
    [500, 'closing'],
    [593, 'closing'],
    [595, 'on base circle'],
  ])('at crank %i the intake of cylinder 1 is %s', (crank, word) => {
    for (const kind of KINDS) {
      expect(stateOf(valveGearSection(engineWith(kind), intake(1), degrees(crank), MILD_CAM)), kind).toBe(word);
    }
  });
  it('follows the firing order: cylinder 3 does 180 degrees later what cylinder 1 did', () => {
    const engine = engineWith('pushrod');
    for (const crank of [100, 130, 250, 350, 500]) {
      const one = valveGearSection(engine, exhaust(1), degrees(crank), MILD_CAM);
      const three = valveGearSection(engine, exhaust(3), degrees(crank + 180), MILD_CAM);
      expect(stateOf(three)).toBe(stateOf(one));
    }
  });
  it('opens the valve downward by the lobe lift times the ratio', () => {
    const from = { standing: 'invented', text: '' } as const;
    for (const kind of KINDS) {
      const plain = engineWith(kind);
      const engine: Engine = {
        ...plain,
        cam: { basis: 'seat', lobeLift: { intake: { text: '6 mm', value: 0.006 as Length, from } }, from },
        valveGear: { ...plain.valveGear!, ratio: { text: '1.5', value: 1.5 as never, from } },
      };
      const at = (crank: number) => bottomOf(valveGearSection(engine, intake(1), degrees(crank), MILD_CAM), 'valve');
      expect(at(468) - at(0), kind).toBeCloseTo(kind === 'overhead-bucket' ? 6 : 9, 6);
      expect(at(360) - at(0), kind).toBeGreaterThan(0);
    }
  });
  it('does not state a lift in millimetres that the sheet does not give', () => {
    const { description } = valveGearSection(engineWith('pushrod'), intake(1), degrees(468), MILD_CAM);
    expect(description).toContain('off its seat');
    expect(description).not.toMatch(/\d mm/);
    expect(description).toContain('Lobe and lift are schematic');
  });
  it('marks the state as assumed where the cam events are not known', () => {
    const figure = valveGearSection(engineWith('overhead-finger'), intake(1), degrees(468));
    expect(stateOf(figure)).toBe('open (assumed)');
    expect(figure.description).toContain('The cam events are not stated');
  });
  it('draws the heel to the follower where the firing order is not known', () => {
    const engine = inventedEngine({ form: 'inline', cylinders: 4, firingOrder: [], gear: 'overhead-bucket' });
    const figure = valveGearSection(engine, intake(1), degrees(468), MILD_CAM);
    expect(stateOf(figure)).toBe('on base circle (assumed)');
    expect(figure.description).toContain('The firing order is not stated');
  });
  it('names the place where the gear is adjusted', () => {
    const words = KINDS.map((kind) => valveGearSection(engineWith(kind), intake(1), degrees(0), MILD_CAM).description);
    expect(words[0]).toContain('nut on the rocker stud');
    expect(words[1]).toContain('screw at the valve end');
    expect(words[2]).toContain('pivot of the finger');
    expect(words[3]).toContain('shim under the bucket');
  });
});
