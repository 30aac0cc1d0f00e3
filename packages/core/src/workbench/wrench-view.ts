/** The person's torque wrenches against the target of an act: which fits, what to set on it, what is not known of it. */
import type { Instrument, InstrumentCheck, Readings } from '../assess/index.js';
import type { Adapter } from '../calc/fasteners/index.js';
import { type Act, aimOf, judgeWrench, type WrenchJudgement } from '../plan/index.js';
import {
  describeFault,
  done,
  formatQuantity,
  type Length,
  newtonMetres,
  type Outcome,
  parseQuantity,
  refused,
  type Torque,
} from '../quantity/index.js';
import { spokenUnit } from './act-words.js';
import type { Bench } from './bench.js';
import { readingsOf } from './readings.js';
import type { WrenchInHand, WrenchLine, WrenchView } from './views.js';
import {
  ageWords,
  doubtWords,
  errorWords,
  finer,
  fitWords,
  isOff,
  nearestMark,
  newestCheck,
  readsTimes,
} from './wrench-words.js';

/** The torque wrenches that the person keeps, as they were kept. */
export const wrenchesOf = ({ instruments }: Readings): readonly Instrument[] =>
  [...instruments.values()].filter((one) => one.kind === 'torque-wrench');

interface Judged {
  readonly wrench: Instrument;
  readonly check: InstrumentCheck | undefined;
  readonly judgement: WrenchJudgement;
}
const judged = (readings: Readings, wrench: Instrument, aim: Torque, adapter?: Adapter): Judged => {
  const check = newestCheck(readings, wrench.id);
  const range = wrench.range as { readonly low?: Torque; readonly high?: Torque } | undefined;
  const times = check !== undefined && isOff(wrench, check) ? readsTimes(check) : 1;
  return {
    wrench,
    check,
    judgement: judgeWrench(aim, { ...(range && { range }), readsTimes: times, ...(adapter && { adapter }) }),
  };
};

/** The adapter of a wrench as typed; nothing can be computed where its own length is not known. */
function adapterOf(wrench: Instrument, typed: NonNullable<WrenchInHand['adapter']>): Outcome<Adapter, string> {
  if (wrench.gripLength === undefined)
    return refused(
      `The length of ${wrench.name} from the middle of its grip to the square drive was never noted: without it nothing can be set for an adapter.`,
    );
  const reach = parseQuantity('length', typed.reach);
  if (!reach.ok) return refused(`Length of the adapter: ${describeFault(reach.fault)}`);
  const angle = parseQuantity('angle', typed.angle);
  if (!angle.ok) return refused(`Angle of the adapter: ${describeFault(angle.fault)}`);
  if (reach.value.value <= 0)
    return refused('Length of the adapter: more than zero, from the square drive to the fastener.');
  return done({ wrench: wrench.gripLength as Length, reach: reach.value.value, angle: angle.value.value });
}

const lineOf = ({ wrench, judgement }: Judged, chosen: string | undefined): WrenchLine => ({
  id: wrench.id,
  name: wrench.name,
  chosen: wrench.id === chosen,
  ...(judgement.verdict !== 'range-unknown' && { fits: judgement.verdict === 'fits' }),
  words: fitWords(wrench, judgement),
});

function workingWords({ wrench, judgement, check }: Judged, adapter: Adapter | undefined): string {
  const { aim, setting } = judgement;
  const steps = [`${finer(wrench, aim)} at the fastener`];
  if (adapter !== undefined) {
    const millimetres = (length: number) => formatQuantity('length', length, 'mm', 0);
    const [grip, reach] = [millimetres(adapter.wrench), millimetres(adapter.reach)];
    const angle = formatQuantity('angle', adapter.angle, 'deg', 0);
    steps.push(`× ${grip} / (${grip} + ${reach} × cos ${angle}) for the adapter`);
  }
  if (check !== undefined && isOff(wrench, check)) steps.push(`× ${readsTimes(check).toFixed(3)} for what it reads`);
  return `${steps.join(' ')} = ${formatQuantity('torque', setting ?? aim, wrench.unit, 2)}`;
}

