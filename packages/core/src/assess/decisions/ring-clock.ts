/** D63: where the ring gaps stand round each piston, and which way rods and pistons face, bank by bank. */
import type { BankId, CylinderNumber, Engine } from '../../engine/index.js';
import type { Alternative } from '../model.js';
import { type Decider, decided, figure, listed, possible } from './decision.js';

/**
 * Angles in degrees as one looks down on the crown: 0 toward the front of the engine, on the pin axis; 90 clockwise from it. So 90 is
 * the right side of the engine as one stands behind it and looks forward.
 */
export interface RingAngle {
  readonly ring: 'top' | 'second' | 'oil expander' | 'upper rail' | 'lower rail';
  readonly angle: number;
}
export interface ClockPattern {
  readonly id: string;
  readonly words: string;
  readonly angles: readonly RingAngle[];
}
/** Which way the parts of one cylinder face. */
export interface RodFacing {
  readonly cylinder: CylinderNumber;
  /** Side of the big end with the larger chamfer: toward the cheek of its crankpin; both where the rod is alone on its pin. */
  readonly chamfer: 'front' | 'rear' | 'both';
}
export interface RingClock {
  readonly bank: BankId;
  /** Side to which the power stroke presses the piston, seen from the front of the engine. */
  readonly thrustSide: 'left' | 'right';
  /** The same side by its neighbourhood: valley and outside on a vee, else left or right of the engine. */
  readonly thrustName: string;
  /** The same side on the chart: 90 or 270 degrees. */
  readonly thrustAngle: number;
  readonly patterns: readonly ClockPattern[];
  readonly rods: readonly RodFacing[];
}

const THRUST_AXIS = [90, 270] as const;
/** Nearest distance of any gap to the thrust axis, in degrees. */
export const fromThrust = ({ angles }: ClockPattern): number =>
  Math.min(...angles.flatMap(({ angle }) => THRUST_AXIS.map((side) => Math.abs(((angle - side + 540) % 360) - 180))));

/**
 * Two patterns that keep every gap off the thrust faces and the compression gaps far apart. Common practice, no source: piston and ring
 * makers print others, and theirs outrank these.
 */
export const CLOCK_PATTERNS: readonly ClockPattern[] = [
  {
    id: 'opposed',
    words: 'Compression gaps opposite each other, oil gaps between them',
    angles: [
      { ring: 'top', angle: 45 },
      { ring: 'second', angle: 225 },
      { ring: 'oil expander', angle: 135 },
      { ring: 'upper rail', angle: 0 },
      { ring: 'lower rail', angle: 315 },
    ],
  },
  {
    id: 'thirds',
    words: 'Top, second and oil gaps a third of a turn apart',
    angles: [
      { ring: 'top', angle: 0 },
      { ring: 'second', angle: 120 },
      { ring: 'oil expander', angle: 240 },
      { ring: 'upper rail', angle: 205 },
      { ring: 'lower rail', angle: 315 },
    ],
  },
];

function thrustOf(engine: Engine, bank: BankId): Pick<RingClock, 'thrustSide' | 'thrustName' | 'thrustAngle'> {
  const { layout } = engine;
  // On the power stroke the rod leans after its crankpin and presses the piston to the other side.
  const thrustSide = layout.rotation === 'clockwise' ? 'left' : 'right';
  // The chart looks forward from behind: what is left from the front is right there.
  const thrustAngle = thrustSide === 'left' ? 90 : 270;
  if (layout.form !== 'vee') return { thrustSide, thrustAngle, thrustName: `${thrustSide} side seen from the front` };
  const angle = layout.banks.find(({ id }) => id === bank)?.angle ?? 0;
  const ownSide = angle > 0 ? 'right' : 'left';
  return { thrustSide, thrustAngle, thrustName: ownSide === thrustSide ? 'outer side' : 'valley side' };
}

/** On a shared crankpin each rod turns its large chamfer to its own cheek, and the flat sides meet. */
function facing(engine: Engine, cylinder: CylinderNumber): RodFacing {
  const own = engine.layout.cylinders.find(({ number }) => number === cylinder);
  const mates = engine.layout.cylinders.filter(
    ({ crankpin, number }) => crankpin !== undefined && crankpin === own?.crankpin && number !== cylinder,
  );
  if (own === undefined || mates.length === 0) return { cylinder, chamfer: 'both' };
  const inFront = mates.every(({ place, number }) => (own.place === place ? own.number < number : own.place < place));
  return { cylinder, chamfer: inFront ? 'front' : 'rear' };
}

/**
 * Chart of one bank from the layout alone. Assumes crankshaft, rods and pistons without a sense of their own: marks of the maker (a
 * notch to the front, a spit hole) outrank it.
 */
export function ringClock(engine: Engine, bank: BankId): RingClock {
  const thrust = thrustOf(engine, bank);
  const cylinders = engine.layout.cylinders.filter((one) => one.bank === bank);
  return {
    bank,
    ...thrust,
    patterns: CLOCK_PATTERNS,
    rods: cylinders.map(({ number }) => facing(engine, number)),
  };
}

function alternativeOf(pattern: ClockPattern, { rods, thrustName, thrustAngle }: RingClock): Alternative {
  const toward = (side: RodFacing['chamfer']) =>
    rods.filter(({ chamfer }) => chamfer === side).map(({ cylinder }) => `${cylinder}`);
  return possible({
    id: pattern.id,
    words: pattern.words,
    figures: [
      ...pattern.angles.map(({ ring, angle }) => figure(ring, `${angle}° from the front, clockwise looking down`)),
      figure('nearest to the thrust faces', `${fromThrust(pattern)}°`),
      figure('thrust face', `${thrustAngle}°, ${thrustName}`),
      ...(['front', 'rear'] as const).flatMap((side) =>
        toward(side).length === 0 ? [] : [figure(`large chamfer to the ${side}`, `rods ${listed(toward(side))}`)],
      ),
    ],
    verdict: 'in',
    against: ['common practice, no source: the ring maker’s own chart outranks it'],
  });
}

/** One chart for each bank; nothing has to be measured for it. */
export const ringClocks: Decider = ({ engine }) =>
  engine.layout.banks.map(({ id }) => {
    const clock = ringClock(engine, id);
    const name = engine.layout.banks.length === 1 ? 'the engine' : `the ${id} bank`;
    return decided(
      {
        id: 'ring-clock',
        scope: id,
        title: `Ring gaps round the piston, ${name}`,
        question: `Where do the gaps stand on ${name}?`,
        area: 'rings',
        sources: ['shop-practice'],
      },
      {
        alternatives: clock.patterns.map((pattern) => alternativeOf(pattern, clock)),
        proof: 'Both keep every gap off the thrust faces; the first keeps the compression gaps farthest apart.',
        working: [
          `crankshaft turns ${engine.layout.rotation} seen from the front: the power stroke presses the pistons to the ${clock.thrustSide} seen from there`,
          ...clock.rods.map(({ cylinder, chamfer }) =>
            chamfer === 'both'
              ? `rod ${cylinder} is alone on its crankpin`
              : `rod ${cylinder}: large chamfer to the ${chamfer}`,
          ),
        ],
        cautions: [
          'Ends of the oil expander meet, they never overlap. Marks on pistons, rings and rods outrank this chart.',
        ],
      },
    );
  });
