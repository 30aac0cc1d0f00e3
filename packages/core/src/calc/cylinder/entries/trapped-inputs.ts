/** Inputs by which the stroke left at intake closing is found, and what must be said beside the answer. */
import { type Angle, degrees, type Length, mm, type Outcome } from '../../../quantity/index.js';
import type { Caution, Conflict, Values } from '../../catalogue/index.js';
import { strokeLeft, type TrappedStroke } from '../trapped.js';
import { rodTooShort } from './faults.js';
import { rodLength, stroke } from './inputs.js';

export const closingInputs = {
  stroke,
  rodLength,
  pinOffset: {
    kind: 'length',
    symbol: 'e',
    meaning: 'piston pin to cylinder axis, positive toward the side the crankpin moves to after top dead centre',
    unit: 'mm',
    range: { from: mm(-500), to: mm(500) },
    default: 0,
  },
  intakeCloses: {
    kind: 'angle',
    symbol: 'IC',
    meaning: 'intake closing, crank degrees after bottom dead centre (before it: negative)',
    unit: 'deg',
    range: { above: degrees(-180), below: degrees(180) },
  },
  closingPoint: {
    kind: 'choice',
    symbol: 'at',
    meaning: 'where the closing was read or printed',
    choices: ['seat', '0.006 in lift', '0.050 in lift', '1 mm lift', 'other', 'not said'],
    default: 'not said',
  },
  laterBy: {
    kind: 'angle',
    symbol: 'Δ',
    meaning: 'added to the closing, such as 15 deg to come from 0.050 in lift near the seat',
    unit: 'deg',
    range: { from: degrees(-90), to: degrees(90) },
    default: 0,
  },
} as const;

type ClosingValues = Values<typeof closingInputs>;

/** Stroke left at closing; refuses a crank that could not turn. */
export function trappedOf(v: ClosingValues): Outcome<TrappedStroke, Conflict> {
  const g = { crankRadius: (v.stroke / 2) as Length, rodLength: v.rodLength, pinOffset: v.pinOffset };
  const left = strokeLeft(g, (v.intakeCloses + v.laterBy) as Angle);
  return left.ok ? left : rodTooShort(left.fault);
}

export const closingCaution = (v: ClosingValues): Caution => ({
  code: 'closing-point',
  text:
    v.closingPoint === 'not said'
      ? 'where the intake closing was read is not said; it is worth about one whole point of ratio'
      : `intake closing taken at: ${v.closingPoint}`,
});
