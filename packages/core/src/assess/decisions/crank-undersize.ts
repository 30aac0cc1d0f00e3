/**
 * D04: undersize of the main journals and of the crankpins, each group for itself. Alternatives side by side: polish and keep, each
 * undersize for which there are shells.
 */
import { smallestUndersize } from '../../calc/bearings/index.js';
import { inch, type Length } from '../../quantity/index.js';
import type { Alternative, Assessment, Decision, Place } from '../model.js';
import { GROUPS, type Group, positionsOf, shellsOf } from './bearings-of.js';
import { crankAsIs } from './crank-as-is.js';
import {
  blocked,
  byText,
  type Decider,
  decided,
  figure,
  notMeasured,
  placesOf,
  possible,
  type Question,
  waiting,
} from './decision.js';
import { aim, type JournalTarget, journalTargets, sharedTarget } from './journal-targets.js';
import { chanceOfAll, chanceText, SURE } from './judged.js';
import type { LengthWords } from './length-words.js';
import { type StationValue, smallest, stationValues } from './measured-at.js';
import { buyShell, sameLength, undersizesOf, undersizeText } from './shell-walls.js';

export const crankUndersize: Decider = (assessment, words) =>
  GROUPS.filter((group) => placesOf(assessment, group.journal).length > 0).map((group) =>
    groupDecision(assessment, group, words),
  );

const questionOf = (group: Group): Question => ({
  id: 'crank-undersize',
  scope: group.id,
  title: group.id === 'main' ? 'Main journals' : 'Crankpins',
  question: `To which size are the ${group.journals} ground?`,
  area: 'crankshaft',
  sources: ['undersize-walls', 'shop-practice', 'derived-here'],
});

/** Ground off a journal before it is round and bright. Common practice, no source. */
const USUAL_GRIND = inch(0.002);
export function grindAllowance({ engine }: Assessment): { readonly value: number; readonly from: string } {
  const stated = engine.machining?.journalCleanUp;
  if (stated !== undefined) return { value: stated.value, from: stated.from.text };
  return { value: USUAL_GRIND, from: 'common practice, no source' };
}

interface WornJournal {
  readonly place: Place;
  readonly smallest: StationValue;
}

function groupDecision(assessment: Assessment, group: Group, words: LengthWords): Decision {
  const question = questionOf(group);
  const shells = shellsOf(assessment.engine, group);
  const journals = placesOf(assessment, group.journal);
  const worn = journals.flatMap((place): readonly WornJournal[] => {
    const least = smallest(stationValues(assessment, group.journal, place));
    return least === undefined ? [] : [{ place, smallest: least }];
  });
  const missing = [
    ...notMeasured(assessment, group.journal, `${group.journal}.diameter`),
    ...(shells.length === 0 ? [`shells for the ${group.journals}: the sheet lists none that can be had (stock)`] : []),
  ];
  if (missing.length > 0) return waiting(question, missing);
  const cuts = undersizesOf(shells).filter((one) => one > 0);
  const grinds = cuts.map((undersize) => grindTo({ assessment, group, worn, words }, undersize));
  const near = ({ verdict }: Alternative) => verdict === 'near';
  const alternatives = [
    crankAsIs(assessment, group, words),
    ...grinds.filter((one) => !near(one)),
    ...grinds.filter(near),
  ];
  const allowance = grindAllowance(assessment);
  return decided(question, {
    alternatives,
    proof: proofOf(alternatives, grinds),
    working: [
      ...worn.map(
        ({ place, smallest: one }) => `${place.name}: smallest ${words.sure(one.value, one.u)} (${one.station.name}).`,
      ),
      `Grinding allowance ${words.length(allowance.value)} on diameter (${allowance.from}).`,
    ],
    cautions: ['Keep the fillet radius of the crank maker, and clean the oilways after grinding.'],
  });
}

interface Grinding {
  readonly assessment: Assessment;
  readonly group: Group;
  readonly worn: readonly WornJournal[];
  readonly words: LengthWords;
}

