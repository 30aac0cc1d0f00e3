/** Least room between a valve and its piston over the overlap, as a sum of what moves the head and what moves the valve. */
import { lowest } from '../../../calc/numeric/index.js';
import { gapChange, gapCurve, gapOfTravel, valveLift } from '../../../calc/valvetrain/index.js';
import { type Angle, degrees, type Length, type Ratio } from '../../../quantity/index.js';
import { lobeCurve } from './lobe-motion.js';
import type { FinderInput, FixedFigures, ValveSide } from './model.js';
import { gasketSizes, lacking, type Need, placed } from './need.js';
import { camAdvance, headCloser, known, or, pistonHigher, pocketDeeper, rockerRatio, type World } from './world.js';

/** A hydraulic lifter as it works, or pumped up; a solid one is always full. */
export type Lifter = 'full' | 'pumped-up';

/** Farther from the top the piston has gone down by more than any valve opens. */
const LOOKS = Array.from({ length: 97 }, (_, at) => degrees(-120 + at * 2.5));

/** Least room with none at the top, by side, advance and ratio: the same for every place of the head. */
const FOUND = new WeakMap<FixedFigures, Map<string, number>>();

/** What the motion of valve and piston takes from the room at the top; NaN where the crank cannot turn or the lobe is none. */
export function roomByMotion(
  fixed: FixedFigures,
  side: ValveSide,
  advance: number,
  ratio: number,
  lifter: Lifter = 'full',
): number {
  const cache = FOUND.get(fixed) ?? new Map<string, number>();
  FOUND.set(fixed, cache);
  const id = `${side} ${advance} ${ratio} ${lifter}`;
  const held = cache.get(id);
  if (held !== undefined) return held;
  const room = motion(fixed, side, advance, ratio, lifter);
  cache.set(id, room);
  return room;
}

function motion(fixed: FixedFigures, side: ValveSide, advance: number, ratio: number, lifter: Lifter): number {
  const valve = fixed[side];
  const lobe = valve?.lobe && lobeCurve(valve.lobe, side);
  if (lobe === undefined) return Number.NaN;
  // Pumped up the plunger lifts the valve by the preload times the ratio, on the base circle too.
  const held = lifter === 'full' ? 0 : gapOfTravel(or(valve?.preload, 0) as Length, ratio as Ratio);
  const lash = (or(valve?.lash, 0) - held) as Length;
  const crank = {
    crankRadius: (known(fixed.stroke) / 2) as Length,
    rodLength: known(fixed.rodLength) as Length,
    pinOffset: or(fixed.pinOffset, 0) as Length,
  };
  const place = {
    crank,
    valveAngle: known(valve?.angle) as Angle,
    crown: valve?.crown ?? 'parallel-pocket',
    gapAtTop: 0 as Length,
  } as const;
  const gap = gapCurve(place, (angle) => valveLift(lobe(angle + advance) as Length, ratio as Ratio, lash));
  return gap.ok ? lowest(gap.value, LOOKS).value : Number.NaN;
}

/** Room with the lifter full and, where its preload is known, pumped up: both must hold. */
export function roomNeeds(
  input: FinderInput,
  side: ValveSide,
  bank: string,
  several: boolean,
  least: number,
): readonly Need[] {
  const lifters: readonly Lifter[] = input.fixed[side]?.preload === undefined ? ['full'] : ['full', 'pumped-up'];
  return lifters.map((lifter) => roomNeed(input, side, bank, several, least, lifter));
}

function roomNeed(
  input: FinderInput,
  side: ValveSide,
  bank: string,
  several: boolean,
  least: number,
  lifter: Lifter,
): Need {
  const { fixed, offer } = input;
  const valve = fixed[side];
  const full = lifter === 'full';
  return {
    key: `${side}-room${full ? '' : '-pumped-up'}@${bank}`,
    ...placed(`${side} valve to piston${full ? '' : ', lifter pumped up'}`, 'bank', bank, several),
    quantity: 'length',
    low: least,
    by: [['gasket'], ['piston'], ['deck-cut'], ['head-cut'], ['cam-advance', 'rocker-ratio']],
    amount: (world) => roomOf(world, side, bank, lifter),
    missing: lacking({
      [`${side} valve angle`]: valve?.angle,
      [`${side} valve room at the top`]: valve?.gapAtTop,
      [`${side} lobe`]: valve?.lobe !== undefined,
      'rod length': fixed.rodLength,
      'rocker ratio': fixed.rockerRatio !== undefined || offer.rockerRatio !== undefined,
      ...gasketSizes(input, 'room'),
      ...(offer.pistons && {
        'compression height when the valve room was measured':
          fixed.measuredWith?.compressionHeight ?? fixed.piston?.compressionHeight,
      }),
    }),
  };
}

function roomOf(world: World, side: ValveSide, bank: string, lifter: Lifter): number {
  const { fixed } = world;
  const valve = fixed[side];
  const moved = gapChange(valve?.crown ?? 'parallel-pocket', known(valve?.angle) as Angle, {
    alongBore: (-headCloser(world, bank, 'room') - pistonHigher(world)) as Length,
    pocketDeeper: pocketDeeper(world) as Length,
    valveSunk: 0 as Length,
    liftMore: 0 as Length,
  });
  return known(valve?.gapAtTop) + moved + roomByMotion(fixed, side, camAdvance(world), rockerRatio(world), lifter);
}
