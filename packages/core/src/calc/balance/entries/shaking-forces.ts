import type { Angle, Force, Torque } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { exactPeaks, type Peak } from '../exact-shaking.js';
import { type Ellipse, ellipseOf, shakingOf } from '../shaking.js';
import { angleOut, coupleOut, forceOut, place } from './inputs.js';
import { inlineFour, layout, layoutOf, seenFromFront } from './layout.js';

const at = (symbol: string, what: string) =>
  ({ ...angleOut(symbol, `crank angle at which the ${what} is first largest`), optional: true }) as const;
const toward = (symbol: string, what: string) =>
  ({
    ...angleOut(symbol, `direction of the ${what} there, from upright, clockwise seen from the front`),
    optional: true,
  }) as const;

export const shakingForces = defineCalculation({
  id: 'balance.shaking-forces',
  subject: 'balance',
  title: 'Shaking forces and couples of any crank layout',
  summary:
    'Largest and least primary and secondary force and couple over a turn with their phase, and the exact totals.',
  inputs: {
    ...layout,
    pinOffset: {
      ...place(
        'e',
        'piston pin to cylinder axis, positive toward the side the crankpin moves to; for the exact totals',
      ),
      default: 0,
    },
  },
  outputs: {
    cylinderForce: forceOut('m·r·ω²', 'primary force of one cylinder (the largest)'),
    primaryForce: forceOut('F1', 'primary force, largest'),
    primaryForceLeast: forceOut('F1min', 'primary force, least over the turn'),
    primaryForceAt: at('θ1', 'primary force'),
    primaryForceDirection: toward('α1', 'primary force'),
    secondaryForce: forceOut('F2', 'secondary force, largest'),
    secondaryForceLeast: forceOut('F2min', 'secondary force, least over the turn'),
    secondaryForceAt: at('θ2', 'secondary force'),
    secondaryForceDirection: toward('α2', 'secondary force'),
    primaryCouple: coupleOut('C1', 'primary couple, largest'),
    primaryCoupleLeast: coupleOut('C1min', 'primary couple, least over the turn'),
    primaryCoupleAt: at('θc1', 'primary couple'),
    primaryCoupleDirection: toward('αc1', 'plane of the primary couple'),
    secondaryCouple: coupleOut('C2', 'secondary couple, largest'),
    secondaryCoupleLeast: coupleOut('C2min', 'secondary couple, least over the turn'),
    secondaryCoupleAt: at('θc2', 'secondary couple'),
    secondaryCoupleDirection: toward('αc2', 'plane of the secondary couple'),
    exactForce: forceOut('F', 'whole force from the exact slider-crank, largest'),
    exactForceAt: at('θF', 'whole force'),
    exactForceDirection: toward('αF', 'whole force'),
    exactCouple: coupleOut('C', 'whole couple from the exact slider-crank, largest'),
    exactCoupleAt: at('θC', 'whole couple'),
    exactCoupleDirection: toward('αC', 'plane of the whole couple'),
  },
  formula: 'F1 = Σ m·r·ω²·cos φ, F2 = Σ m·r·ω²·(r/l)·cos 2φ along each bank, φ = τ + θ − β; couples with arm z0 − z',
  assumptions: [
    'Rigid parts, constant crank speed, rods as two masses. Crank angle 0: the crank’s reference points upright.',
    'A force is counted toward the cylinder heads. A couple has the direction of its forces on the side of smaller z.',
    'First and second order are two terms of a series; the exact totals hold all orders and the pin offset.',
  ],
  sources: ['khurmi-balance', 'derived-here'],
  example: {
    inputs: inlineFour,
    outputs: { primaryForce: '0 N', secondaryForce: '12777 N', primaryCouple: '0 N·m' },
    from: 'textbook result 4·m·r·ω²·r/l (reference row MO-39)',
  },
  compute: (v) => {
    const found = layoutOf(v);
    if (!found.ok) return found;
    const { throws, sizes, about, scales } = found.value;
    const shaking = shakingOf(throws, sizes, about);
    const exact = exactPeaks(throws, { ...sizes, pinOffset: v.pinOffset }, about);
    if (!exact.ok) {
      return conflict(['stroke', 'rodLength', 'pinOffset'], 'the crank could not turn', {
        input: 'rodLength',
        above: exact.fault.needed,
      });
    }
    const angle = (one: number | undefined) => one as Angle | undefined;
    const toFront = (one: number | undefined) => (one === undefined ? undefined : seenFromFront(v, one));
    const [f1, f2] = [ellipseOf(shaking.primaryForce, scales.force), ellipseOf(shaking.secondaryForce, scales.force)];
    const [c1, c2] = [
      ellipseOf(shaking.primaryCouple, scales.couple),
      ellipseOf(shaking.secondaryCouple, scales.couple),
    ];
    const force = asEllipse(exact.value.force, scales.force);
    const couple = asEllipse(exact.value.couple, scales.couple);
    const single = Math.max(...throws.map((one) => one.reciprocating)) * sizes.crankRadius * sizes.crankSpeed ** 2;
    return answer({
      cylinderForce: single as Force,
      primaryForce: f1.most as Force,
      primaryForceLeast: f1.least as Force,
      primaryForceAt: angle(f1.crankAngle),
      primaryForceDirection: toFront(f1.direction),
      secondaryForce: f2.most as Force,
      secondaryForceLeast: f2.least as Force,
      secondaryForceAt: angle(f2.crankAngle),
      secondaryForceDirection: toFront(f2.direction),
      primaryCouple: c1.most as Torque,
      primaryCoupleLeast: c1.least as Torque,
      primaryCoupleAt: angle(c1.crankAngle),
      primaryCoupleDirection: toFront(c1.direction),
      secondaryCouple: c2.most as Torque,
      secondaryCoupleLeast: c2.least as Torque,
      secondaryCoupleAt: angle(c2.crankAngle),
      secondaryCoupleDirection: toFront(c2.direction),
      exactForce: force.most as Force,
      exactForceAt: angle(force.crankAngle),
      exactForceDirection: toFront(force.direction),
      exactCouple: couple.most as Torque,
      exactCoupleAt: angle(couple.crankAngle),
      exactCoupleDirection: toFront(couple.direction),
    });
  },
});

/** What is lost in the rounding of its parts counts as nothing and has no phase. */
const asEllipse = ({ most, crankAngle, direction }: Peak, scale: number): Omit<Ellipse, 'least'> =>
  most > 1e-12 * scale ? { most, crankAngle, direction } : { most: 0, crankAngle: undefined, direction: undefined };
