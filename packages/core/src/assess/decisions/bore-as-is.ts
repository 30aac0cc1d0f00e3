/** Leaving the bores as they are: only where every limit that is printed for them is kept. */
import type { Alternative, Assessment, Finding } from '../model.js';
import { blocked, figure, possible, worstVerdict } from './decision.js';
import type { LengthWords } from './length-words.js';

/** What is held against a limit, and a clearance that is not known yet. */
const concerns = ({ property, held, size }: Finding): boolean =>
  (held.length > 0 && property.startsWith('cylinder-bore.')) ||
  (property === 'piston.clearance' && (held.length > 0 || size === undefined));

/** Places whose own bore (not its clearance, which another piston may mend) is past its limit. */
export function wornOut({ findings }: Assessment): ReadonlySet<string> {
  const worn = findings.filter((one) => concerns(one) && one.property !== 'piston.clearance' && one.verdict === 'out');
  return new Set(worn.map(({ place }) => place));
}

export function boreAsIs({ findings }: Assessment, words: LengthWords): Alternative {
  const judgedOnes = findings.filter(concerns);
  const verdict = worstVerdict(judgedOnes.map((one) => one.verdict));
  const named = {
    id: 'as-is',
    words: 'Leave the bores as they are',
    verdict,
    figures: [...largestOf(judgedOnes, words)],
  };
  const against = [
    ...judgedOnes.filter((one) => one.verdict !== 'in' && one.verdict !== 'near').map(wrongWith),
    ...(judgedOnes.some(({ property }) => property === 'cylinder-bore.diameter') || judgedOnes.some(isClearance)
      ? []
      : ['The sheet prints neither a limit for the bore nor one for the piston clearance.']),
    ...(judgedOnes.some(isClearance) ? [] : ['No piston clearance is known, or the sheet prints no limit for it.']),
  ];
  return against.length > 0 ? blocked({ ...named, against }) : possible(named);
}
const isClearance = ({ property }: Finding): boolean => property === 'piston.clearance';

const wrongWith = ({ title, placeName, verdict }: Finding): string =>
  verdict === 'no data'
    ? `${title}, ${placeName}: not known.`
    : verdict === 'check again'
      ? `${title}, ${placeName}: its readings disagree; read it again.`
      : `${title}, ${placeName}: past its limit.`;

/** The worst of each property. */
function* largestOf(findings: readonly Finding[], words: LengthWords) {
  for (const property of new Set(findings.map((one) => one.property))) {
    const sized = findings.filter((one) => one.property === property && one.size !== undefined);
    const most = sized.toSorted((a, b) => (b.size?.value ?? 0) - (a.size?.value ?? 0))[0];
    if (most?.size !== undefined)
      yield figure(`Largest ${most.title}`, `${words.sure(most.size.value, most.size.u)}, ${most.placeName}`);
  }
}
