import type { Engine } from '../../engine/index.js';
import { indexOfLimits } from '../limits/index-of-limits.js';
import { highestNumber } from '../limits/scope-words.js';
import type { Crankpin } from './anatomy.js';

/** A number of journals, and what was taken for granted where the sheet does not say it. */
export interface JournalCount {
  readonly count: number;
  readonly assumed?: string;
}

/**
 * Crankpins from the front: those that the sheet names; else one for each cylinder, in a vee one for the two cylinders that stand beside
 * each other.
 */
export function crankpinsOf({ layout }: Engine): readonly Crankpin[] {
  const pins = new Map<number, number[]>();
  const inOrder = [...layout.cylinders].sort((a, b) => a.place - b.place);
  for (const [index, cylinder] of inOrder.entries()) {
    const number = cylinder.crankpin ?? (layout.form === 'vee' ? Math.floor(index / layout.banks.length) : index) + 1;
    pins.set(number, [...(pins.get(number) ?? []), cylinder.number]);
  }
  return [...pins].sort(([a], [b]) => a - b).map(([number, cylinders]) => ({ number, cylinders }));
}

/** Main journals: as the sheet says or numbers them; else one more than the crankpins, in an opposed engine one between each pair. */
export function mainJournals(engine: Engine): JournalCount {
  const stated = engine.inspection?.mainJournals;
  if (stated !== undefined) return { count: stated };
  const named = namedBy(engine, ['main-journal.diameter', 'main-bearing.clearance', 'main-housing.diameter']);
  if (named !== undefined) return { count: named, assumed: `${named} main journals, as the limits number them` };
  const pins = crankpinsOf(engine).length;
  const own = engine.layout.form === 'opposed' ? Math.ceil(pins / 2) + 1 : pins + 1;
  const why = engine.layout.form === 'opposed' ? 'one at each end of every opposed pair' : 'one beside every crankpin';
  return { count: own, assumed: `${own} main journals, ${why}: the sheet does not say how many` };
}

/** Journals of one camshaft: as the sheet says or numbers them; else as many as the mains, overhead one more than the cylinders of a bank. */
export function camJournals(engine: Engine): JournalCount {
  const stated = engine.inspection?.camJournals;
  if (stated !== undefined) return { count: stated };
  const named = namedBy(engine, [
    'cam-journal.diameter',
    'cam-bearing.diameter',
    'cam-housing.diameter',
    'cam-bearing.clearance',
  ]);
  if (named !== undefined) return { count: named, assumed: `${named} cam journals, as the limits number them` };
  const overhead = engine.valveGear !== undefined && engine.valveGear.kind !== 'pushrod';
  if (!overhead) {
    const { count } = mainJournals(engine);
    return { count, assumed: `${count} cam journals, as many as mains: the sheet does not say how many` };
  }
  const count = Math.ceil(engine.layout.cylinders.length / engine.layout.banks.length) + 1;
  return {
    count,
    assumed: `${count} journals on each camshaft, one beside every cylinder: the sheet does not say how many`,
  };
}

function namedBy(engine: Engine, properties: readonly string[]): number | undefined {
  const index = indexOfLimits(engine);
  const numbers = properties.flatMap((property) => (index.get(property) ?? []).map(highestNumber));
  const known = numbers.filter((each) => each !== undefined);
  return known.length === 0 ? undefined : Math.max(...known);
}
