/**
 * D05 to D07: shells for the main bearings and for the rods. Alternatives side by side: the shells as they are fitted, halves alike or
 * mixed from what is on hand, the fewest bought, the printed chart; blocked where a housing would not hold them.
 */
import { inch } from '../../quantity/index.js';
import type { Alternative, Assessment, Decision } from '../model.js';
import { GROUPS, type Group, shellsOf } from './bearings-of.js';
import {
  blocked,
  type Decider,
  decided,
  listed,
  placesOf,
  possible,
  type Question,
  waiting,
  worstVerdict,
} from './decision.js';
import { byChart, chartFaults } from './grade-charts.js';
import type { LengthWords } from './length-words.js';
import { lineUp } from './line-up.js';
import { type ShellPlace, shellPlaces } from './shell-positions.js';
import { buyShell, shellText } from './shell-walls.js';
import { shellsAsFitted } from './shells-as-fitted.js';
import { type ChosenPair, chooseShells, helpfulHalf, type ShellChoice, type ShellTask } from './shells-search.js';

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

/** One step of 0.001 in of the journal is half of it in one wall. Common practice, no source. */
const USUAL_MIX = inch(0.0005);

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

interface Choosing {
  readonly assessment: Assessment;
  readonly group: Group;
  readonly words: LengthWords;
  readonly places: readonly ShellPlace[];
  readonly stock: ShellTask['shells'];
}
interface Way {
  readonly alternative: Alternative;
  readonly choice?: ShellChoice;
  readonly bought: number;
  readonly total: number;
}

/** Sure ones first, then those that ask for fewest parts, then the nearest to what is wanted. */
function byRank(a: Way, b: Way): number {
  const order = ['in', 'near', 'no data', 'check again', 'out'];
  const possibles = Number(b.alternative.possible) - Number(a.alternative.possible);
  const verdicts = order.indexOf(a.alternative.verdict) - order.indexOf(b.alternative.verdict);
  return possibles || verdicts || a.bought - b.bought || a.total - b.total;
}

function ways(choosing: Choosing): readonly Way[] {
  const { assessment, group, places, words, stock } = choosing;
  const onHand = stock.some(({ count = 0 }) => count > 0);
  const kept = shellsAsFitted(assessment, group, places, words);
  const alike = [...(onHand ? [search(choosing, false, false)] : []), search(choosing, false, true)];
  const mixed = [...(onHand ? [search(choosing, true, false)] : []), search(choosing, true, true)];
  const chart = byChart(assessment, group, places, words);
  return [
    ...(kept === undefined ? [] : [{ ...kept, bought: 0 }]),
    ...alike,
    ...mixed.filter((one) => one.choice?.pairs.some(({ upper, lower }) => upper !== lower)),
    ...(chart === undefined ? [] : [chartWay(choosing, chart)]),
  ];
}

function taskOf({ assessment, group, places, stock }: Choosing, mix: boolean, mayBuy: boolean): ShellTask {
  const widestMix = mix ? (assessment.engine.machining?.widestShellMix?.value ?? USUAL_MIX) : 0;
  return { places, shells: stock, widestMix, thicker: group.thicker, mayBuy };
}

function search(choosing: Choosing, mix: boolean, mayBuy: boolean): Way {
  const { group, words, assessment } = choosing;
  const choice = chooseShells(taskOf(choosing, mix, mayBuy));
  const bought = choice.buys.reduce((sum, { count }) => sum + count, 0);
  const named = {
    id: `${mix ? 'mixed' : 'alike'}-${mayBuy ? 'bought' : 'on-hand'}`,
    words: `${mix ? `Halves may differ, the thicker one ${group.thicker === 'upper' ? 'above' : 'below'}` : 'Both halves alike'}, ${mayBuy ? 'fewest bought' : 'from what is on hand'}`,
    figures: figuresOf(choice.pairs, words),
    verdict: choice.without.length > 0 ? ('out' as const) : worstVerdict(choice.pairs.map(({ verdict }) => verdict)),
  };
  const way = { choice, bought, total: choice.plan.total };
  if (choice.without.length > 0) {
    const where = listed(choice.without.map(({ place }) => place.name));
    return {
      ...way,
      alternative: blocked({ ...named, against: [`Nothing gives the clearance asked for at ${where}.`] }),
    };
  }
  const stated = assessment.engine.machining?.widestShellMix;
  const rule = `Widest difference of two walls ${words.length(stated?.value ?? USUAL_MIX)} (${stated?.from.text ?? 'common practice, no source'}); thicker half ${group.thicker} (common practice): the maker's rule decides.`;
  return {
    ...way,
    alternative: possible({
      ...named,
      against: mix ? [rule] : [],
      buys: choice.buys.map(({ shell, count }) => buyShell(shell, count, placesText(choice.pairs, shell), words)),
    }),
  };
}

const placesText = (pairs: readonly ChosenPair[], shell: ChosenPair['upper']): string =>
  listed(pairs.filter(({ upper, lower }) => upper === shell || lower === shell).map(({ place }) => place.place.name));

const figuresOf = (pairs: readonly ChosenPair[], words: LengthWords): Alternative['figures'] =>
  pairs.map(({ place, upper, lower, clearance }) => ({
    name: place.place.name,
    text: `${upper === lower ? shellText(upper, words) : `above ${shellText(upper, words)}; below ${shellText(lower, words)}`}: clearance ${words.sure(clearance.value, clearance.u)}, asked ${words.window(place.asked)}`,
  }));

function chartWay({ words }: Choosing, chart: NonNullable<ReturnType<typeof byChart>>): Way {
  const verdict = worstVerdict(chart.pairs.map((one) => one.verdict));
  const named = { id: 'chart', words: 'By the printed chart', figures: figuresOf(chart.pairs, words) };
  const out = chart.pairs.filter((one) => one.verdict === 'out');
  const against = [
    ...chart.against,
    ...out.map(
      ({ place, clearance }) =>
        `${place.place.name}: clearance ${words.length(clearance.value)} is outside ${words.window(place.asked)}.`,
    ),
  ];
  const total = chart.pairs.reduce(
    (sum, { place, clearance }) => sum + Math.abs(clearance.value - (place.asked.low + place.asked.high) / 2),
    0,
  );
  const alternative =
    against.length > 0
      ? blocked({ ...named, verdict: chart.pairs.length === 0 ? 'no data' : 'out', against })
      : possible({ ...named, verdict, buys: chartBuys(chart.pairs, words) });
  return { alternative, bought: 2 * chart.pairs.length, total };
}

function chartBuys(pairs: readonly ChosenPair[], words: LengthWords): Alternative['buys'] {
  const used = [...new Set(pairs.map(({ upper }) => upper))];
  return used.flatMap((shell) => {
    const halves = 2 * pairs.filter(({ upper }) => upper === shell).length - (shell.count ?? 0);
    return halves > 0 ? [buyShell(shell, halves, placesText(pairs, shell), words)] : [];
  });
}

/** A shell is held by its crush; in a housing past its limits it would turn. */
const withoutCrush = (way: Way, loose: readonly ShellPlace[]): Way => ({
  ...way,
  alternative: blocked({
    ...way.alternative,
    against: [
      `The housing of ${listed(loose.map(({ place }) => place.name))} is past its limits: shells would lack crush.`,
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
  const { words } = choosing;
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
