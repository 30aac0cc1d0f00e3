/** D17: how wide each ring gap must be, and how much is filed off each ring. */
import type { RingStock } from '../../engine/index.js';
import type { Alternative, Assessment, BuyLine, Decision, OrderLine, Place, Size, VerdictWord } from '../model.js';
import {
  type Decider,
  decided,
  figure,
  listed,
  placesOf,
  possible,
  type Question,
  sizeAt,
  waiting,
  worstVerdict,
} from './decision.js';
import { finishedBore } from './finished-bore.js';
import { judged, sameLength } from './judged.js';
import type { LengthWords } from './length-words.js';
import { nearestOversize } from './piston-sets.js';
import { type GapRing, type GapRule, type GapTarget, gapConflicts, gapProperty, gapRules } from './ring-targets.js';
import { buysOf, shareOut } from './stock-taken.js';

export const GAP_RINGS: readonly GapRing[] = ['top', 'second', 'oil'];
export const ringName = (ring: GapRing): string => `${ring} ring`;

interface Filing extends GapTarget {
  readonly gap: Size | undefined;
  /** Gap to stop at. */
  readonly aim: number;
  /** To take off the ends, never below zero; absent where the gap is not measured. */
  readonly off?: number;
  readonly verdict: VerdictWord;
}

/**
 * Gap at which to stop filing [m]: the smallest that is surely wide enough, low end + U (k = 2), and never past the middle of a
 * window; the middle where U is not known. Metal cannot be put back. Source: decision rule of `judge`, derived.
 */
export function filingAim(low: number, high: number | undefined, u: number | undefined): number {
  const middle = high === undefined ? low : (low + high) / 2;
  if (u === undefined) return middle;
  return high === undefined ? low + 2 * u : Math.min(low + 2 * u, middle);
}

/**
 * What is to be done to the ring of one cylinder. A gap that is too large stays too large; one that was read in a bore which is cut since
 * says nothing about the ring that will run there.
 */
function filingOf(assessment: Assessment, ring: GapRing, target: GapTarget): Filing {
  const away = finishedBore(assessment, target.place)?.from === 'as ordered';
  const gap = away ? undefined : sizeAt(assessment, gapProperty(ring), target.place.id);
  const { low = 0, high } = target.window;
  const aim = filingAim(low, high, gap?.u);
  if (gap === undefined) return { ...target, gap, aim, verdict: 'no data' };
  const left = Math.max(gap.value, aim);
  return {
    ...target,
    gap,
    aim,
    off: left - gap.value,
    verdict: judged({ value: left, u: gap.u }, high === undefined ? {} : { high }),
  };
}

const filingText = ({ gap, off, aim, verdict }: Filing, words: LengthWords): string => {
  if (gap === undefined || off === undefined)
    return `file to ${words.length(aim)}; gap in the finished bore not measured yet`;
  if (off > 0) return `file ${words.length(off)} off, from ${words.length(gap.value)} to ${words.length(aim)}`;
  return verdict === 'out'
    ? `${words.length(gap.value)}: too wide, it cannot be filed back; another ring`
    : `${words.length(gap.value)}: wide enough, nothing to file`;
};

function orderOf(ring: GapRing, filings: readonly Filing[], words: LengthWords): OrderLine {
  return {
    id: `ring-gap-${ring}/all`,
    operation: `File the gaps of the ${ringName(ring)}s`,
    part: `${ringName(ring)}s`,
    property: gapProperty(ring),
    places: filings.map(({ place }) => place.id),
    measured: 'length',
    targets: filings.map(({ place, window }) => ({
      place: place.id,
      window,
      fittedTo: `bore of ${place.name}`,
    })),
    notes: [
      'Ring square in its own finished bore at the depth that the maker names; file from the outside in, break the edges, measure again after each few strokes.',
      ...filings.map((one) => `${one.place.name}: ${filingText(one, words)}.`),
    ],
  };
}

/** Another ring where the gap is too wide already: of the sheet's stock for the finished bore, else by its name. */
function ringsBought(assessment: Assessment, ring: GapRing, filings: readonly Filing[]): readonly BuyLine[] {
  const spoilt = filings.filter(({ verdict }) => verdict === 'out').map(({ place }) => place);
  const [first] = spoilt;
  if (first === undefined) return [];
  const names = listed(spoilt.map(({ name }) => name));
  const need = { size: 'for the finished bore, gap to be filed', for: names };
  const shared = shareOut(ringsFor(assessment, ring, first), spoilt.length);
  const left = spoilt.length - shared.reduce((sum, { count }) => sum + count, 0);
  const others = left === 0 ? [] : [{ part: ringName(ring), count: left, ...need }];
  return [...buysOf(shared.map((one) => ({ ...one, ...need }))), ...others];
}

