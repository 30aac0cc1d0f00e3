/**
 * The computed preload beside a printed torque (decision D21: shown, never obeyed over the sheet). It tells a person
 * what the same reading makes of another lubricant, and refuses to guess where the thread or the dressing is unknown.
 */
import { loadAt, preloadBand, readThread, strengthOf, stressArea, type Thread } from '../calc/fasteners/index.js';
import type { Act } from '../plan/index.js';
import { formatQuantity, type Length, type Ratio, ratio, type Torque } from '../quantity/index.js';
import type { Advisory } from './views.js';

/** Friction in thread and under head by what is on them. Common practice, no source; a lubricant maker's figure wins. */
const FRICTION: Readonly<Record<string, { readonly low: number; readonly high: number } | undefined>> = {
  oil: { low: 0.1, high: 0.16 },
  'assembly-lube': { low: 0.08, high: 0.14 },
  sealer: { low: 0.1, high: 0.18 },
  dry: { low: 0.14, high: 0.26 },
  'anti-seize': { low: 0.08, high: 0.14 },
};
/** Clicking wrench, unknown calibration: common practice, no source. */
const WRENCH = ratio(0.06);
/** Bearing outside and hole of an ordinary hexagon head in diameters: about 1.5 and 1.1. Common practice, no source. */
const ring = (thread: Thread) => ({
  outside: (thread.diameter * 1.5) as Length,
  hole: (thread.diameter * 1.1) as Length,
});

const kilonewtons = (force: number) => `${Math.round(force / 100) / 10} kN`;

function proofLine(act: Act, thread: Thread, most: number): readonly string[] {
  const name = act.fastener?.strengthClass;
  if (name === undefined) return ['The strength class is not stated: how near this is to the proof load is unknown.'];
  const strength = strengthOf(name, thread.diameter);
  if (!strength.ok)
    return [`Strength class ${name} is not in the tables: how near this is to the proof load is unknown.`];
  const proof = loadAt(stressArea(thread), strength.value.proof);
  return [
    `Proof load of class ${name}: ${kilonewtons(proof)}; the upper end is ${Math.round((most / proof) * 100)} % of it.`,
  ];
}

/**
 * Band of preloads that the act's torque may make on its fastener as the sheet dresses it. Undefined for acts that are
 * not by torque, for unreadable threads and for dressings whose friction is unknown.
 */
export function advisoryOf(act: Act): Advisory | undefined {
  const { fastener, target } = act;
  const torque = target.high ?? target.low;
  if (act.kind !== 'torque' || fastener === undefined || torque === undefined) return undefined;
  const thread = readThread(fastener.thread);
  const friction = FRICTION[act.onThread ?? ''];
  if (!thread.ok || friction === undefined) return undefined;
  const band = { low: friction.low as Ratio, high: friction.high as Ratio };
  const preload = preloadBand(thread.value, ring(thread.value), torque as Torque, WRENCH, band, 'exact');
  return {
    words: `With ${act.onThread} on the thread this torque makes a preload of about ${kilonewtons(preload.least)} to ${kilonewtons(preload.most)}. For your eye only: tighten to the sheet’s figure.`,
    working: [
      `${fastener.thread}, ${formatQuantity('torque', torque, 'N·m', 0)}, friction ${friction.low} to ${friction.high} in thread and under head (common practice, no source), wrench ±6 %`,
      ...proofLine(act, thread.value, preload.most),
      'Changing what is on the thread changes the preload at the same reading; the printed torque holds only for the printed dressing.',
    ],
    sources: ['VDI 2230 part 1, long form (from memory)', 'ISO 898-1 and SAE J429 strength tables'],
  };
}
