import { type Angle, degrees, type Length, type Outcome } from '../../../quantity/index.js';
import { liftTable } from '../../cam/index.js';
import { answer, type Caution, type Conflict, conflict, defineCalculation } from '../../catalogue/index.js';
import { camWindow as find } from '../cam-window.js';
import {
  advanceRange,
  crankInputs,
  crown,
  curveFault,
  curveInputs,
  gap,
  headHigher,
  type LeastRoom,
  lashMore,
  leastRoom,
  type RoomSizes,
  shownGap,
  valveAngle,
} from './gap-inputs.js';

const { angles, lifts } = curveInputs;
const optional = { optional: true } as const;
const advance = { kind: 'angle', unit: 'deg', places: 2, optional: true } as const;

type One = RoomSizes & { readonly lashMore: Length };
interface Given extends Omit<One, 'gapAtTop'> {
  readonly intakeGap: Length | undefined;
  readonly intakeAngles: readonly Angle[] | undefined;
  readonly intakeLifts: readonly Length[] | undefined;
  readonly exhaustGap: Length | undefined;
  readonly exhaustAngles: readonly Angle[] | undefined;
  readonly exhaustLifts: readonly Length[] | undefined;
}

export const camWindow = defineCalculation({
  id: 'valvetrain.cam-window',
  subject: 'valvetrain',
  title: 'How far the cam may be advanced or retarded',
  summary: 'Least valve-to-piston room of intake and exhaust over cam advance, and the window that keeps both limits.',
  inputs: {
    ...crankInputs,
    valveAngle: { ...valveAngle, meaning: 'angle between valve stem and bore, of both valves' },
    crown,
    intakeGap: {
      ...gap,
      ...optional,
      symbol: 'gi',
      meaning: 'intake: room along the stem, valve closed, piston at top dead centre',
    },
    intakeAngles: { ...angles, ...optional, symbol: 'θi', meaning: `intake: ${angles.meaning}` },
    intakeLifts: { ...lifts, ...optional, symbol: 'hi', meaning: 'intake: net valve lift at each angle' },
    intakeLimit: { ...gap, symbol: 'gi min', meaning: 'least intake room wanted', default: 0.002032 },
    exhaustGap: {
      ...gap,
      ...optional,
      symbol: 'ge',
      meaning: 'exhaust: room along the stem, valve closed, piston at top dead centre',
    },
    exhaustAngles: { ...angles, ...optional, symbol: 'θe', meaning: `exhaust: ${angles.meaning}` },
    exhaustLifts: { ...lifts, ...optional, symbol: 'he', meaning: 'exhaust: net valve lift at each angle' },
    exhaustLimit: { ...gap, symbol: 'ge min', meaning: 'least exhaust room wanted', default: 0.00254 },
    lashMore,
    headHigher,
    advances: {
      kind: 'angle',
      symbol: 'A',
      meaning: 'cam positions for the table in crank degrees, advance positive; left out: -8 to 8 by 2',
      unit: 'deg',
      range: advanceRange,
      list: true,
      optional: true,
    },
    reach: {
      kind: 'angle',
      symbol: 'A max',
      meaning: 'how far either way is searched',
      unit: 'deg',
      range: { from: degrees(1), to: degrees(40) },
      default: degrees(20),
    },
  },
  outputs: {
    mostAdvance: {
      ...advance,
      symbol: 'A₂',
      meaning: 'most advance that keeps the limits; left out: not reached within the search',
    },
    mostRetard: {
      ...advance,
      symbol: 'A₁',
      meaning: 'most retard (negative) that keeps the limits; left out: not reached within the search',
    },
    verdict: { kind: 'text', symbol: 'verdict', meaning: 'whether the limits are kept as the cam stands' },
    advances: { kind: 'angle', symbol: 'A', meaning: 'cam positions of the table', unit: 'deg', places: 1, list: true },
    intakeMinimum: { ...shownGap, symbol: 'min gi', meaning: 'least intake room at each', list: true, optional: true },
    intakeMinimumAngle: {
      kind: 'angle',
      symbol: 'θi',
      meaning: 'crank degrees after top dead centre of the least intake room',
      unit: 'deg',
      places: 1,
      list: true,
      optional: true,
    },
    exhaustMinimum: {
      ...shownGap,
      symbol: 'min ge',
      meaning: 'least exhaust room at each',
      list: true,
      optional: true,
    },
    exhaustMinimumAngle: {
      kind: 'angle',
      symbol: 'θe',
      meaning: 'crank degrees after top dead centre of the least exhaust room',
      unit: 'deg',
      places: 1,
      list: true,
      optional: true,
    },
  },
  formula: 'min over θ of g₀ + (drop(θ) + Δh)·c − (h(θ + A) − Δg) ≥ g min, for A from −A max to A max',
  assumptions: [
    'Both valves move with the cam by the same angle, as on a single camshaft; for a cam of its own give that valve alone.',
    'Readings reach beyond the closest place at every cam position; a least room at the end of the readings is told.',
    'Limits of 0.080 in intake and 0.100 in exhaust are common; the maker’s figures decide.',
  ],
  sources: ['derived-here', 'piston-to-valve'],
  example: {
    inputs: {
      stroke: '3.480 in',
      rodLength: '5.700 in',
      valveAngle: '23 deg',
      intakeGap: '0.180 in',
      intakeAngles: ['-10 deg', '0 deg', '5 deg', '10 deg', '15 deg', '20 deg', '25 deg', '30 deg'],
      intakeLifts: ['0.045 in', '0.075 in', '0.095 in', '0.118 in', '0.143 in', '0.170 in', '0.199 in', '0.230 in'],
      intakeLimit: '0.080 in',
      advances: ['0 deg'],
    },
    outputs: { verdict: 'kept', intakeMinimum: ['0.092 in'] },
    from: 'reference row MO-35: 0.0930 in at 5° and 0.0937 in at 10°; the parabola through 0°, 5° and 10° has its lowest, 0.0917 in, at 7.2°',
  },
  compute: (v) => {
    const intake = sideOf(v, v.intakeGap, v.intakeAngles, v.intakeLifts, 'intake');
    if (!intake.ok) return intake;
    const exhaust = sideOf(v, v.exhaustGap, v.exhaustAngles, v.exhaustLifts, 'exhaust');
    if (!exhaust.ok) return exhaust;
    const sides = [
      { room: intake.value, limit: v.intakeLimit },
      { room: exhaust.value, limit: v.exhaustLimit },
    ].flatMap(({ room, limit }) => (room ? [{ leastGap: (a: number) => room(a).value, limit, room }] : []));
    if (sides.length === 0)
      return conflict(['intakeGap', 'exhaustGap'], 'the readings of one valve at least are needed');
    const window = find(sides, v.reach);
    const advances = v.advances ?? USUAL;
    const table = (room: LeastRoom | undefined) => room && advances.map((one) => room(one));
    const [intakeTable, exhaustTable] = [table(intake.value), table(exhaust.value)];
    return answer(
      {
        mostAdvance: window.most,
        mostRetard: window.least,
        verdict: window.keptNow ? 'kept' : 'not kept',
        advances,
        intakeMinimum: intakeTable?.map((one) => one.value as Length),
        intakeMinimumAngle: intakeTable?.map((one) => one.at as Angle),
        exhaustMinimum: exhaustTable?.map((one) => one.value as Length),
        exhaustMinimumAngle: exhaustTable?.map((one) => one.at as Angle),
      },
      cautionsOf([...(intakeTable ?? []), ...(exhaustTable ?? [])]),
    );
  },
});

