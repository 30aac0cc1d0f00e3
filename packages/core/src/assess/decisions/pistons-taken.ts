/** Pistons and rings that bores of one oversize take. */
import type { Assessment, Place } from '../model.js';
import type { BoreTarget } from './bore-targets.js';
import { placesText } from './decision.js';
import { sameLength } from './judged.js';
import type { LengthWords } from './length-words.js';
import { oversizeText, type PistonSet } from './piston-sets.js';
import { piecesOf, shareOut, type Taken } from './stock-taken.js';

/** Bores that get a piston from stock, by the grade that suits them; undefined where every grade does. */
function byGrade(targets: readonly BoreTarget[]) {
  const bare = targets.filter(({ fittedTo }) => fittedTo === undefined);
  const grades = [...new Set(bare.map(({ grade }) => grade))];
  return grades.map((grade) => ({
    grade,
    places: bare.filter((one) => one.grade === grade).map(({ place }) => place),
  }));
}

/** Pistons for the bores that have none; what lies on the bench is taken first. */
export const pistonsTaken = (set: PistonSet, targets: readonly BoreTarget[], words: LengthWords): readonly Taken[] =>
  byGrade(targets).flatMap(({ grade, places }) =>
    shareOut(grade === undefined ? set.grades : [grade], places.length).map(({ part, count }) => ({
      part,
      count,
      size: `${oversizeText(set.oversize, words)}${part.grade === undefined ? '' : `, grade ${part.grade}`}`,
      for: placesText(places),
    })),
  );

const ringsOf = ({ engine }: Assessment, { oversize }: PistonSet) => {
  const own = (engine.stock?.rings ?? []).filter((ring) => sameLength(ring.oversize, oversize));
  return [...new Set(own.map(({ ring }) => ring))].map((kind) => own.filter(({ ring }) => ring === kind));
};

/** Rings of the same oversize for all bores, one of each kind. */
export const ringsTaken = (
  assessment: Assessment,
  set: PistonSet,
  places: readonly Place[],
  words: LengthWords,
): readonly Taken[] =>
  ringsOf(assessment, set).flatMap((parts) =>
    shareOut(parts, places.length).map(({ part, count }) => ({
      part,
      count,
      size: oversizeText(set.oversize, words),
      for: placesText(places),
    })),
  );

/** What there is too little of, in words. */
export function lackingFor(assessment: Assessment, set: PistonSet, targets: readonly BoreTarget[]): readonly string[] {
  const pieces = (parts: Parameters<typeof shareOut>[0]) => parts.reduce((sum, part) => sum + piecesOf(part), 0);
  const tooFew = (had: number, needed: number, what: string) =>
    had < needed ? [`Only ${had} ${what} of this size can be had; ${needed} are needed.`] : [];
  const bare = byGrade(targets);
  const needed = bare.reduce((sum, { places }) => sum + places.length, 0);
  const had = targets.length - needed;
  const free = bare.reduce(
    (sum, { grade, places }) => sum + Math.min(places.length, pieces(grade === undefined ? set.grades : [grade])),
    0,
  );
  return [
    ...tooFew(had + Math.min(free, set.pieces), targets.length, 'pistons'),
    ...ringsOf(assessment, set).flatMap((parts) => tooFew(pieces(parts), targets.length, `${parts[0]?.name}s`)),
  ];
}
