/** A part at hand that turns the cam, as a person types it. */
import type { TimingPart } from '../../assess/index.js';
import { describeFault, done, formatQuantity, type Outcome, parseQuantity, refused } from '../../quantity/index.js';
import type { ShownIn } from '../measure-views.js';
import { shownWay } from './shown.js';

/** How a part says what it does: degrees that are marked on it, or how far it is off and where it sits. */
export const PART_MARKINGS = [
  ['crank', 'marked in crank degrees'],
  ['cam', 'marked in cam degrees'],
  ['crank-key', 'offset key in the crank'],
  ['cam-key', 'offset key in the cam'],
  ['cam-dowel-bushing', 'offset bushing on the cam dowel'],
] as const;
export type PartMarking = (typeof PART_MARKINGS)[number][0];

export interface PartTyped {
  readonly marking: PartMarking;
  /** Degrees, or the offset. */
  readonly amount: string;
  /** From the centre of the shaft to the key or dowel. */
  readonly radius: string;
}
const BARE = /^[\s\d.,]+$/;
const MOST = Math.PI / 6;

/** The part, or one line why it is none. */
export function timingPart({ marking, amount, radius }: PartTyped, shownIn: ShownIn): Outcome<TimingPart, string> {
  if (marking === 'crank' || marking === 'cam') {
    const angle = typed('angle', amount, 'deg');
    if (!angle.ok) return angle;
    if (!(angle.value > 0 && angle.value <= MOST)) return refused('Degrees: above 0 to 30 is valid.');
    const text = formatQuantity('angle', angle.value, 'deg', 1).replace('.0 ', ' ');
    return done({ id: `${marking} ${text}`, name: `${text} ${marking}`, angle: angle.value, marked: marking });
  }
  const { unit } = shownWay('length', shownIn);
  const [offset, from] = [typed('length', amount, unit), typed('length', radius, unit)];
  if (!offset.ok) return offset;
  if (!from.ok) return from;
  if (!(offset.value > 0 && offset.value < from.value / 2))
    return refused('Offset: above 0 and well below the distance from the centre of the shaft is valid.');
  const words = PART_MARKINGS.find(([one]) => one === marking)![1];
  const name = `${words} ${formatQuantity('length', offset.value, unit, unit === 'in' ? 4 : 2)}`;
  return done({ id: `${name} ${from.value}`, name, place: marking, offset: offset.value, radius: from.value });
}

function typed(quantity: 'angle' | 'length', text: string, unit: string): Outcome<number, string> {
  const whole = BARE.test(text) ? `${text.trim()} ${unit}` : text;
  const read = parseQuantity(quantity, whole);
  return read.ok ? done(read.value.value) : refused(describeFault(read.fault));
}

const DEGREE = Math.PI / 180;
/** A usual set of bushings or keys (common practice, no source); what lies on the bench comes before it. */
export const USUAL_PARTS: readonly TimingPart[] = [1, 2, 3, 4, 6, 8].map((degrees) => ({
  id: `crank ${degrees} deg`,
  name: `${degrees} deg crank`,
  angle: degrees * DEGREE,
  marked: 'crank',
}));
