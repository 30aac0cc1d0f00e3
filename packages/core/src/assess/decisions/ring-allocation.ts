/** D18: which ring goes to which bore, so that the least is filed and no gap is too wide. */
import { allocateRings, gapInBore, type RingPlan } from '../../calc/cylinder/index.js';
import type { Length } from '../../quantity/index.js';
import type { Alternative, Assessment, Decision, Place } from '../model.js';
import {
  blocked,
  type Decider,
  decided,
  figure,
  limitAt,
  notMeasured,
  placesOf,
  possible,
  type Question,
  sizeAt,
  waiting,
} from './decision.js';
import { finishedBore } from './finished-bore.js';
import { judged } from './judged.js';
import type { LengthWords } from './length-words.js';
import { GAP_RINGS, ringName } from './ring-gaps.js';
import { type GapRing, gapProperty, gapRules } from './ring-targets.js';

/** One ring as it lies on the bench, tagged with the cylinder in whose bore its gap was read. */
interface Tagged {
  readonly place: Place;
  readonly gap: number;
  readonly u: number | undefined;
  readonly bore: number;
}
interface Ask {
  readonly target: number;
  readonly most: number;
}

function taggedRings(assessment: Assessment, ring: GapRing): readonly Tagged[] {
  return placesOf(assessment, `ring-gap-${ring}`).flatMap((place) => {
    const gap = sizeAt(assessment, gapProperty(ring), place.id);
    const bore = finishedBore(assessment, place);
    // A gap read in the worn bore says how long the ring is only together with that bore.
    if (gap === undefined || bore?.from !== 'measured') return [];
    return [{ place, gap: gap.value, u: gap.u, bore: bore.value }];
  });
}

/** The narrowest window that every cylinder keeps, with the uncertainty of a gap above its low end. */
function askOf(assessment: Assessment, ring: GapRing, rings: readonly Tagged[], words: LengthWords): Ask | undefined {
  const [rule] = gapRules(assessment, ring, words);
  if (rule === undefined) return undefined;
  const doubt = 2 * Math.max(0, ...rings.map(({ u }) => u ?? 0));
  const target = Math.max(...rule.targets.map(({ window }) => window.low ?? 0)) + doubt;
  const highs = rule.targets.map(({ place, window }) => {
    const worn = limitAt(assessment, gapProperty(ring), place.id, 'wear')?.window.high;
    return window.high ?? worn ?? Number.POSITIVE_INFINITY;
  });
  const most = Math.min(...highs);
  return most < target ? { target: most, most } : { target, most };
}

function planned(rings: readonly Tagged[], plan: RingPlan, ask: Ask, id: string, said: string, words: LengthWords) {
  const figures = rings.map(({ place }, at) => {
    const from = rings[plan.rings[at] ?? at] as Tagged;
    const off = plan.filing[at] ?? 0;
    const after = off > 0 ? `file ${words.length(off)}` : 'nothing to file';
    return figure(place.name, `ring of ${from.place.name}: ${after}, gap ${words.length(plan.gaps[at] ?? 0)}`);
  });
  const u = Math.max(...rings.map((one) => one.u ?? 0));
  const known = rings.every((one) => one.u !== undefined);
  const largest = Math.max(...plan.gaps);
  return possible({
    id,
    words: `${said}: ${words.length(plan.total)} to file in all`,
    figures: [...figures, figure('widest gap', words.length(largest))],
    verdict: judged({ value: largest, u: known ? u : undefined }, { high: ask.most }),
  });
}

/** Each ring in the bore that it is tagged with. */
function asTagged(rings: readonly Tagged[], ask: Ask, words: LengthWords): Alternative {
  const filing = rings.map(({ gap }) => Math.max(0, ask.target - gap) as Length);
  const plan: RingPlan = {
    rings: rings.map((_, at) => at),
    filing,
    gaps: rings.map(({ gap }, at) => (gap + (filing[at] ?? 0)) as Length),
    total: filing.reduce<number>((sum, one) => sum + one, 0) as Length,
  };
  const wide = rings.filter(({ gap }) => gap > ask.most);
  const found = planned(rings, plan, ask, 'as-tagged', 'Each ring in its own bore', words);
  return wide.length === 0
    ? found
    : blocked({ ...found, against: wide.map(({ place }) => `ring of ${place.name}: its gap is too wide there`) });
}

function leastFiled(rings: readonly Tagged[], ask: Ask, words: LengthWords): Alternative {
  const id = 'least-filing';
  const common = (rings[0] as Tagged).bore as Length;
  const gaps = rings.map(({ gap, bore }) => gapInBore(gap as Length, bore as Length, common));
  const bores = rings.map(({ bore }) => bore as Length);
  const plan = allocateRings(gaps, common, bores, ask.target as Length, ask.most as Length);
  if (plan.ok) return planned(rings, plan.value, ask, id, 'Rings exchanged', words);
  return blocked({
    id,
    words: 'Rings exchanged between the bores',
    figures: [],
    verdict: 'out',
    against: ['in every way some gap is too wide: at least one other ring is needed'],
  });
}

function allocation(assessment: Assessment, ring: GapRing, words: LengthWords): Decision {
  const question: Question = {
    id: 'ring-allocation',
    scope: ring,
    title: `${ringName(ring)}s to bores`,
    question: `Which ${ringName(ring)} goes to which bore?`,
    area: 'rings',
    sources: ['ring-gap-pi', 'derived-here'],
  };
  const missing = [
    ...notMeasured(assessment, `ring-gap-${ring}`, gapProperty(ring)),
    ...notMeasured(assessment, 'cylinder-bore', 'cylinder-bore.diameter'),
  ];
  const rings = taggedRings(assessment, ring);
  const ask = askOf(assessment, ring, rings, words);
  if (missing.length > 0) return waiting(question, missing);
  if (rings.length < placesOf(assessment, `ring-gap-${ring}`).length)
    return waiting(question, ['the bores as they come back from the shop']);
  if (ask === undefined) return waiting(question, ['gap asked for, in the sheet']);
  const best = leastFiled(rings, ask, words);
  return decided(question, {
    alternatives: [best, asTagged(rings, ask, words)],
    proof: best.possible
      ? 'No other way to share out these rings needs less filing: sorted both ways, exchanging two of them never saves any.'
      : 'Every way was excluded: the widest ring is too wide even in the smallest bore that is left for it.',
    working: [
      `gap in another bore = gap + π · (that bore − bore in which it was read)`,
      `stop filing at ${words.length(ask.target)}, which is the least allowed plus the uncertainty of a gap`,
      Number.isFinite(ask.most) ? `no gap over ${words.length(ask.most)}` : 'no largest gap is printed',
    ],
    cautions: ['Tag each ring with its new cylinder before it leaves the bore.'],
  });
}

/** Allocations, one for each kind of ring with gaps in more than one cylinder. */
export const ringAllocation: Decider = (assessment, words) =>
  GAP_RINGS.filter((ring) => ring !== 'oil' && placesOf(assessment, `ring-gap-${ring}`).length > 1).map((ring) =>
    allocation(assessment, ring, words),
  );
