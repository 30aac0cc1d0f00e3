/** Leaving the bores as they are: only where every limit that is printed for them is kept. */
import type { Alternative, Assessment, Finding } from '../model.js';
import { blocked, possible, worstVerdict } from './decision.js';
import type { LengthWords } from './length-words.js';
import { worstFigures } from './worst-figures.js';

/**
 * What is held against a limit, and a clearance that is not known yet. The printed diameters hold for a standard bore: one that was
 * `bored` before is judged by its shape and its clearance.
 */
const concerning =
  (bored: boolean) =>
  ({ property, held, size }: Finding): boolean =>
    (held.length > 0 && property.startsWith('cylinder-bore.') && !(bored && property === DIAMETER)) ||
    (property === 'piston.clearance' && (held.length > 0 || size === undefined));
const DIAMETER = 'cylinder-bore.diameter';

/** Places whose own bore (not its clearance, which another piston may mend) is past its limit. */
export function wornOut({ findings }: Assessment, bored: boolean): ReadonlySet<string> {
  const worn = findings.filter((one) => concerning(bored)(one) && !isClearance(one) && one.verdict === 'out');
  return new Set(worn.map(({ place }) => place));
}

export function boreAsIs({ findings }: Assessment, bored: boolean, words: LengthWords): Alternative {
  const judgedOnes = findings.filter(concerning(bored));
  const verdict = worstVerdict(judgedOnes.map((one) => one.verdict));
  const named = {
    id: 'as-is',
    words: 'Leave the bores as they are',
    verdict,
    figures: worstFigures(judgedOnes, words),
  };
  const against = [
    ...judgedOnes.filter((one) => one.verdict !== 'in' && one.verdict !== 'near').map(wrongWith),
    ...(judgedOnes.some(isClearance) ? [] : ['No piston clearance is known, or the sheet prints no limit for it.']),
  ];
  return against.length > 0 ? blocked({ ...named, against }) : possible({ ...named, against: bored ? [BORED] : [] });
}
const isClearance = ({ property }: Finding): boolean => property === 'piston.clearance';

const wrongWith = ({ title, placeName, verdict }: Finding): string =>
  verdict === 'no data'
    ? `${title}, ${placeName}: not known.`
    : verdict === 'check again'
      ? `${title}, ${placeName}: its readings disagree; read it again.`
      : `${title}, ${placeName}: past its limit.`;

const BORED = 'Bored before: the printed diameters hold for standard, so shape and clearance decide.';
