import type { Angle, Force, Torque } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { angleOf, type Complex, length, plus } from '../complex.js';
import { type Shake, shakeAt } from '../exact-shaking.js';
import { harmonicAt, type Shaking, shakingOf } from '../shaking.js';
import { angleOut, coupleOut, direction, forceOut, place } from './inputs.js';
import { layout, layoutOf, seenFromFront } from './layout.js';

export const shakingAt = defineCalculation({
  id: 'balance.shaking-at',
  subject: 'balance',
  title: 'Shaking force and couple at given crank angles',
  summary: 'Size and direction of force and couple on the engine at each crank angle, by two terms or exactly.',
  inputs: {
    ...layout,
    crankAngles: {
      ...direction('θ', 'crank angles: how far the crank’s reference has turned from upright'),
      list: true,
    },
    method: {
      kind: 'choice',
      symbol: 'method',
      meaning: 'exact slider-crank, first and second order together, or one order alone',
      choices: ['exact', 'two-term', 'primary', 'secondary'],
      default: 'exact',
    },
    pinOffset: {
      ...place(
        'e',
        'piston pin to cylinder axis, positive toward the side the crankpin moves to; counts in the exact method',
      ),
      default: 0,
    },
  },
  outputs: {
    forces: { ...forceOut('F', 'size of the force at each angle'), list: true },
    forceDirections: { ...angleOut('α', 'its direction from upright, clockwise seen from the front'), list: true },
    up: { ...forceOut('Fy', 'part upward'), list: true },
    sideways: { ...forceOut('Fx', 'part to the right seen from the front'), list: true },
    couples: { ...coupleOut('C', 'size of the couple at each angle'), list: true },
    coupleDirections: { ...angleOut('αc', 'direction of its forces on the side of smaller z'), list: true },
  },
  formula: 'F = Σ m·a(φ)·e^(iβ), φ = τ + θ − β; C = Σ (z0 − z)·F',
  assumptions: ['As in balance.shaking-forces. Where a vector is nothing its direction says nothing.'],
  sources: ['khurmi-balance', 'derived-here'],
  example: {
    inputs: {
      throwAngles: ['0 deg'],
      bankAngles: ['0 deg'],
      positions: ['0 mm'],
      reciprocating: ['0.62 kg'],
      stroke: '87 mm',
      rodLength: '145 mm',
      crankSpeed: '6000 rpm',
      crankAngles: ['0 deg', '180 deg'],
    },
    outputs: { up: ['13842 N', '-7453 N'] },
    from: 'closed form m·r·ω²·(1 ± r/l), exact at the dead centres: 10 647.3 N · 1.3 and 0.7',
  },
  compute: (v) => {
    const found = layoutOf(v);
    if (!found.ok) return found;
    const { throws, sizes, about } = found.value;
    const shaking = shakingOf(throws, sizes, about);
    const shakes: Shake[] = [];
    for (const angle of v.crankAngles) {
      const exact = shakeAt(throws, { ...sizes, pinOffset: v.pinOffset }, about, angle);
      if (!exact.ok) {
        return conflict(['stroke', 'rodLength', 'pinOffset'], 'the crank could not turn', {
          input: 'rodLength',
          above: exact.fault.needed,
        });
      }
      shakes.push(v.method === 'exact' ? exact.value : byOrders(shaking, angle, v.method));
    }
    const sense = v.rotation === 'clockwise' ? 1 : -1;
    const toFront = (one: Complex): Angle => seenFromFront(v, angleOf(one));
    return answer({
      forces: shakes.map(({ force }) => length(force) as Force),
      forceDirections: shakes.map(({ force }) => toFront(force)),
      up: shakes.map(({ force }) => force.re as Force),
      sideways: shakes.map(({ force }) => (sense * force.im) as Force),
      couples: shakes.map(({ couple }) => length(couple) as Torque),
      coupleDirections: shakes.map(({ couple }) => toFront(couple)),
    });
  },
});

function byOrders(shaking: Shaking, angle: number, method: 'two-term' | 'primary' | 'secondary'): Shake {
  const first = { force: harmonicAt(shaking.primaryForce, angle), couple: harmonicAt(shaking.primaryCouple, angle) };
  if (method === 'primary') return first;
  const second = {
    force: harmonicAt(shaking.secondaryForce, angle),
    couple: harmonicAt(shaking.secondaryCouple, angle),
  };
  if (method === 'secondary') return second;
  return { force: plus(first.force, second.force), couple: plus(first.couple, second.couple) };
}