const USUAL = Array.from({ length: 9 }, (_, at) => degrees(2 * at - 8));

function cautionsOf(table: readonly { readonly atEnd: boolean }[]): readonly Caution[] {
  return table.some(({ atEnd }) => atEnd)
    ? [
        {
          code: 'least-at-end',
          text: 'at some cam positions the least room lies at the end of the readings: it may be less beyond',
        },
      ]
    : [];
}

/** Least room over cam advance of one valve; undefined when nothing of it was given. */
function sideOf(
  v: Given,
  gapAtTop: Length | undefined,
  at: readonly Angle[] | undefined,
  lift: readonly Length[] | undefined,
  side: 'intake' | 'exhaust',
): Outcome<LeastRoom | undefined, Conflict> {
  if (gapAtTop === undefined && at === undefined && lift === undefined) return { ok: true, value: undefined };
  const names = [`${side}Gap`, `${side}Angles`, `${side}Lifts`] as const;
  if (gapAtTop === undefined || at === undefined || lift === undefined) {
    return conflict(names, `the ${side} valve needs its room, its angles and its lifts`);
  }
  const table = liftTable(at, lift);
  if (!table.ok) return curveFault(table.fault, [names[1], names[2]]);
  return leastRoom({ ...v, gapAtTop }, table.value, v.lashMore);
}
