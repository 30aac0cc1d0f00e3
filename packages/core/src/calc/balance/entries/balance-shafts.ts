import type { Angle, Force, Mass, Torque } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { angleOf, type Complex, length, times } from '../complex.js';
import { shakingOf } from '../shaking.js';
import { angleOut, coupleOut, forceOut, massOut, size } from './inputs.js';
import { inlineFour, layout, layoutOf, seenFromFront } from './layout.js';

const phase = (symbol: string, what: string) =>
  ({
    ...angleOut(
      symbol,
      `direction of the weight of the ${what} at crank angle 0, from upright, clockwise seen from the front`,
    ),
    optional: true,
  }) as const;

export const balanceShafts = defineCalculation({
  id: 'balance.balance-shafts',
  subject: 'balance',
  title: 'What balance shafts must carry',
  summary:
    'Parts of force and couple that turn with the crank and against it, and the shaft weights that undo the forces.',
  inputs: { ...layout, shaftRadius: size('rs', 'radius at which the weight of a balance shaft sits') },
  outputs: {
    primaryAhead: forceOut('F1+', 'primary force that turns with the crank: for the crank’s own counterweights'),
    primaryBack: forceOut('F1−', 'primary force that turns against the crank'),
    secondaryAhead: forceOut('F2+', 'secondary force that turns with the crank at twice its speed'),
    secondaryBack: forceOut('F2−', 'secondary force that turns against the crank at twice its speed'),
    primaryCoupleAhead: coupleOut('C1+', 'primary couple that turns with the crank: counterweights can carry it'),
    primaryCoupleAheadDirection: {
      ...angleOut(
        'αc1',
        'direction of its forces on the side of smaller z at crank angle 0, from upright, clockwise seen from the front',
      ),
      optional: true,
    },
    primaryCoupleBack: coupleOut('C1−', 'primary couple that turns against the crank'),
    secondaryCoupleAhead: coupleOut('C2+', 'secondary couple with the crank at twice its speed'),
    secondaryCoupleBack: coupleOut('C2−', 'secondary couple against the crank at twice its speed'),
    primaryShaft: massOut('M1', 'weight of a shaft at crank speed, turning against the crank', 2),
    primaryShaftPhase: phase('γ1', 'shaft at crank speed'),
    secondaryShaftAhead: massOut('M2+', 'weight of a shaft at twice crank speed, turning with the crank', 2),
    secondaryShaftAheadPhase: phase('γ2+', 'shaft at twice crank speed with the crank'),
    secondaryShaftBack: massOut('M2−', 'weight of a shaft at twice crank speed, turning against the crank', 2),
    secondaryShaftBackPhase: phase('γ2−', 'shaft at twice crank speed against the crank'),
  },
  formula: 'F(θ) = F+·e^(ikθ) + F−·e^(−ikθ); shaft weight M = |F|/(rs·(k·ω)²), opposite to F',
  assumptions: [
    'Shaft weights in the plane z0; one that lies elsewhere adds a couple. Two shafts of a pair share between them.',
    'As in balance.shaking-forces; first and second order.',
  ],
  sources: ['khurmi-balance', 'derived-here'],
  example: {
    inputs: { ...inlineFour, shaftRadius: '20 mm' },
    outputs: {
      secondaryAhead: '6388 N',
      secondaryBack: '6388 N',
      secondaryShaftAhead: '202.3 g',
      secondaryShaftBack: '202.3 g',
    },
    from: 'hand arithmetic: half of 4·m·r·(r/l)/4/rs = 0.62 kg·43.5·0.3/(2·20)',
  },
  compute: (v) => {
    const found = layoutOf(v);
    if (!found.ok) return found;
    const { throws, sizes, about, scales } = found.value;
    const { primaryForce, secondaryForce, primaryCouple, secondaryCouple } = shakingOf(throws, sizes, about);
    const clean = (one: Complex, scale: number): Complex => (length(one) > 1e-12 * scale ? one : { re: 0, im: 0 });
    const size = (one: Complex, scale: number) => length(clean(one, scale));
    const shaft = (one: Complex, order: 1 | 2) => {
      const weight = times(clean(one, scales.force), -1 / (v.shaftRadius * (order * sizes.crankSpeed) ** 2));
      return { mass: length(weight) as Mass, phase: phaseOf(weight) };
    };
    const phaseOf = (one: Complex): Angle | undefined =>
      length(one) === 0 ? undefined : seenFromFront(v, angleOf(one));
    const first = shaft(primaryForce.back, 1);
    const ahead = shaft(secondaryForce.ahead, 2);
    const back = shaft(secondaryForce.back, 2);
    return answer({
      primaryAhead: size(primaryForce.ahead, scales.force) as Force,
      primaryBack: size(primaryForce.back, scales.force) as Force,
      secondaryAhead: size(secondaryForce.ahead, scales.force) as Force,
      secondaryBack: size(secondaryForce.back, scales.force) as Force,
      primaryCoupleAhead: size(primaryCouple.ahead, scales.couple) as Torque,
      primaryCoupleAheadDirection: phaseOf(clean(primaryCouple.ahead, scales.couple)),
      primaryCoupleBack: size(primaryCouple.back, scales.couple) as Torque,
      secondaryCoupleAhead: size(secondaryCouple.ahead, scales.couple) as Torque,
      secondaryCoupleBack: size(secondaryCouple.back, scales.couple) as Torque,
      primaryShaft: first.mass,
      primaryShaftPhase: first.phase,
      secondaryShaftAhead: ahead.mass,
      secondaryShaftAheadPhase: ahead.phase,
      secondaryShaftBack: back.mass,
      secondaryShaftBackPhase: back.phase,
    });
  },
});
