import type { Act, TighteningActs, VisitingOrder } from '@gudgeon/core/plan';
import { toUnit } from '@gudgeon/core/quantity';

const UNITS = { torque: 'N·m', angle: 'deg', length: 'mm' } as const;

/** An SI value in the unit that is printed, without the noise of the conversion. */
function inPrintedUnit(quantity: keyof typeof UNITS, value: number): number {
  const [kind, unit] = [quantity, UNITS[quantity]];
  return Number(toUnit(kind, value as never, unit).toPrecision(12));
}

function targetAsJson({ target }: Act) {
  const { text, quantity, low, high } = target;
  if (quantity === 'none') return { text };
  return {
    text,
    ...(low !== undefined && { low: inPrintedUnit(quantity, low) }),
    ...(high !== undefined && { high: inPrintedUnit(quantity, high) }),
    unit: UNITS[quantity],
  };
}

function actAsJson(act: Act) {
  return {
    act: act.number,
    stage: act.stage,
    ...(act.label !== undefined && { label: act.label }),
    ...(act.cap !== undefined && { cap: act.cap.name }),
    hole: act.hole,
    kind: act.kind,
    target: targetAsJson(act),
    ...(act.note !== undefined && { note: act.note }),
  };
}

const orderAsJson = ({ holes, origin, words }: VisitingOrder) => ({ holes, origin, words });

/** The acts as the command prints them with `--json`. */
export function actsAsJson(joint: string, { order, acts }: TighteningActs) {
  return { joint, order: orderAsJson(order), acts: acts.map(actAsJson) };
}

const LEADS: Readonly<Record<Act['kind'], string>> = {
  torque: 'tighten to',
  angle: 'turn on by',
  loosen: 'loosen',
  verify: 'check at',
  stretch: 'stretch to',
  renew: 'renew:',
  instruct: '',
  feel: 'feel:',
};

function actLine(act: Act, width: number): string {
  const hole = act.hole === 'all' ? (act.cap?.name ?? 'whole joint') : `hole ${act.hole}`;
  const asked = [LEADS[act.kind], act.target.text].filter((part) => part !== '').join(' ');
  return `${String(act.number).padStart(width)}  ${hole}: ${asked}`;
}

function stageLine({ stage, label, note, cap }: Act): string {
  const printed = label === undefined ? '' : ` (printed as ${label})`;
  return `Stage ${stage}${cap === undefined ? '' : `, ${cap.name}`}${printed}${note === undefined ? '' : `: ${note}`}`;
}

/** The acts as lines for a person: a heading for every stage, a line for every act. */
export function actsAsText(name: string, { order, acts }: TighteningActs): string {
  const width = String(acts.length).length;
  const lines = [name, order.words, `Order: ${order.holes.join(' ')}`];
  for (const [index, act] of acts.entries()) {
    if (acts[index - 1]?.stage !== act.stage) lines.push('', stageLine(act));
    lines.push(actLine(act, width));
  }
  return lines.join('\n');
}
