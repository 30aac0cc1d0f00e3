/** An invented engine for the tests of plans and of the record; not part of the built package. */
import type { Engine, Head, Joint, ValveGear } from '../engine/model.js';
import { mm } from '../quantity/index.js';
import { bolt, hole, invented, jointOf, torque } from './bench.suite.js';

const opening = (id: string, kind: 'water' | 'oil', intent: 'open' | 'metered' | 'closed') => ({
  id,
  kind,
  at: { x: mm(10), y: mm(10) },
  diameter: mm(8),
  intent,
});

export const head: Head = {
  id: 'top',
  name: 'cylinder head',
  bank: 'row',
  cylinders: [1, 2],
  length: mm(200),
  width: mm(150),
  cylinderCentres: {},
  valves: [],
  gasket: {
    wayUp: 'TOP to the head',
    openings: [opening('w1', 'water', 'open'), opening('w2', 'water', 'closed'), opening('o1', 'oil', 'metered')],
    dressing: 'dry',
    from: invented,
  },
};

export const pushrodGear: ValveGear = {
  kind: 'pushrod',
  follower: 'flat',
  adjustment: 'mechanical',
  intakeValves: 1,
  exhaustValves: 1,
  adjuster: { place: 'valve-end-screw' },
};

/** Two bolts by torque value, then two more in water holes. */
export const headJoint: Joint = jointOf({
  head: 'top',
  fasteners: [bolt(), bolt({ id: 'short', length: { text: '60 mm', value: mm(60), from: invented } })],
  holes: [hole('1'), hole('2'), hole('3', { fastener: 'short', opensInto: 'water', onThread: 'sealer' })],
  order: ['2', '1', '3'],
  stages: [torque(30), torque(60)],
});

export function engineOf(over: Partial<Engine> = {}): Engine {
  return {
    format: 1,
    name: 'two-cylinder test engine',
    invented: true,
    description: '',
    sources: {},
    layout: {
      form: 'inline',
      banks: [],
      cylinders: [1, 2].map((number) => ({ number, bank: 'row', place: number })),
      rotation: 'clockwise',
      firingOrder: [1, 2],
    },
    crankTrain: {},
    valveGear: pushrodGear,
    heads: [head],
    joints: [headJoint],
    limits: [],
    fluids: [],
    runIn: [],
    gaps: [],
    cautions: [],
    ...over,
  };
}
