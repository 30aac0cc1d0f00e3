/** For tests: readings of an invented lobe, as a wheel and an indicator would show them. */
import { lobeLift, type PolynomialLobe } from '../../calc/cam/index.js';
import type { Engine, ValveId } from '../../engine/index.js';
import { degrees, mm } from '../../quantity/index.js';
import type { CamReading } from './degreeing-model.js';
import { bareEngine } from './rows.suite.js';

export const DEGREE = Math.PI / 180;
/** Intake centreline 108°, exhaust 112°: separation 110. */
export const CAM = `cam:
  basis: at-lift
  checkingLift: 1.00 mm
  events: { io: 2 deg BTDC, ic: 38 deg ABDC, eo: 43 deg BBDC, ec: 1 deg BTDC }
  lobeLift: { intake: 8.00 mm, exhaust: 8.00 mm }
valveGear:
  kind: pushrod
  follower: flat
  adjustment: mechanical
  valvesPerCylinder: { intake: 1, exhaust: 1 }
  ratio: 1.5:1
  adjuster: { place: pushrod-end-screw, pitch: 1.00 mm }
  lash:
    intake: { cold: 0.20 mm }
    exhaust: { cold: 0.30 mm }
`;
export const camEngine = (): Engine => bareEngine(4, CAM);

export const INTAKE: ValveId = { cylinder: 1, kind: 'intake', index: 1 };
export const EXHAUST: ValveId = { cylinder: 1, kind: 'exhaust', index: 1 };
export const LOBE: PolynomialLobe = { peakLift: mm(8), halfDuration: degrees(135), exponents: [6, 8, 10] };

export interface Shown {
  readonly lobe?: ValveId;
  /** Crank degrees of the nose after the lobe's own top of overlap. */
  readonly nose: number;
  /** What the wheel reads there [degrees]. */
  readonly wheelAtTop?: number;
  /** Degrees from the nose at which it is read. */
  readonly at: readonly number[];
  /** Error of the indicator at each place [mm]. */
  readonly noise?: readonly number[];
}
/** Readings at the lifter, the wheel counting 0 to 360. */
export function readingsOfLobe({ lobe = INTAKE, nose, wheelAtTop = 0, at, noise = [] }: Shown): readonly CamReading[] {
  const lift = lobeLift(LOBE);
  return at.map((from, place) => ({
    lobe,
    wheel: (((((nose + wheelAtTop + from) % 360) + 360) % 360) * DEGREE) as number,
    lift: lift(from * DEGREE) + (noise[place] ?? 0) / 1000,
    at: 'lifter',
  }));
}
export const every = (step: number, reach = 90): readonly number[] =>
  Array.from({ length: Math.floor((2 * reach) / step) + 1 }, (_, at) => at * step - reach);
