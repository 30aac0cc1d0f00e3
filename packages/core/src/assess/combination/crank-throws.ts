/** The cranks and banks of an engine as throws with masses, for what shakes it. */
import { type CrankSizes, counterweighted, type Throw } from '../../calc/balance/index.js';
import {
  bankAngleInRunningSense,
  type Cylinder,
  type CylinderNumber,
  type Engine,
  throwAngles,
} from '../../engine/index.js';
import type { Angle, AngularSpeed, Length, Mass, Ratio } from '../../quantity/index.js';
import type { Look } from './look.js';

const FORCES = 'shaking forces';
const COUPLES = 'shaking couples';

/** Parts that go up and down with a piston. Locks that were weighed with the pin are none of their own. */
export const RECIPROCATING = ['piston-mass', 'pin-mass', 'ring-mass', 'rod-small-end-mass'] as const;
export const MAYBE = 'lock-mass';

/** Mass that reciprocates in a cylinder [kg]; undefined where a part is lacking, which is then noted. */
export function reciprocatingOf(look: Look, cylinder: CylinderNumber, lacking: string): number | undefined {
  const parts = RECIPROCATING.map((key) => look.need(key, lacking, cylinder));
  if (parts.some((one) => one === undefined)) return undefined;
  return parts.reduce<number>((sum, one) => sum + (one ?? 0), look.read(MAYBE, cylinder) ?? 0);
}

export interface Shaken {
  readonly throws: readonly Throw[];
  readonly sizes: CrankSizes & { readonly pinOffset: Length };
  /** Plane about which couples are taken: the middle of the cylinders. */
  readonly about: Length;
  /** Crank angle of the calculation at which cylinder 1 is at dead centre. */
  readonly zero: number;
  /** Whether the places along the crank are known, so that couples mean something. */
  readonly placed: boolean;
}

/**
 * Throws in the running sense with what reciprocates on each, less the share that the counterweights carry; all that rotates is taken
 * as balanced. Undefined where masses, stroke, rod, speed or the crank's directions are lacking.
 */
export function shakenOf(look: Look, engine: Engine): Shaken | undefined {
  const { layout } = engine;
  const angles = throwAngles(layout);
  if (!angles.ok) look.lack('firing-order', FORCES);
  const stroke = look.need('stroke', FORCES);
  const rodLength = look.need('rod-length', FORCES) as Length | undefined;
  const crankSpeed = look.need('highest-speed', FORCES) as AngularSpeed | undefined;
  const pinOffset = (look.read('pin-offset') ?? 0) as Length;
  const masses = layout.cylinders.map(({ number }) => reciprocatingOf(look, number, FORCES));
  const positions = positionsOf(look, engine);
  if (!angles.ok || stroke === undefined || rodLength === undefined || crankSpeed === undefined) return undefined;
  if (masses.some((mass) => mass === undefined)) return undefined;
  const crankRadius = (stroke / 2) as Length;
  if (rodLength <= crankRadius + Math.abs(pinOffset)) return undefined;
  const factor = look.planned('balance-factor') as Ratio;
  const banks = layout.cylinders.map((cylinder) => bankOf(engine, cylinder));
  const throws = layout.cylinders.map((cylinder, at) =>
    counterweighted(
      {
        throwAngle: (angles.value.get(cylinder.number) ?? 0) as Angle,
        bankAngle: banks[at]!,
        position: (positions?.[at] ?? 0) as Length,
        reciprocating: masses[at] as Mass,
        rotating: 0 as Mass,
      },
      factor,
    ),
  );
  const spots = throws.map(({ position }) => position);
  const first = layout.cylinders.findIndex(({ number }) => number === 1);
  return {
    throws,
    sizes: { crankRadius, rodLength, crankSpeed, pinOffset },
    about: ((Math.min(...spots) + Math.max(...spots)) / 2) as Length,
    zero: banks[Math.max(0, first)] ?? 0,
    placed: positions !== undefined,
  };
}

function bankOf({ layout }: Engine, { bank }: Cylinder): Angle {
  const found = layout.banks.find(({ id }) => id === bank);
  return found === undefined ? (0 as Angle) : bankAngleInRunningSense(layout, found);
}

/** Along the crank: its place in its own bank times the pitch, the second bank farther back by its offset. */
function positionsOf(look: Look, { layout }: Engine): readonly number[] | undefined {
  if (layout.cylinders.length === 1) return [0];
  const pitch = look.need('cylinder-pitch', COUPLES);
  const offset = layout.banks.length > 1 ? look.need('bank-offset', COUPLES) : 0;
  if (pitch === undefined || offset === undefined) return undefined;
  return layout.cylinders.map((cylinder) => {
    const own = layout.cylinders.filter(({ bank }) => bank === cylinder.bank).sort((a, b) => a.place - b.place);
    const behind = cylinder.bank === layout.banks[0]?.id ? 0 : offset;
    return own.indexOf(cylinder) * pitch + behind;
  });
}