function inHand(hand: WrenchInHand, aim: Torque, own: Judged, adapter: Adapter | undefined): Omit<WrenchView, 'kept'> {
  const { wrench, check, judgement } = own;
  const { setting, verdict } = judgement;
  const age = ageWords(wrench, check, hand.today);
  const off = check !== undefined && isOff(wrench, check);
  const about = check === undefined ? [] : [errorWords(wrench, check, aim)];
  const said = { warnings: [...(age.old ? [age.words] : []), ...(off ? about : [])] };
  const notes = [...(off ? [] : about), ...(age.old ? [] : [age.words]), doubtWords(wrench, aim)];
  if (verdict === 'fits' || verdict === 'range-unknown') {
    const mark = nearestMark(wrench, setting ?? aim);
    const same = Math.abs(mark.value - aim) <= wrench.resolution / 2;
    const spoken = same ? {} : { spoken: `Set the wrench to ${mark.number} ${spokenUnit(wrench.unit)}` };
    const set = { number: mark.number, unit: wrench.unit, working: workingWords(own, adapter), ...spoken };
    const unknown = verdict === 'range-unknown';
    const words = unknown ? `${wrench.name}: ${fitWords(wrench, judgement)}. Whether it fits is unknown.` : wrench.name;
    return { state: unknown ? 'unknown' : 'fits', words, set, ...said, notes };
  }
  return { state: 'does-not-fit', words: `Not with ${wrench.name}: ${fitWords(wrench, judgement)}.`, ...said, notes };
}

const listed = (lines: readonly WrenchLine[]): string => lines.map(({ name }) => name).join(', ');

/** What else would do. */
function instead(lines: readonly WrenchLine[]): string {
  const able = lines.filter((one) => one.fits && !one.chosen);
  return able.length === 0 ? 'None that is kept here fits.' : `Fits: ${listed(able)}.`;
}

/**
 * Wrenches against an act by torque value; undefined for any other act. It only speaks: what was done with a wrench that
 * does not fit is still what was done, and a record that refused it would hide it.
 */
export function wrenchView(bench: Bench, act: Act, hand: WrenchInHand): WrenchView | undefined {
  const { quantity, low, high } = act.target;
  if (quantity !== 'torque') return undefined;
  const aim = aimOf({
    ...(low !== undefined && { low: newtonMetres(low) }),
    ...(high !== undefined && { high: newtonMetres(high) }),
  });
  if (aim === undefined) return undefined;
  const readings = readingsOf(bench);
  const wrenches = wrenchesOf(readings);
  const nothing = { warnings: [], notes: [] };
  if (wrenches.length === 0) {
    const words = `No torque wrench is kept: whether the one in your hand reaches ${act.target.text}, and what it really gives, is unknown.`;
    return { state: 'none-kept', words, ...nothing, kept: [] };
  }
  const kept = wrenches.map((wrench) => lineOf(judged(readings, wrench, aim), hand.wrench));
  const chosen = wrenches.find(({ id }) => id === hand.wrench);
  if (chosen === undefined)
    return { state: 'not-chosen', words: `Which wrench is in your hand? ${instead(kept)}`, ...nothing, kept };
  const adapter = hand.adapter && adapterOf(chosen, hand.adapter);
  if (adapter !== undefined && !adapter.ok) return { state: 'unknown', words: adapter.fault, ...nothing, kept };
  const own = judged(readings, chosen, aim, adapter?.value);
  const view = inHand(hand, aim, own, adapter?.value);
  const lines = kept.map((line) => (line.chosen ? lineOf(own, chosen.id) : line));
  const words = view.state === 'does-not-fit' ? `${view.words} ${instead(lines)}` : view.words;
  return { ...view, words, kept: lines };
}
