/**
 * D09: which piston goes into which bore. Alternatives side by side: as they are tagged, and the exact best for each of three goals;
 * blocked with the bores that find no piston.
 */
import type { Goal, PartsPlan } from '../../calc/selection/index.js';
import type { Alternative, Assessment } from '../model.js';
import {
  blocked,
  type Decider,
  decided,
  findingAt,
  listed,
  placesOf,
  placesText,
  possible,
  waiting,
  worstVerdict,
} from './decision.js';
import { closed, middle } from './judged.js';
import type { LengthWords } from './length-words.js';
import { judgedPairs, measureOf, summary } from './piston-pairs.js';
import { type BorePlace, pistonPlaces, type TaggedPiston } from './piston-places.js';
import { makersPistons } from './piston-sets.js';
import { fewestBought } from './pistons-bought.js';
import { helpfulPiston, pistonsFor } from './pistons-search.js';

const QUESTION = {
  id: 'pistons-to-bores',
  scope: 'all',
  title: 'Pistons to bores',
  question: 'Which piston goes into which bore?',
  area: 'pistons',
  sources: ['derived-here'],
} as const;

const GOALS: readonly { readonly goal: Goal; readonly words: string }[] = [
  { goal: 'least-spread', words: 'Clearances as alike as can be' },
  { goal: 'least-total', words: 'Nearest to the middle of the window in all' },
  { goal: 'smallest-worst', words: 'The worst one as near to the middle as can be' },
];

export const pistonsToBores: Decider = (assessment, words) => {
  if (placesOf(assessment, 'cylinder-bore').length === 0) return [];
  const { bores, pistons, missing } = pistonPlaces(assessment);
  if (missing.length > 0) return [waiting(QUESTION, missing)];
  const plans = GOALS.map(({ goal, words: title }) => ({ goal, title, found: pistonsFor(bores, pistons, goal) }));
  const tagged = asTagged(assessment, { bores, pistons, words });
  const best = plans.map(({ goal, title, found }) =>
    found.ok
      ? planned({ id: goal, words: title }, bores, pistons, found.value, words)
      : blocked({
          id: goal,
          words: title,
          figures: [],
          verdict: 'out',
          against: [shortOf(bores, pistons, found.fault.places, found.fault.parts)],
        }),
  );
  const served = plans.some(({ found }) => found.ok);
  const bought = served ? undefined : fewestBought(assessment, bores, pistons, words);
  const alternatives = [...best.toSorted(byVerdict), ...(bought === undefined ? [] : [bought]), tagged];
  return [
    decided(QUESTION, {
      alternatives,
      proof: proofOf(bores, pistons, plans[0]?.found.ok ? plans[0].found.value : undefined, words),
      working: bores.map((one) => workingOf(one, words)),
      cautions: helpOf(assessment, bores, pistons, words),
    }),
  ];
};

interface Matching {
  readonly bores: readonly BorePlace[];
  readonly pistons: readonly TaggedPiston[];
  readonly words: LengthWords;
}
/** Sure ones first; the goals keep their order else. */
const byVerdict = (a: Alternative, b: Alternative): number => Number(a.verdict !== 'in') - Number(b.verdict !== 'in');

interface Named {
  readonly id: string;
  readonly words: string;
}

function planned(
  named: Named,
  bores: readonly BorePlace[],
  pistons: readonly TaggedPiston[],
  plan: PartsPlan,
  words: LengthWords,
): Alternative {
  const chosen = plan.partOf.map((part) => pistons[part] as TaggedPiston);
  const { figures, verdict, out } = judgedPairs(bores, chosen, words);
  const drawn = { ...named, verdict, figures: [...figures, ...summary(plan, words)] };
  return out.length > 0 ? blocked({ ...drawn, against: out }) : possible(drawn);
}

/** Each piston in the bore that it is tagged with: used parts that run together are judged by the wear limit where one is printed. */
function asTagged(assessment: Assessment, { bores, pistons, words }: Matching): Alternative {
  const named = { id: 'as-tagged', words: 'Each piston in the bore that it is tagged with' };
  const chosen = bores.flatMap(({ place }) => pistons.find((one) => one.place.id === place.id) ?? []);
  if (chosen.length < bores.length)
    return blocked({ ...named, figures: [], verdict: 'no data', against: ['Not every bore has a piston of its own.'] });
  const { figures, out } = judgedPairs(bores, chosen, words);
  const findings = bores.flatMap(({ place }) => findingAt(assessment, 'piston.clearance', place.id) ?? []);
  const verdict = worstVerdict(findings.map((one) => one.verdict));
  const past = findings.filter(
    (one) => one.verdict === 'out' || one.verdict === 'check again' || one.verdict === 'no data',
  );
  const drawn = { ...named, verdict, figures: [...figures, ...summary(measureOf(bores, chosen), words)] };
  if (past.length > 0)
    return blocked({ ...drawn, against: past.map((one) => `${one.placeName}: ${one.title}, ${one.words}.`) });
  return possible({
    ...drawn,
    against: out.length > 0 ? [`Worn past the new range, inside the wear limit: ${out.join(' ')}`] : [],
  });
}

const shortOf = (
  bores: readonly BorePlace[],
  pistons: readonly TaggedPiston[],
  places: readonly number[],
  parts: readonly number[],
): string => {
  const names = placesText(places.flatMap((at) => bores[at]?.place ?? []));
  if (parts.length === 0) return `No piston gives the clearance asked for in ${names}.`;
  const served = listed(parts.map((at) => `piston ${pistons[at]?.place.id}`));
  return `${names} may take only ${served}: too few for all of them.`;
};

function proofOf(
  bores: readonly BorePlace[],
  pistons: readonly TaggedPiston[],
  plan: PartsPlan | undefined,
  words: LengthWords,
): string {
  if (plan === undefined) return 'No way of sharing out these pistons keeps every clearance in its window.';
  return `Of all ways to put ${pistons.length} pistons into ${bores.length} bores with every clearance in its window, none has a smaller difference between the largest and the smallest than ${words.length(plan.spread)} (balanced assignment, exact).`;
}

const workingOf = ({ place, bore, asked, limit }: BorePlace, words: LengthWords): string =>
  `${place.name}: bore ${words.sure(bore.value, bore.u)}; clearance asked ${words.window(asked)} (${limit.from.text}), so a piston of ${words.window({ low: bore.value - asked.high, high: bore.value - asked.low })}.`;

/** One piston out of the printed sizes that would help most. */
function helpOf(
  assessment: Assessment,
  bores: readonly BorePlace[],
  pistons: readonly TaggedPiston[],
  words: LengthWords,
): readonly string[] {
  const skirts = makersPistons(assessment.engine).flatMap(({ skirt }) => (skirt && closed(skirt)) ?? []);
  const sizes = [...new Set(skirts.map(middle))];
  const help = helpfulPiston(bores, pistons, 'least-total', sizes);
  if (help === undefined) return [];
  const gain =
    help.gain === undefined ? 'with it every bore can be served' : `${words.length(help.gain)} nearer in all`;
  return [`One more piston that would help most: ${words.length(help.size)} (${gain}).`];
}