function grindTo({ assessment, group, worn, words }: Grinding, undersize: number): Alternative {
  const named = {
    id: `grind-${Math.round(undersize * 1e6)}`,
    words: `Grind all to ${undersizeText(undersize, words)}`,
  };
  const shells = shellsOf(assessment.engine, group).filter((one) => sameLength(one.undersize, undersize));
  const positions = positionsOf(assessment, group);
  const journals = worn.map(({ place }) => place);
  const targets = journalTargets(assessment, group, positions, journals, shells, words);
  if (targets === undefined) {
    const against = ['The ground size is not known: measure the housings, or state the new journal or the clearance.'];
    return blocked({ ...named, figures: [], verdict: 'no data', against });
  }
  const shared = sharedTarget(targets);
  const allowance = grindAllowance(assessment).value;
  const rooms = worn.map(({ place, smallest: least }, at) => ({
    place,
    known: { value: least.value - allowance - aim(targets[at] as JournalTarget, shared), u: least.u },
  }));
  const tightest = rooms.reduce((a, b) => (b.known.value < a.known.value ? b : a));
  const cleans = worn.every(({ smallest: least }, at) =>
    reaches(least.value, targets[at] as JournalTarget, shared, undersize, allowance),
  );
  const chance = chanceOfAll(rooms.map(({ known }) => ({ known, window: { low: 0 } })));
  const halves = 2 * positions.length;
  const pieces = shells.reduce((sum, { count = Number.POSITIVE_INFINITY }) => sum + count, 0);
  const against = [
    ...(cleans ? [] : [`${tightest.place.name} does not clean up: ${words.length(-tightest.known.value)} short.`]),
    ...(pieces < halves ? [`Only ${pieces} halves of this size can be had; ${halves} are needed.`] : []),
  ];
  const figures = [
    figure(
      'Left at the worst journal',
      `${tightest.known.value < 0 ? `${words.length(-tightest.known.value)} short` : words.sure(tightest.known.value, tightest.known.u)}, ${tightest.place.name}`,
    ),
    figure('Chance that all clean up', chanceText(chance)),
    figure('Ground size', groundText(targets, shared, words)),
    figure('From', [...new Set(targets.map(({ how }) => how))].join('; ')),
  ];
  if (against.length > 0) return blocked({ ...named, figures, verdict: 'out', against });
  const shell = targets[0]?.shell ?? shells[0];
  return possible({
    ...named,
    figures,
    verdict: chance === undefined ? 'no data' : chance >= SURE ? 'in' : 'near',
    against: shared ? [] : ['No one size suits every journal: the shop grinds each to its own.'],
    orders: [orderOf({ assessment, group, worn, words }, undersize, targets, shared)],
    buys: shell === undefined ? [] : [buyShell(shell, halves, group.journals, words)],
  });
}

/** By `smallestUndersize`, with the size that would be standard for this target. */
function reaches(
  least: number,
  target: JournalTarget,
  shared: ReturnType<typeof sharedTarget>,
  undersize: number,
  allowance: number,
): boolean {
  const standard = aim(target, shared) + undersize;
  return (
    smallestUndersize(standard as Length, [least as Length], allowance as Length, [undersize as Length]) !== undefined
  );
}

function orderOf(
  { assessment, group, words }: Grinding,
  undersize: number,
  targets: readonly JournalTarget[],
  shared: ReturnType<typeof sharedTarget>,
) {
  const finish = assessment.engine.machining?.journalFinish;
  return {
    id: `${group.id}-journals/all`,
    operation: `grind to ${undersizeText(undersize, words)} and polish`,
    part: `crankshaft, ${group.journals}`,
    property: `${group.journal}.diameter`,
    places: targets.map(({ journal }) => journal.id),
    measured: 'length' as const,
    ...(shared && { target: shared }),
    targets: targets.map(({ journal, window, fittedTo }) => ({
      place: journal.id,
      window: shared ?? window,
      ...(fittedTo === undefined ? {} : { fittedTo }),
    })),
    ...(finish === undefined ? {} : { finish }),
    notes: ['Keep the fillet radius. Measure the shells that will go in before the last cut.'],
  };
}

function groundText(
  targets: readonly JournalTarget[],
  shared: ReturnType<typeof sharedTarget>,
  words: LengthWords,
): string {
  if (shared) return words.window(shared);
  return byText(targets.map(({ journal, window }) => ({ place: journal, text: words.window(window) })));
}

function proofOf(alternatives: readonly Alternative[], grinds: readonly Alternative[]): string {
  const best = alternatives.find((one) => one.possible);
  if (best === undefined) return 'No undersize for which there are shells serves: each is shown with its reason.';
  const at = grinds.indexOf(best);
  if (at < 0) return 'Nothing needs to be ground: every journal is inside its limits.';
  if (at === 0) return 'It is the smallest undersize for which there are shells.';
  return grinds
    .slice(0, at)
    .map((one) => `${one.words}: ${one.against.join(' ') || 'the chance that every journal cleans up is below 95 %.'}`)
    .join(' ');
}
