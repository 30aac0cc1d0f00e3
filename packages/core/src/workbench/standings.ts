/** How far each piece of work has come, without its drawings: for lists of many pieces, where a drawing each would be slow. */
import type { Head, Joint } from '../engine/index.js';
import { fastenerMap, gasketChecks, type PartKind, registerOf, valveRecord, walk } from '../plan/index.js';
import type { Bench } from './bench.js';
import type { Progress } from './views.js';

export interface Standing {
  readonly progress: Progress;
  readonly finished: boolean;
}

/** Gasket checks of one head that were found good. */
export function gasketStanding(bench: Bench, head: Head): Standing {
  const checks = gasketChecks(bench.engine, head.id, bench.facts);
  const items = checks?.items ?? [];
  const done = items.filter((item) => item.state === 'good').length;
  return {
    progress: { done, of: items.length, words: `${done} of ${items.length} checked` },
    finished: checks?.finished ?? false,
  };
}

/** Holes of one joint with the right fastener in them; one that should be new and is not does not count. */
export function fastenersStanding(bench: Bench, joint: Joint): Standing {
  const { rows } = fastenerMap(joint, bench.facts);
  const done = rows.filter(
    ({ state, fastener }) => state === 'right' && (!fastener.mustBeNew || fastener.placed?.condition === 'new'),
  ).length;
  return {
    progress: { done, of: rows.length, words: `${done} of ${rows.length} in place` },
    finished: done === rows.length,
  };
}

export interface TighteningStanding extends Standing {
  readonly begun: boolean;
  /** Acts left out, as "stage 2, hole 7: reason". */
  readonly skipped: readonly string[];
}

/** Acts of one joint that are recorded. The words say where the walk stands, or that nobody has begun. */
export function tighteningStanding(bench: Bench, joint: Joint): TighteningStanding {
  const walked = walk(joint, bench.facts);
  const { done, acts, words } = walked.progress;
  const begun = done > 0;
  const where = walked.finished ? 'finished' : begun ? words : `not begun, ${acts} acts`;
  return {
    progress: { done, of: acts, words: where },
    finished: walked.finished,
    begun,
    skipped: walked.skipped.map(({ act, reason }) => `stage ${act.stage}, hole ${act.hole}: skipped, ${reason}`),
  };
}

/** Kept parts that are back in their places. */
export function partsStanding(bench: Bench): Standing & { readonly parts: readonly PartKind[] } {
  const register = registerOf(bench.engine, bench.facts);
  const done = register.places.filter((place) => place.state === 'fitted').length;
  return {
    parts: register.parts,
    progress: { done, of: register.places.length, words: `${done} of ${register.places.length} fitted` },
    finished: register.finished && register.parts.length > 0,
  };
}

/** Valves that are set, and those looked at again after two turns. */
export function valvesStanding(bench: Bench): Standing & { readonly again: Standing & { readonly due: boolean } } {
  const { valves, allSet, allChecked } = valveRecord(bench.engine, bench.facts);
  const of = valves.length;
  const set = valves.filter((stand) => stand.state === 'set' || stand.state === 'checked').length;
  const checked = valves.filter((stand) => stand.state === 'checked').length;
  return {
    progress: { done: set, of, words: `${set} of ${of} valves set` },
    finished: allChecked,
    again: {
      due: allSet,
      progress: { done: checked, of, words: `${checked} of ${of} looked at again` },
      finished: allChecked,
    },
  };
}
