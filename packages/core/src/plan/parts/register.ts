/** Which part of the valve gear goes where: used parts return to the place, end and face that they ran at. */
import { type AdjusterPlace, type Engine, sameValve, type ValveId, valvesOf } from '../../engine/index.js';
import { done, type Outcome, refused } from '../../quantity/outcome.js';
import type { Fact, FactData, PartKind } from '../facts.js';

export type PartFitted = FactData['part-fitted'];
export type PartTagged = FactData['part-tagged'];
export interface PartPlace {
  readonly part: PartKind;
  readonly valve: ValveId;
  readonly tag?: { readonly data: PartTagged; readonly entry?: string };
  readonly fitted?: { readonly data: PartFitted; readonly entry?: string };
  /** `wrong` when the record holds a used part from another place. */
  readonly state: 'open' | 'fitted' | 'wrong';
}
export interface PartRegister {
  readonly parts: readonly PartKind[];
  readonly places: readonly PartPlace[];
  /** What holds for the whole set, in plain words. */
  readonly notes: readonly string[];
  readonly finished: boolean;
}
export type PartRefusal =
  | { readonly code: 'unknown-valve'; readonly valve: ValveId }
  | { readonly code: 'unknown-part'; readonly part: PartKind; readonly valid: readonly PartKind[] }
  | { readonly code: 'used-part-elsewhere'; readonly part: PartKind; readonly from: ValveId; readonly to: ValveId }
  | {
      readonly code: 'other-end';
      readonly part: PartKind;
      readonly valve: ValveId;
      readonly tagged: string;
      readonly given: string;
    }
  | {
      readonly code: 'other-face';
      readonly part: PartKind;
      readonly valve: ValveId;
      readonly tagged: string;
      readonly given: string;
    }
  | { readonly code: 'place-taken'; readonly part: PartKind; readonly valve: ValveId };

/**
 * The parts between cam and valve that are kept apart by place, in the order in which they go back. Empty where the
 * sheet does not describe the valve gear.
 */
export function partsOf(engine: Engine): readonly PartKind[] {
  const gear = engine.valveGear;
  switch (gear?.kind) {
    case undefined:
      return [];
    case 'pushrod':
      return ['lifter', 'pushrod', 'rocker'];
    case 'overhead-rocker':
      return ['rocker'];
    case 'overhead-finger':
      return gear.adjustment === 'hydraulic' ? ['lifter', 'follower'] : ['follower', ...shimOf(gear.adjuster.place)];
    case 'overhead-bucket':
      return ['follower', ...shimOf(gear.adjuster.place)];
  }
}

const shimOf = (place: AdjusterPlace): PartKind[] =>
  place === 'shim-over-bucket' || place === 'shim-under-bucket' ? ['shim'] : [];

/**
 * Every place for every kept part, with its tag and what was fitted; the last fact about a place counts.
 * Source: used flat followers stay with the lobe that they ran on, a new cam takes new ones: common practice, no source.
 */
export function registerOf(engine: Engine, facts: readonly Fact[]): PartRegister {
  const parts = partsOf(engine);
  const places = parts.flatMap((part) => valvesOf(engine).map((valve) => placeOf(part, valve, facts)));
  return { parts, places, notes: notesFor(engine, parts), finished: places.every((one) => one.state === 'fitted') };
}

function placeOf(part: PartKind, valve: ValveId, facts: readonly Fact[]): PartPlace {
  const tag = facts.findLast(
    (one) => one.kind === 'part-tagged' && one.data.part === part && sameValve(one.data.valve, valve),
  );
  const fitted = facts.findLast(
    (one) => one.kind === 'part-fitted' && one.data.part === part && sameValve(one.data.to, valve),
  );
  const place = { part, valve, ...(tag?.kind === 'part-tagged' && { tag: kept(tag) }) };
  if (fitted?.kind !== 'part-fitted') return { ...place, state: 'open' };
  const own = fitted.data.from === 'new' || sameValve(fitted.data.from, valve);
  return { ...place, fitted: kept(fitted), state: own ? 'fitted' : 'wrong' };
}

function kept<D>(fact: { readonly data: D; readonly entry?: string }): { readonly data: D; readonly entry?: string } {
  return { data: fact.data, ...(fact.entry !== undefined && { entry: fact.entry }) };
}

function notesFor(engine: Engine, parts: readonly PartKind[]): readonly string[] {
  if (parts.length === 0) return [];
  const notes = [
    'A used part goes back to its own place, the same end up and the same face to the front; a new one goes anywhere.',
  ];
  if (engine.valveGear?.follower === 'flat')
    notes.push('A new cam takes new flat followers: used ones fit only the lobe that they ran on.');
  return notes;
}

/**
 * Whether a part may go where it is about to go. A part that was never tagged is taken at the person's word, and the
 * answer says so (`tagged: false`).
 */
export function judgePart(
  engine: Engine,
  facts: readonly Fact[],
  fitting: PartFitted,
): Outcome<{ readonly tagged: boolean }, PartRefusal> {
  const { part, to, from } = fitting;
  const { parts, places } = registerOf(engine, facts);
  if (!valvesOf(engine).some((valve) => sameValve(valve, to))) return refused({ code: 'unknown-valve', valve: to });
  const place = places.find((one) => one.part === part && sameValve(one.valve, to));
  if (place === undefined) return refused({ code: 'unknown-part', part, valid: parts });
  if (place.fitted !== undefined) return refused({ code: 'place-taken', part, valve: to });
  if (from === 'new') return done({ tagged: false });
  if (!sameValve(from, to)) return refused({ code: 'used-part-elsewhere', part, from, to });
  return sameWayRound(place, fitting);
}

function sameWayRound({ part, valve, tag }: PartPlace, fitting: PartFitted) {
  const { end, face } = tag?.data ?? {};
  if (end !== undefined && fitting.end !== undefined && fitting.end !== end) {
    return refused({ code: 'other-end' as const, part, valve, tagged: end, given: fitting.end });
  }
  if (face !== undefined && fitting.face !== undefined && fitting.face !== face) {
    return refused({ code: 'other-face' as const, part, valve, tagged: face, given: fitting.face });
  }
  return done({ tagged: tag !== undefined });
}
