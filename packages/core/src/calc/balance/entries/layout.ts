/** The layout of an engine as inputs, and as throws in the running sense. */
import { type Angle, done, type Length, type Mass, type Outcome, wrapped } from '../../../quantity/index.js';
import { type Conflict, conflict, type Values } from '../../catalogue/index.js';
import { type CrankSizes, counterweighted, scalesOf, type Throw } from '../shaking.js';
import { crankSpeed, direction, factor, massOrNone, place, size } from './inputs.js';

export const layout = {
  throwAngles: {
    ...direction('τ', 'throw of cylinder 1, 2, 3 ... ahead of the crank’s reference, in the running sense'),
    list: true,
  },
  bankAngles: {
    ...direction(
      'β',
      'bank of each cylinder from upright, clockwise seen from the front; one value for all, or one each: inline 0, a 90 deg vee -45 and 45, opposed -90 and 90',
    ),
    list: true,
  },
  positions: {
    ...place('z', 'each cylinder along the crank, from any common point; one value puts all in one plane'),
    list: true,
  },
  reciprocating: {
    ...massOrNone(
      'm',
      'reciprocating mass of a cylinder: piston, pin, rings, small end; one value for all, or one each',
    ),
    list: true,
  },
  rotating: {
    ...massOrNone('mr', 'rotating mass at the crankpin for each cylinder that no counterweight balances'),
    list: true,
    optional: true,
  },
  balanceFactor: {
    ...factor,
    default: 0,
    meaning: 'share of the reciprocating mass that counterweights opposite each throw carry',
  },
  stroke: size('S', 'stroke: twice the crank throw'),
  rodLength: size('l', 'connecting rod, centre to centre'),
  crankSpeed,
  about: {
    ...place('z0', 'plane about which couples are taken; left out: the middle between the first and last cylinder'),
    optional: true,
  },
  rotation: {
    kind: 'choice',
    symbol: 'sense',
    meaning: 'running sense seen from the front',
    choices: ['clockwise', 'anticlockwise'],
    default: 'clockwise',
  },
} as const;

/** An invented inline four, for the examples. */
export const inlineFour = {
  throwAngles: ['0 deg', '180 deg', '180 deg', '0 deg'],
  bankAngles: ['0 deg'],
  positions: ['0 mm', '100 mm', '200 mm', '300 mm'],
  reciprocating: ['0.62 kg'],
  stroke: '87 mm',
  rodLength: '145 mm',
  crankSpeed: '6000 rpm',
} as const;

export interface Layout {
  readonly throws: readonly Throw[];
  readonly sizes: CrankSizes;
  readonly about: Length;
  readonly scales: { readonly force: number; readonly couple: number };
}
type LayoutValues = Values<typeof layout>;

/** Reads the lists; refuses lists of the wrong length and a crank that could not turn. */
export function layoutOf(v: LayoutValues): Outcome<Layout, Conflict> {
  const n = v.throwAngles.length;
  const lists = {
    bankAngles: v.bankAngles,
    positions: v.positions,
    reciprocating: v.reciprocating,
    rotating: v.rotating,
  };
  const wrong = Object.entries(lists).filter(([, list]) => list && list.length !== 1 && list.length !== n);
  if (wrong.length > 0) {
    const names = wrong.map(([name]) => name);
    return conflict(['throwAngles', ...names], `${names.join(', ')}: one value for all or ${n}, one for each throw`);
  }
  const crankRadius = (v.stroke / 2) as Length;
  if (v.rodLength <= crankRadius) {
    return conflict(['stroke', 'rodLength'], 'the crank could not turn', { input: 'rodLength', above: crankRadius });
  }
  const sizes = { crankRadius, rodLength: v.rodLength, crankSpeed: v.crankSpeed };
  const throws = v.throwAngles.map((_, at) => throwOf(v, at));
  const spots = throws.map((one) => one.position);
  const about = v.about ?? (((Math.min(...spots) + Math.max(...spots)) / 2) as Length);
  return done({ throws, sizes, about, scales: scalesOf(throws, sizes, about) });
}

function throwOf(v: LayoutValues, at: number): Throw {
  const sense = v.rotation === 'clockwise' ? 1 : -1;
  const one: Throw = {
    throwAngle: v.throwAngles[at] as Angle,
    bankAngle: (sense * pick(v.bankAngles, at)) as Angle,
    position: pick(v.positions, at),
    reciprocating: pick(v.reciprocating, at),
    rotating: v.rotating ? pick(v.rotating, at) : (0 as Mass),
  };
  return counterweighted(one, v.balanceFactor);
}

const pick = <T>(list: readonly T[], at: number): T => (list.length === 1 ? list[0] : list[at]) as T;

/** A direction in the running sense as one clockwise seen from the front, 0 to 360°. */
export const seenFromFront = (v: Pick<LayoutValues, 'rotation'>, angle: number): Angle =>
  wrapped(v.rotation === 'clockwise' ? angle : -angle, (2 * Math.PI) as Angle);
