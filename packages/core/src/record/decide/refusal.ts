/** When the record says no, and with what data. The sentence is made at the edge. */
import type { ValveId } from '../../engine/model.js';
import type { Block, FastenerJudgement, PartRefusal, Seen } from '../../plan/index.js';
import type { EntryData, EntryKind } from '../entry.js';
import type { DataFault } from '../reading/index.js';

/** Something a person wants recorded; it has the shape of the entry that would record it. */
export type Command = { [K in EntryKind]: { readonly kind: K; readonly data: EntryData[K] } }[EntryKind];
/** An entry to write: kind and data, still without time, person and hash. */
export type NewEntry = Command;

export type Refusal =
  | DataFault
  | PartRefusal
  /** Rules of joints, parts and valves need the engine of a loaded sheet. */
  | { readonly code: 'no-sheet' }
  | { readonly code: 'reason-needed' }
  | { readonly code: 'unknown-joint'; readonly joint: string; readonly valid: readonly string[] }
  | { readonly code: 'unknown-head'; readonly head: string; readonly valid: readonly string[] }
  | { readonly code: 'unknown-hole'; readonly hole: string; readonly valid: readonly string[] }
  | { readonly code: 'unknown-item'; readonly item: string; readonly valid: readonly string[] }
  | { readonly code: 'unknown-act'; readonly stage: number; readonly hole: string; readonly stages: number }
  | { readonly code: 'unknown-entry'; readonly entry: string }
  | { readonly code: 'blocked'; readonly blocks: readonly Block[] }
  | { readonly code: 'place-first'; readonly hole: string; readonly instance: number; readonly mustBeNew: boolean }
  | { readonly code: 'look-for-mark'; readonly stage: number; readonly hole: string }
  | { readonly code: 'stage-skipped'; readonly hole: string; readonly stage: number; readonly missing: number }
  | { readonly code: 'out-of-order'; readonly given: string; readonly expected: string }
  | { readonly code: 'joint-finished'; readonly joint: string }
  | {
      readonly code: 'other-fastener';
      readonly hole: string;
      readonly expected: { readonly instance: number; readonly round: number };
      readonly given: { readonly instance: number; readonly round: number };
    }
  | { readonly code: 'wrong-answer'; readonly seen: Seen; readonly valid: readonly Seen[] }
  | { readonly code: 'reading-needed'; readonly hole: string }
  | { readonly code: 'reading-disagrees'; readonly reading: string; readonly seen: Seen; readonly says: Seen }
  | { readonly code: 'wrong-fastener'; readonly judgement: FastenerJudgement }
  | { readonly code: 'already-placed'; readonly hole: string; readonly instance: number }
  | { readonly code: 'must-be-new'; readonly hole: string; readonly instance: number }
  | { readonly code: 'must-be-measured'; readonly hole: string; readonly instance: number }
  | { readonly code: 'not-set-yet'; readonly valve: ValveId }
  | { readonly code: 'unknown-instrument'; readonly instrument: string; readonly valid: readonly string[] }
  /** The reading is a length where the gauge measures mass, or a unit does not belong to what is measured. */
  | { readonly code: 'other-unit'; readonly given: string; readonly measured: string; readonly expected: string }
  | { readonly code: 'not-a-slot'; readonly slot: string }
  | { readonly code: 'other-occasion'; readonly slot: string; readonly given: number; readonly expected: number }
  | { readonly code: 'read-already'; readonly slot: string; readonly reading: string }
  | { readonly code: 'nothing-to-repeat'; readonly slot: string }
  | { readonly code: 'no-resolution'; readonly resolution: string }
  | { readonly code: 'range-turned'; readonly low: string; readonly high: string }
  | { readonly code: 'no-length'; readonly given: string }
  | { readonly code: 'not-a-day'; readonly given: string }
  | { readonly code: 'no-temperature' }
  | { readonly code: 'unknown-cylinder'; readonly cylinder: number; readonly valid: readonly number[] }
  /** Both wheel readings of a stop are one place. */
  | { readonly code: 'no-wheel' }
  | { readonly code: 'same-stop'; readonly reading: string }
  /** No wheel and no indicator shows this. */
  | { readonly code: 'reading-out-of-range'; readonly reading: string; readonly valid: string }
  | { readonly code: 'unknown-figure'; readonly key: string; readonly valid: readonly string[] }
  | { readonly code: 'not-a-figure'; readonly title: string; readonly given: string; readonly valid: string }
  | { readonly code: 'no-places'; readonly feature: string }
  | { readonly code: 'photo-too-large'; readonly bytes: number; readonly most: number }
  | { readonly code: 'not-running' }
  | { readonly code: 'unknown-step'; readonly step: number; readonly steps: number }
  /** Neither a figure nor words, or both. */
  | { readonly code: 'one-answer'; readonly what: string }
  | { readonly code: 'number-out-of-range'; readonly what: string; readonly given: number; readonly valid: string }
  /** A wet reading is held against a dry one. */
  | { readonly code: 'dry-first'; readonly cylinder: number }
  | { readonly code: 'holds-more'; readonly held: string; readonly supply: string }
  | { readonly code: 'never-due'; readonly what: string }
  | { readonly code: 'unknown-service'; readonly what: string; readonly valid: readonly string[] }
  | { readonly code: 'hours-back'; readonly given: number; readonly noted: number };
