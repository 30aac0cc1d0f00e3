/** Whether a lift that was keyed can be, against the curve of the lobe or the lift that its card prints. */
import { figure, type LobeDegreed, type NumberGate } from '../../assess/index.js';
import { type ValveId, valveKey } from '../../engine/index.js';
import { formatQuantity, parseQuantity } from '../../quantity/index.js';
import type { Bench } from '../bench.js';
import type { ShownIn } from '../measure-views.js';
import { camAtRest, degreeingOf } from './cam-as-read.js';
import { shownEnds, shownQuantity, shownWay } from './shown.js';
import type { Tried } from './tried.js';

export interface LiftKeyed {
  readonly lobe: ValveId;
  readonly at: 'lifter' | 'valve';
  /** Wheel reading that was keyed before it [rad]. */
  readonly wheel: number | undefined;
  /** With its unit. */
  readonly text: string;
}
const FINE: NumberGate = { level: 'fine' };
/** A lobe may be this much higher than its card before it is asked about (common practice, no source). */
const OVER = 1.15;
/** Off the curve by more than this it is asked about: a slip of the pencil is more, a slip of the wheel by a degree is less. */
const OFF = 0.6e-3;
const TURN = 2 * Math.PI;

/** Fine, or what was expected there. Without a curve only the height of the lobe is known; without that nothing is asked. */
export function judgeLift(
  bench: Bench,
  tried: Tried,
  { lobe, at, wheel, text }: LiftKeyed,
  shownIn: ShownIn,
): NumberGate {
  const read = parseQuantity('length', text);
  if (!read.ok) return FINE;
  const makeup = camAtRest(tried);
  const ratio = at === 'lifter' ? 1 : figure(makeup, 'rocker-ratio', lobe)?.value;
  const lash = at === 'lifter' ? 0 : figure(makeup, 'valve-lash', lobe)?.value;
  if (ratio === undefined || lash === undefined) return FINE;
  const { value } = read.value;
  const peak = figure(makeup, 'lobe-lift', lobe)?.value;
  if (peak !== undefined && value > OVER * peak * ratio) {
    const ends = shownEnds('length', { low: 0, high: peak * ratio }, shownIn);
    return {
      level: 'unlikely',
      expected: ends,
      hint: `Higher than this lobe lifts.${otherUnit(value, peak * ratio, shownIn)}`,
    };
  }
  const degreed = degreeingOf(bench, tried).lobes.find((one) => valveKey(one.lobe) === valveKey(lobe));
  const curve = degreed && wheel !== undefined ? liftThere(degreed, wheel) : undefined;
  if (curve === undefined) return FINE;
  const expected = Math.max(0, curve * ratio - lash);
  if (Math.abs(value - expected) <= OFF * ratio) return FINE;
  return {
    level: 'unlikely',
    expected: shownQuantity('length', expected, shownIn),
    hint: 'Not where the other readings of this lobe put it.',
  };
}

const INCH = 25.4;
/** Millimetres keyed where inches are asked. */
function otherUnit(value: number, most: number, shownIn: ShownIn): string {
  if (shownWay('length', shownIn).unit !== 'in' || value / INCH > most) return '';
  return ` Is it ${formatQuantity('length', value / INCH, 'mm', 2)}?`;
}

/** Lift of the curve at a wheel reading [m]; undefined beyond the curve. */
function liftThere({ readings, curve }: LobeDegreed, wheel: number): number | undefined {
  const [known] = readings;
  const [first, last] = [curve[0], curve.at(-1)];
  if (known === undefined || first === undefined || last === undefined) return undefined;
  const past = (wheel - known.wheel) / TURN;
  const turned = (known.angle + TURN * (past - Math.round(past))) * (180 / Math.PI);
  const angle = [turned - 360, turned, turned + 360].find((one) => one >= first[0] && one <= last[0]);
  if (angle === undefined) return undefined;
  const after = Math.max(
    1,
    curve.findIndex(([x]) => x >= angle),
  );
  const [[x0, y0], [x1, y1]] = [curve[after - 1]!, curve[after]!];
  return y0 + ((y1 - y0) * (angle - x0)) / (x1 - x0);
}
