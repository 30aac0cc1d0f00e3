/** Ways to choose shells for the bearings of a group, each as an alternative with what it asks for. */
import { inch } from '../../quantity/index.js';
import type { Alternative, Assessment } from '../model.js';
import type { Group } from './bearings-of.js';
import { blocked, placesText, possible, worstVerdict } from './decision.js';
import { byChart } from './grade-charts.js';
import { middle } from './judged.js';
import type { LengthWords } from './length-words.js';
import type { ShellPlace } from './shell-positions.js';
import { alikeHalves, halvesOf, shellText } from './shell-walls.js';
import { shellsAsFitted } from './shells-as-fitted.js';
import { type ChosenPair, chooseShells, type ShellChoice, type ShellTask } from './shells-search.js';
import { buysOf, canBeBought, shortOf, type Taken } from './stock-taken.js';

/** One step of 0.001 in of the journal is half of it in one wall. Common practice, no source. */
const USUAL_MIX = inch(0.0005);

export interface Choosing {
  readonly assessment: Assessment;
  readonly group: Group;
  readonly words: LengthWords;
  readonly places: readonly ShellPlace[];
  readonly stock: ShellTask['shells'];
}
export interface Way {
  readonly alternative: Alternative;
  /** The maker's chart outranks what is computed; halves alike come before mixed ones, new shells before worn ones. */
  readonly kind: 'chart' | 'fitted' | 'alike' | 'mixed' | 'worn';
  readonly choice?: ShellChoice;
  readonly bought: number;
  readonly total: number;
}

const KINDS: readonly Way['kind'][] = ['chart', 'fitted', 'alike', 'mixed', 'worn'];
const VERDICTS: readonly Alternative['verdict'][] = ['in', 'near', 'no data', 'check again', 'out'];
const rankOf = ({ alternative, kind, bought, total }: Way): readonly number[] => [
  alternative.possible ? 0 : 1,
  kind === 'worn' ? 1 : 0,
  VERDICTS.indexOf(alternative.verdict),
  kind === 'chart' ? 0 : 1,
  bought,
  KINDS.indexOf(kind),
  total,
];

/** Sure ones first, then those that ask for fewest parts, then the plainest, then the nearest to what is wanted. */
export function byRank(a: Way, b: Way): number {
  const [one, other] = [rankOf(a), rankOf(b)];
  return one.map((rank, at) => rank - (other[at] ?? 0)).find((apart) => apart !== 0) ?? 0;
}

export function ways(choosing: Choosing): readonly Way[] {
  const { assessment, group, places, words, stock } = choosing;
  const onHand = stock.some((shell) => !canBeBought(shell));
  const forSale = stock.some(canBeBought);
  const searched = (mix: boolean) => [
    ...(onHand ? [search(choosing, mix, false)] : []),
    ...(forSale ? [search(choosing, mix, true)] : []),
  ];
  const kept = shellsAsFitted(assessment, group, places, words);
  const mixed = mayMix(assessment) ? searched(true) : [];
  const chart = byChart(assessment, group, places, words);
  return [
    ...(kept === undefined ? [] : [{ ...kept, bought: 0 }]),
    ...searched(false),
    ...mixed.filter((one) => one.choice?.pairs.some(({ upper, lower }) => !alikeHalves(upper, lower))),
    ...(chart === undefined ? [] : [chartWay(choosing, chart)]),
  ];
}

/** A widest difference of 0 in the sheet means that halves are never mixed. */
const mayMix = ({ engine }: Assessment): boolean => engine.machining?.widestShellMix?.value !== 0;

export function taskOf({ assessment, group, places, stock }: Choosing, mix: boolean, mayBuy: boolean): ShellTask {
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
  const way = { choice, bought, total: choice.plan.total, kind: mix ? ('mixed' as const) : ('alike' as const) };
  if (choice.without.length > 0) {
    const where = placesText(choice.without.map(({ place }) => place));
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
      buys: buysOf(choice.buys.map(({ shell, count }) => halvesOf(shell, count, usersOf(choice.pairs, shell), words))),
    }),
  };
}

const usersOf = (pairs: readonly ChosenPair[], shell: ChosenPair['upper']): string =>
  placesText(pairs.filter(({ upper, lower }) => upper === shell || lower === shell).map(({ place }) => place.place));

const figuresOf = (pairs: readonly ChosenPair[], words: LengthWords): Alternative['figures'] =>
  pairs.map(({ place, upper, lower, clearance }) => ({
    name: place.place.name,
    text: `${alikeHalves(upper, lower) ? shellText(upper, words) : `above ${shellText(upper, words)}; below ${shellText(lower, words)}`}: clearance ${words.sure(clearance.value, clearance.u)}, asked ${words.window(place.asked)}`,
  }));

function chartWay({ words }: Choosing, chart: NonNullable<ReturnType<typeof byChart>>): Way {
  const verdict = worstVerdict(chart.pairs.map((one) => one.verdict));
  const named = { id: 'chart', words: 'By the printed chart', figures: figuresOf(chart.pairs, words) };
  const out = chart.pairs.filter((one) => one.verdict === 'out');
  const taken = chartHalves(chart.pairs, words);
  const against = [
    ...chart.against,
    ...shortOf(taken),
    ...out.map(
      ({ place, clearance }) =>
        `${place.place.name}: clearance ${words.length(clearance.value)} is outside ${words.window(place.asked)}.`,
    ),
  ];
  const total = chart.pairs.reduce(
    (sum, { place, clearance }) => sum + Math.abs(clearance.value - middle(place.asked)),
    0,
  );
  const buys = buysOf(taken);
  const alternative =
    against.length > 0
      ? blocked({ ...named, verdict: chart.pairs.length === 0 ? 'no data' : 'out', against })
      : possible({ ...named, verdict, buys });
  return { alternative, kind: 'chart', bought: buys.reduce((sum, { count }) => sum + count, 0), total };
}

function chartHalves(pairs: readonly ChosenPair[], words: LengthWords): readonly Taken[] {
  const used = [...new Set(pairs.map(({ upper }) => upper))];
  return used.map((shell) => {
    const count = 2 * pairs.filter(({ upper }) => upper === shell).length;
    return halvesOf(shell, count, usersOf(pairs, shell), words);
  });
}
