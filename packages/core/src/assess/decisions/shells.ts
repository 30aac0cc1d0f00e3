/**
 * D05 to D07: shells for the main bearings and for the rods. Alternatives side by side: the shells as they are fitted, halves alike or
 * mixed from what is on hand, the fewest bought, the printed chart; blocked where a housing would not hold them.
 */
import type { Alternative, Assessment, Decision } from '../model.js';
import { GROUPS, type Group, shellsOf } from './bearings-of.js';
import { blocked, type Decider, decided, placesOf, placesText, type Question, waiting } from './decision.js';
import { chartFaults } from './grade-charts.js';
import type { LengthWords } from './length-words.js';
import { lineUp } from './line-up.js';
import { type ShellPlace, shellPlaces } from './shell-positions.js';
import { shellText } from './shell-walls.js';
import { byRank, type Choosing, taskOf, type Way, ways } from './shell-ways.js';
import { helpfulHalf } from './shells-search.js';

export const shells: Decider = (assessment, words) =>
  GROUPS.filter((group) => placesOf(assessment, group.housing).length > 0).map((group) =>
    groupDecision(assessment, group, words),
  );

const questionOf = (group: Group): Question => ({
  id: 'shells',
  scope: group.id,
  title: group.id === 'main' ? 'Main bearing shells' : 'Rod bearing shells',
  question: 'Which halves go into which bearing?',
  area: group.id === 'main' ? 'block' : 'rods',
  sources: ['shell-grades', 'undersize-walls', 'derived-here'],
});

function groupDecision(assessment: Assessment, group: Group, words: LengthWords): Decision {
  const question = questionOf(group);
  const { places, missing } = shellPlaces(assessment, group);
  const stock = shellsOf(assessment.engine, group);
  const lacking = [
    ...missing,
    ...(stock.length === 0
      ? [`shells for the ${group.id} bearings: the sheet lists none that can be had (stock)`]
      : []),
  ];
  if (lacking.length > 0) return waiting(question, lacking);
  const loose = places.filter(({ noCrush }) => noCrush);
  const choosing = { assessment, group, words, places, stock };
  const offered = ways(choosing);
  const held = loose.length === 0 ? offered : offered.map((one) => withoutCrush(one, loose));
  const resize = loose.length === 0 ? [] : [lineUp(assessment, group, loose, words)];
  const alternatives = [...resize, ...held.toSorted(byRank).map(({ alternative }) => alternative)];
  const best = held.toSorted(byRank).find(({ alternative }) => alternative.possible);
  return decided(question, {
    alternatives,
    proof: loose.length > 0 ? 'No shell is chosen before its housing holds it.' : proofOf(best, alternatives, words),
    working: places.map((place) => workingOf(place, words)),
    cautions: [
      ...places.slice(0, 1).flatMap(({ asked }) => chartFaults(assessment, group, asked, words)),
      'Walls are printed ones at their middle: measure the halves that come, and the clearance follows.',
      ...helpOf(choosing),
    ],
  });
}

/** A shell is held by its crush; in a housing past its limits it would turn. */
const withoutCrush = (way: Way, loose: readonly ShellPlace[]): Way => ({
  ...way,
  alternative: blocked({
    ...way.alternative,
    against: [
      `The housing of ${placesText(loose.map(({ place }) => place))} is past its limits: shells would lack crush.`,
    ],
  }),
});

const workingOf = ({ place, housing, journal, asked, limit }: ShellPlace, words: LengthWords): string =>
  `${place.name}: housing ${words.sure(housing.value, housing.u)} − journal ${words.sure(journal.value, journal.u)} = ${words.length(housing.value - journal.value)} for two walls and the clearance ${words.window(asked)} (${limit.from.text}).`;

function proofOf(best: Way | undefined, alternatives: readonly Alternative[], words: LengthWords): string {
  if (best === undefined) return alternatives.flatMap(({ against }) => against).join(' ');
  if (best.choice === undefined)
    return 'Nothing has to be bought, and every clearance is judged from the measured parts.';
  const { plan } = best.choice;
  const total = words.length(plan.total);
  if (plan.proven)
    return `Every pairing of halves was weighed: none of this kind buys fewer than ${best.bought}, and none of those lies nearer to the middle of the windows in all than ${total}.`;
  return `The search ended early: no plan buys fewer than ${plan.bound.bought}, or lies nearer in all than ${words.length(plan.bound.total)}; this one buys ${best.bought} and lies ${total} off.`;
}

/** The one half on the bench that would help most. */
function helpOf(choosing: Choosing): readonly string[] {
  const { words, stock } = choosing;
  if (!stock.some(({ count = 0 }) => count > 0)) return [];
  const help = helpfulHalf(taskOf(choosing, true, true));
  if (help === undefined) return [];
  const gain =
    help.fewerWithout > 0
      ? `${help.fewerWithout} more bearing served`
      : help.fewerBought > 0
        ? `${help.fewerBought} fewer to buy`
        : `${words.length(help.nearer)} nearer in all`;
  return [`One more half that would help most: ${shellText(help.shell, words)} (${gain}).`];
}
