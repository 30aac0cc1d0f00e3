/** From what a person keys on the screens of the running engine to entries of the log. */
import { GAUGES, type HeardPlace, type RunningWhat, runInClock, STOP_REASONS, scheduleOf } from '../../plan/index.js';
import { describeFault, done, type Outcome, parseQuantity, refused } from '../../quantity/index.js';
import { type EntryData, type Reading, runningFacts } from '../../record/index.js';
import type { Bench } from '../bench.js';
import { type Proposal, propose } from '../propose.js';

const SI = { pressure: 'Pa', temperature: 'K', 'angular-speed': 'rad/s' } as const;
type Kept = keyof typeof SI;

/** A typed figure as the log keeps it: the text, and its value in the SI unit. */
function typed(kind: Kept, text: string): Outcome<Reading, string> {
  const read = parseQuantity(kind, text);
  if (!read.ok) return refused(describeFault(read.fault));
  return done({ text: text.trim(), value: read.value.value, unit: SI[kind] });
}

/** The entries for one look at a gauge, or for the load in words. Text with its unit: "3.2 bar", "88 °C", "2000 rpm", "half". */
export function proposeGauge(
  bench: Bench,
  { what, text }: { readonly what: RunningWhat; readonly text: string },
): Proposal {
  if (what === 'load-words') return propose(bench, { kind: 'running-read', data: { what, words: text.trim() } });
  const reading = typed(GAUGES[what].kind as Kept, text);
  return reading.ok ? propose(bench, { kind: 'running-read', data: { what, reading: reading.value } }) : reading;
}

/** The entries for one go at the starter; the pressure as typed. */
export function proposeStart(
  bench: Bench,
  { pressure, ...wish }: Omit<EntryData['start-tried'], 'pressure'> & { readonly pressure?: string },
): Proposal {
  const reading = pressure === undefined ? undefined : typed('pressure', pressure);
  if (reading !== undefined && !reading.ok) return reading;
  return propose(bench, { kind: 'start-tried', data: { ...wish, ...(reading && { pressure: reading.value }) } });
}

/** The entries for a line of the run-in that has no time of its own: begun and over at once. Refused while the clock runs. */
export function proposeLineDone(bench: Bench, step: number): Proposal {
  const begun = propose(bench, { kind: 'run-in-begun', data: { step } });
  if (!begun.ok) return begun;
  const facts = runningFacts(bench.state);
  const last = facts.at(-1);
  const clock = last && runInClock(scheduleOf(bench.engine), facts, last.at);
  if (clock?.state === 'running') return refused('The clock of the run-in runs: stop it first.');
  const why = stopReason('over');
  return done([...begun.value, { kind: 'run-in-stopped', data: { why } }]);
}
const stopReason = (id: string): string => STOP_REASONS.find((one) => one.id === id)!.words;

/** The entries for a compression reading, as typed. */
export function proposeCompression(
  bench: Bench,
  { text, ...wish }: Omit<EntryData['compression-read'], 'reading'> & { readonly text: string },
): Proposal {
  const reading = typed('pressure', text);
  return reading.ok ? propose(bench, { kind: 'compression-read', data: { ...wish, reading: reading.value } }) : reading;
}

export interface LeakageWish {
  readonly cylinder: number;
  /** As typed. */
  readonly supply: string;
  readonly held: string;
  readonly heard?: HeardPlace;
  readonly tester?: string;
}
/** The entries for a leakage reading, both pressures as typed. */
export function proposeLeakage(bench: Bench, { supply, held, ...wish }: LeakageWish): Proposal {
  const given = typed('pressure', supply);
  if (!given.ok) return refused(`supply: ${given.fault}`);
  const kept = typed('pressure', held);
  if (!kept.ok) return refused(`held: ${kept.fault}`);
  return propose(bench, { kind: 'leakage-read', data: { ...wish, supply: given.value, held: kept.value } });
}
