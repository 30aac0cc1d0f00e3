/** What must hold, each as a sum of what the choices bring. The trade's formulas are those of calc. */
import { intakeFace } from '../../../calc/cylinder/index.js';
import { bindMargin, lengthChange, valveLift } from '../../../calc/valvetrain/index.js';
import type { Angle, Length, Ratio } from '../../../quantity/index.js';
import { cylinderNeeds } from './cylinder-needs.js';
import { peakLift } from './lobe-motion.js';
import type { ChoiceKind, FinderInput, MissingSize, ValveSide } from './model.js';
import { gasketSizes, lacking, type Need, placed, takenScale } from './need.js';
import { roomNeeds } from './room-need.js';
import { headCloser, headCut, known, or, pushrod, rockerRatio, type World } from './world.js';

const FACES: readonly (readonly ChoiceKind[])[] = [['gasket'], ['deck-cut'], ['head-cut']];

/** Every requirement of an input. */
export function needsOf(input: FinderInput): readonly Need[] {
  const { fixed, wanted } = input;
  const banks = [...new Set(fixed.cylinders.map(({ bank }) => bank))];
  const several = banks.length > 1;
  return [
    ...cylinderNeeds(input),
    ...banks.flatMap((bank) => [
      ...headNeed(input, bank, several),
      ...intakeNeed(input, bank, several),
      ...preloadNeed(input, bank, several),
    ]),
    ...(['intake', 'exhaust'] as const).flatMap((side) => {
      const least = wanted.valveRoom?.[side];
      return least === undefined ? [] : banks.flatMap((bank) => roomNeeds(input, side, bank, several, least));
    }),
    ...(['intake', 'exhaust'] as const).flatMap((side) => springNeeds(input, side)),
  ];
}

/** All that is missing, each with what it is needed for. */
export const missingOf = (needs: readonly Need[]): readonly MissingSize[] =>
  needs.flatMap(({ name, missing }) => missing.map((what) => ({ what, for: name })));

function headNeed({ fixed, wanted }: FinderInput, bank: string, several: boolean): readonly Need[] {
  if (wanted.headThickness === undefined) return [];
  return [
    {
      key: `head-thickness@${bank}`,
      ...placed('head thickness', 'bank', bank, several),
      quantity: 'length',
      low: wanted.headThickness,
      scale: takenScale(fixed.headThickness, wanted.headThickness),
      by: [['head-cut']],
      amount: (world) => known(world.fixed.headThickness) - headCut(world, bank),
      missing: lacking({ 'head thickness': fixed.headThickness }),
    },
  ];
}

function intakeNeed(input: FinderInput, bank: string, several: boolean): readonly Need[] {
  const { fixed, wanted } = input;
  if (wanted.intakeShift === undefined) return [];
  return [
    {
      key: `intake-shift@${bank}`,
      ...placed('intake face off its fit', 'bank', bank, several),
      quantity: 'length',
      low: -wanted.intakeShift,
      high: wanted.intakeShift,
      by: FACES,
      amount: (world) =>
        intakeFace(
          headCloser(world, bank, 'intakeFit'),
          known(world.fixed.bankAngle) as Angle,
          known(world.fixed.faceAngle) as Angle,
          or(world.fixed.intakeGasketChange, 0) as Length,
        ).faceCut,
      missing: lacking({
        'bank angle': fixed.bankAngle,
        'intake face angle': fixed.faceAngle,
        ...gasketSizes(input, 'intakeFit'),
      }),
    },
  ];
}

function preloadNeed(input: FinderInput, bank: string, several: boolean): readonly Need[] {
  const { fixed, offer, wanted } = input;
  if (wanted.preload === undefined) return [];
  return [
    {
      key: `preload@${bank}`,
      ...placed('preload', 'bank', bank, several),
      quantity: 'length',
      ...wanted.preload,
      by: [...FACES, ['pushrod']],
      amount: (world) => {
        const headHigher = -headCloser(world, bank, 'pushrod') as Length;
        const still = 0 as Length;
        const changes = { headHigher, baseCircleSmaller: still, tipHigher: still, pivotHigher: still };
        // Without a new pivot height or tip the ratio has no part in it.
        const needed = known(world.fixed.zeroLashPushrod) + lengthChange(changes, 1 as Ratio);
        return pushrod(world, bank) - needed;
      },
      missing: lacking({
        'pushrod length at zero lash': fixed.zeroLashPushrod,
        'pushrod length': fixed.pushrod !== undefined || offer.pushrods !== undefined,
        ...gasketSizes(input, 'pushrod'),
      }),
    },
  ];
}

const lift = (world: World, side: ValveSide): Length => {
  const valve = world.fixed[side];
  return valveLift(peakLift(valve?.lobe) as Length, rockerRatio(world) as Ratio, or(valve?.lash, 0) as Length);
};

function springNeeds({ fixed, offer, wanted }: FinderInput, side: ValveSide): readonly Need[] {
  const valve = fixed[side];
  const [bindRoom, retainerRoom] = [wanted.bindRoom?.[side], wanted.retainerRoom?.[side]];
  const common = { quantity: 'length', by: [['rocker-ratio']] } as const;
  const lifted = {
    [`${side} lobe`]: valve?.lobe !== undefined,
    'rocker ratio': fixed.rockerRatio !== undefined || offer.rockerRatio !== undefined,
  };
  const bind: Need = {
    ...common,
    key: `bind-room@${side}`,
    name: `room to coil bind, ${side}`,
    ...(bindRoom !== undefined && { low: bindRoom }),
    amount: (world) => {
      const own = world.fixed[side];
      return bindMargin(known(own?.springHeight) as Length, lift(world, side), known(own?.bindHeight) as Length);
    },
    missing: lacking({
      [`${side} spring installed height`]: valve?.springHeight,
      [`${side} spring bind height`]: valve?.bindHeight,
      ...lifted,
    }),
  };
  const retainer: Need = {
    ...common,
    key: `retainer-room@${side}`,
    name: `room under the retainer, ${side}`,
    ...(retainerRoom !== undefined && { low: retainerRoom }),
    amount: (world) => known(world.fixed[side]?.retainerRoom) - lift(world, side),
    missing: lacking({ [`${side} room under the retainer`]: valve?.retainerRoom, ...lifted }),
  };
  return [...(bindRoom === undefined ? [] : [bind]), ...(retainerRoom === undefined ? [] : [retainer])];
}
