import type { Finding, ShownFigure } from '../model.js';
import { figure } from './decision.js';
import type { LengthWords } from './length-words.js';

/** The size of each kind that lies nearest to its limit, or farthest past it. */
export function worstFigures(findings: readonly Finding[], words: LengthWords): readonly ShownFigure[] {
  const properties = [...new Set(findings.map(({ property }) => property))];
  return properties.flatMap((property) => {
    const sized = findings.filter((one) => one.property === property && one.size !== undefined);
    const [worst] = sized.toSorted((a, b) => roomOf(a) - roomOf(b));
    if (worst?.size === undefined) return [];
    return [figure(`${worst.title}, the worst`, `${words.sure(worst.size.value, worst.size.u)}, ${worst.placeName}`)];
  });
}

/** Distance to the limit that decides about use; unknown counts as none. */
function roomOf({ held }: Finding): number {
  const worn = held.filter(({ against }) => against === 'wear');
  const distances = (worn.length > 0 ? worn : held).flatMap(({ distance }) => distance ?? []);
  return Math.min(Number.POSITIVE_INFINITY, ...distances);
}
