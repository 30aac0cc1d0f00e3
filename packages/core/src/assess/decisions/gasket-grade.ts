/** D47: which head gasket the protrusion of the pistons asks for. */
import { type GradeBasis, gradeFigure } from '../../calc/metrology/index.js';
import type { HeadGasketStock } from '../../engine/index.js';
import type { Alternative, Assessment, Decision, Place } from '../model.js';
import {
  blocked,
  type Decider,
  decided,
  figure,
  listed,
  notMeasured,
  placesOf,
  possible,
  sizeAt,
  waiting,
} from './decision.js';
import { judged, type Known } from './judged.js';
import type { LengthWords } from './length-words.js';
import { stationValues } from './measured-at.js';
import { buysOf, shortOf } from './stock-taken.js';

const HEIGHT = 'piston-protrusion.height';
const BASES: Readonly<Record<GradeBasis, string>> = {
  'highest-piston-mean': 'highest mean of a piston',
  'highest-reading': 'highest single reading',
  'mean-of-all': 'mean of all pistons',
};
/** Without a rule in the sheet the highest piston decides: the thicker gasket is the one that does no harm. */
const SAFE: GradeBasis = 'highest-piston-mean';

type Graded = HeadGasketStock & { readonly protrusion: NonNullable<HeadGasketStock['protrusion']> };
interface Protrusions {
  readonly readings: readonly (readonly number[])[];
  /** Uncertainty of a mean, the largest of them. */
  readonly u: number | undefined;
}

/** Rule by which the maker forms the figure, where a row of the sheet says so. */
function basisOf({ engine }: Assessment): { readonly basis: GradeBasis; readonly stated: boolean } {
  const rule = engine.limits.find(({ part, what }) => /gasket/i.test(`${part} ${what}`) && /protru/i.test(what))?.rule;
  const stated = rule !== undefined && Object.hasOwn(BASES, rule);
  return { basis: stated ? (rule as GradeBasis) : SAFE, stated };
}

function protrusionsOf(assessment: Assessment, places: readonly Place[]): Protrusions {
  const doubts = places.map(({ id }) => sizeAt(assessment, HEIGHT, id)?.u);
  return {
    readings: places.map((place) => stationValues(assessment, 'piston-protrusion', place).map(({ value }) => value)),
    u: doubts.some((one) => one === undefined) ? undefined : Math.max(...doubts.map((one) => one ?? 0)),
  };
}

function gasketAlternative(
  gasket: Graded,
  chosen: Known,
  highest: number,
  heads: number,
  words: LengthWords,
): Alternative {
  const verdict = judged(chosen, gasket.protrusion);
  const room = gasket.thickness - highest;
  const draft = {
    id: gasket.id,
    words: `${gasket.name}, ${words.length(gasket.thickness)}: for ${words.window(gasket.protrusion)}`,
    figures: [
      figure('protrusion that decides', words.sure(chosen.value, chosen.u)),
      figure('least room from piston to head face', words.length(room)),
    ],
    verdict,
  };
  if (verdict === 'out') {
    const low = chosen.value < (gasket.protrusion.low ?? Number.NEGATIVE_INFINITY);
    return blocked({ ...draft, against: [`the pistons stand ${low ? 'too low' : 'too high'} for it`] });
  }
  const taken = [{ part: gasket, count: heads, size: words.length(gasket.thickness), for: 'cylinder head' }];
  const short = shortOf(taken);
  if (short.length > 0) return blocked({ ...draft, against: short });
  return possible({
    ...draft,
    against:
      verdict === 'near' ? ['the uncertainty reaches into the next grade: measure the highest piston again'] : [],
    buys: buysOf(taken),
  });
}

/** Each way to form the figure, and the gasket that it would choose. */
function basesSide(graded: readonly Graded[], { readings }: Protrusions, words: LengthWords) {
  return (Object.keys(BASES) as GradeBasis[]).map((basis) => {
    const value = gradeFigure(readings, basis);
    const fits = graded.filter(
      ({ protrusion: { low, high } }) => value >= (low ?? -Infinity) && value <= (high ?? Infinity),
    );
    return {
      basis,
      text: `${BASES[basis]}: ${words.length(value)}, ${listed(fits.map(({ name }) => name)) || 'no gasket'}`,
      key: fits.map(({ id }) => id).join(),
    };
  });
}

function gradeDecision(
  assessment: Assessment,
  places: readonly Place[],
  graded: readonly Graded[],
  words: LengthWords,
): Decision {
  const question = {
    id: 'gasket-grade',
    scope: 'all',
    title: 'Head gasket by piston protrusion',
    question: 'Which thickness of head gasket do the pistons ask for?',
    area: 'heads',
    sources: ['shop-practice'],
  } as const;
  const missing = notMeasured(assessment, 'piston-protrusion', HEIGHT);
  if (missing.length > 0) return waiting(question, missing);
  const seen = protrusionsOf(assessment, places);
  const { basis, stated } = basisOf(assessment);
  const chosen: Known = { value: gradeFigure(seen.readings, basis), u: seen.u };
  const highest = Math.max(...seen.readings.flat());
  const heads = Math.max(1, assessment.engine.heads.length);
  const rank = { in: 0, near: 1, 'no data': 2, 'check again': 2, out: 3 } as const;
  const alternatives = graded
    // Of two that are as near the thicker first: it can only leave more room.
    .toSorted((a, b) => b.thickness - a.thickness)
    .map((gasket) => gasketAlternative(gasket, chosen, highest, heads, words))
    .toSorted((a, b) => rank[a.verdict] - rank[b.verdict]);
  const bases = basesSide(graded, seen, words);
  const border = alternatives.filter(({ verdict }) => verdict === 'near').length > 1;
  return decided(question, {
    alternatives,
    proof: `${BASES[basis]} decides ${stated ? 'as the sheet says' : '(the sheet does not say which figure decides; the highest piston is the safe one)'}.`,
    working: bases.map(({ text }) => text),
    cautions: [
      ...(new Set(bases.map(({ key }) => key)).size > 1 && !stated
        ? ['The ways to form the figure choose different gaskets: look up which one the maker means.']
        : []),
      ...(border
        ? ['The figure lies on the border of two grades, nearer than it can be measured: the thicker one stands first.']
        : []),
      'All pistons of a head take one gasket; block face or liners that are cut change the protrusion.',
    ],
  });
}

/** Gasket grade; none where the sheet's gaskets are not graded by protrusion. */
export const gasketGrade: Decider = (assessment, words) => {
  const places = placesOf(assessment, 'piston-protrusion');
  const graded = (assessment.engine.stock?.headGaskets ?? []).filter(
    (one): one is Graded => one.protrusion !== undefined,
  );
  return places.length === 0 || graded.length === 0 ? [] : [gradeDecision(assessment, places, graded, words)];
};
