/**
 * D02, D03: the smallest oversize that cleans up all bores and exists as a piston. Alternatives side by side: leave the bores, each
 * oversize that can be had, only the worn bores bored or sleeved.
 */
import type { Alternative, Assessment, Decision } from '../model.js';
import { boreAsIs, wornOut } from './bore-as-is.js';
import { type Boring, cutOf } from './bore-cut.js';
import { boreOrder, cleanUpAllowance } from './bore-orders.js';
import type { BoreTarget } from './bore-targets.js';
import { cutBefore } from './cut-before.js';
import { blocked, type Decider, decided, notMeasured, placesOf, placesText, possible, waiting } from './decision.js';
import { middle } from './judged.js';
import type { LengthWords } from './length-words.js';
import { makersPistons, oversizeText, type PistonSet, pistonSets } from './piston-sets.js';
import { pistonsTaken, ringsTaken } from './pistons-taken.js';
import { someBores } from './some-bores.js';
import { buysOf } from './stock-taken.js';
import { type WornBore, wornBores } from './worn-bore.js';

const QUESTION = {
  id: 'bore-oversize',
  scope: 'all',
  title: 'Bores',
  question: 'To which size are the bores finished?',
  area: 'block',
  sources: ['smallest-oversize', 'bored-size', 'derived-here'],
} as const;

export const boreOversize: Decider = (assessment, words) => {
  if (placesOf(assessment, 'cylinder-bore').length === 0) return [];
  const { crankTrain } = assessment.engine;
  const sets = pistonSets(makersPistons(assessment.engine));
  const missing = [
    ...notMeasured(assessment, 'cylinder-bore', 'cylinder-bore.diameter'),
    ...(crankTrain.bore === undefined ? ['bore: the sheet does not give the standard size'] : []),
    ...(sets.length === 0 ? ['pistons: the sheet lists none that can be had (stock, pistons)'] : []),
  ];
  if (missing.length > 0 || crankTrain.bore === undefined) return [waiting(QUESTION, missing)];
  return [choose({ assessment, words, sets, standard: crankTrain.bore.value })];
};

function choose(boring: Boring): Decision {
  const { assessment, words, sets, standard } = boring;
  const oversizes = sets.map(({ oversize }) => oversize);
  const bores = wornBores(assessment, standard, oversizes);
  const bored = cutBefore(assessment, 'cylinder-bore', 'hole', oversizes) > 0;
  const cuts = sets.filter(({ oversize }) => oversize > 0).map((set) => cutTo(boring, set, bores));
  const sure = cuts.filter(({ alternative }) => alternative.verdict !== 'near').map(({ alternative }) => alternative);
  const unsure = cuts.filter(({ alternative }) => alternative.verdict === 'near').map(({ alternative }) => alternative);
  const alternatives = [
    boreAsIs(assessment, bored, words),
    ...sure,
    ...unsure,
    ...someBores(boring, bores, wornOut(assessment, bored)),
  ];
  const allowance = cleanUpAllowance(assessment);
  return decided(QUESTION, {
    alternatives,
    proof: proofOf(alternatives, cuts, words),
    working: [
      ...bores.map((bore) => workingOf(bore, words)),
      `Clean-up allowance ${words.length(allowance.value)} on diameter (${allowance.from}).`,
    ],
    cautions: [
      'Pits and scores that the gauge does not touch come on top of the readings.',
      ...(otherForms(assessment) ? [OTHER_FORMS] : []),
      ...(bores.some(({ wall }) => wall === undefined)
        ? ['The walls were not measured: how thin they become is not known.']
        : []),
    ],
  });
}

const OTHER_FORMS =
  'Pistons are counted in the form that the maker fits; where the combination is decided for another form, buy that one in this oversize.';
const otherForms = ({ engine }: Assessment): boolean =>
  (engine.stock?.pistons ?? []).some(({ form }) => form !== undefined);

interface Cut {
  readonly set: PistonSet;
  readonly alternative: Alternative;
  /** Bore with the least left over its need, and how much; below zero it does not clean up. */
  readonly tightest?: { readonly bore: WornBore; readonly spare: number };
}

/** One oversize for all bores. */
function cutTo(boring: Boring, set: PistonSet, bores: readonly WornBore[]): Cut {
  const { assessment, words } = boring;
  const cut = cutOf(boring, set, bores);
  const named = {
    id: `bore-${Math.round(set.oversize * 1e6)}`,
    words: `Bore all to ${oversizeText(set.oversize, words)}`,
  };
  if (cut === undefined) {
    const against = [
      'No bore suits every piston of this set, or the sheet prints no clearance: measure the pistons first.',
    ];
    return { set, alternative: blocked({ ...named, figures: [], verdict: 'no data', against }) };
  }
  const { figures, against, verdict, tightest, targets } = cut;
  if (against.length > 0)
    return { set, tightest, alternative: blocked({ ...named, figures, verdict: 'out', against }) };
  const places = bores.map(({ place }) => place);
  const work = {
    id: 'bore/all',
    operation: `bore and hone to ${oversizeText(set.oversize, words)}`,
    targets,
    notes: axisNotes(bores, targets, words),
  };
  return {
    set,
    tightest,
    alternative: possible({
      ...named,
      figures,
      verdict,
      orders: [boreOrder(assessment, work, words)],
      buys: buysOf([...pistonsTaken(set, targets, words), ...ringsTaken(assessment, set, places, words)]),
    }),
  };
}

/** Bores that clean up only where the bar follows the wear. */
function axisNotes(bores: readonly WornBore[], targets: readonly BoreTarget[], words: LengthWords): readonly string[] {
  const off = bores.filter((bore, at) => {
    const target = targets[at];
    return target !== undefined && middle(target.window) < bore.held.value;
  });
  if (off.length === 0) return [];
  const most = Math.max(...off.map(({ shift }) => shift));
  return [
    `Centre the bar on the worn bore at ${placesText(off.map(({ place }) => place))}, up to ${words.length(most)} from the old axis.`,
  ];
}

function workingOf({ place, largest, unworn, free, held }: WornBore, words: LengthWords): string {
  return `${place.name}: largest ${words.sure(largest.value, largest.u)} (${largest.station.name}), unworn ${words.length(unworn)}; cleans up at ${words.length(free.value)} centred on the wear, at ${words.length(held.value)} on the old axis.`;
}

/** Why the recommended one is the smallest. */
function proofOf(alternatives: readonly Alternative[], cuts: readonly Cut[], words: LengthWords): string {
  const best = alternatives.find((one) => one.possible);
  if (best === undefined) return 'None of the pistons that can be had serves: each is shown with its reason.';
  const at = cuts.findIndex(({ alternative }) => alternative.id === best.id);
  if (at < 0) return 'Nothing needs to be cut: every size of the bores and every piston clearance is inside its limit.';
  const smaller = cuts.slice(0, at);
  if (smaller.length === 0) return 'It is the smallest oversize that can be had.';
  return smaller
    .map(({ set, tightest, alternative }) => {
      const size = oversizeText(set.oversize, words);
      const why = alternative.against[0] ?? 'the chance that every bore cleans up is below 95 %.';
      return `${size}: ${tightest === undefined || alternative.against.length === 0 ? why : alternative.against.join(' ')}`;
    })
    .join(' ');
}