/** Rings of the oversize of the bore in which they will run. */
function ringsFor(assessment: Assessment, ring: GapRing, place: Place): readonly RingStock[] {
  const { crankTrain, stock } = assessment.engine;
  const own = (stock?.rings ?? []).filter((one) => one.ring === ring);
  const bore = finishedBore(assessment, place)?.value;
  if (crankTrain.bore === undefined || bore === undefined) return [];
  const oversize = nearestOversize(
    own.map((one) => one.oversize),
    crankTrain.bore.value,
    bore,
  );
  return own.filter((one) => sameLength(one.oversize, oversize));
}

function alternativeOf(assessment: Assessment, ring: GapRing, rule: GapRule, words: LengthWords): Alternative {
  const filings = rule.targets.map((target) => filingOf(assessment, ring, target));
  const contradicts: readonly VerdictWord[] = rule.against.length > 0 ? ['out'] : [];
  return possible({
    id: rule.id,
    words: `${rule.words} (${rule.from})`,
    figures: filings.map((one) => figure(one.place.name, filingText(one, words))),
    verdict: worstVerdict([...filings.map(({ verdict }) => verdict), ...contradicts]),
    against: [
      ...rule.against,
      ...filings
        .filter(({ verdict }) => verdict === 'out')
        .map(({ place }) => `${place.name}: the gap is too wide already`),
    ],
    orders: [orderOf(ring, filings, words)],
    buys: ringsBought(assessment, ring, filings),
  });
}

function missingOf(assessment: Assessment, ring: GapRing): readonly string[] {
  const unknown = placesOf(assessment, `ring-gap-${ring}`).filter((place) => !finishedBore(assessment, place));
  const bores = ring === 'oil' || unknown.length === 0 ? [] : [`bore of ${listed(unknown.map(({ name }) => name))}`];
  return [`gap asked for: the ring maker's factor or the printed gap, in the sheet`, ...bores];
}

function gapDecision(assessment: Assessment, ring: GapRing, words: LengthWords): Decision {
  const question: Question = {
    id: 'ring-gap',
    scope: ring,
    title: `Gaps of the ${ringName(ring)}s`,
    question: `To which gap are the ${ringName(ring)}s filed, and how much comes off each?`,
    area: 'rings',
    sources: ['ring-gap-worked', 'ring-gap-pi'],
  };
  const rules = gapRules(assessment, ring, words);
  const cautions = [
    ...(ring === 'oil' ? [] : gapConflicts(assessment, words)),
    ...boreCautions(assessment, ring, words),
  ];
  if (rules.length === 0) return waiting(question, missingOf(assessment, ring), cautions);
  return decided(question, {
    alternatives: rules.map((rule) => alternativeOf(assessment, ring, rule, words)),
    proof:
      'Filing stops at the smallest gap that is surely wide enough: the least allowed plus the uncertainty of the gap.',
    working: rules.flatMap(({ words: said, from, targets }) => [
      `${said} (${from}): ${targets.map(({ place, window }) => `${place.name} ${words.window(window)}`).join('; ')}`,
    ]),
    cautions,
  });
}

/** A bore that still has to be cut or honed changes every gap. */
function boreCautions(assessment: Assessment, ring: GapRing, words: LengthWords): readonly string[] {
  const ordered = placesOf(assessment, `ring-gap-${ring}`).filter(
    (place) => finishedBore(assessment, place)?.from === 'as ordered',
  );
  const grows = `a bore larger by ${words.length(2.54e-5)} opens a gap by ${words.length(Math.PI * 2.54e-5)}`;
  return ordered.length === 0
    ? []
    : [`The bores are not back from the shop: gap the rings in the finished bores (${grows}).`];
}

/** Gap decisions, one for each kind of ring that the engine has. */
export const ringGaps: Decider = (assessment, words) =>
  GAP_RINGS.filter((ring) => placesOf(assessment, `ring-gap-${ring}`).length > 0).map((ring) =>
    gapDecision(assessment, ring, words),
  );
