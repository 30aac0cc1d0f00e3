/** What a search found, for its screen: ranked combinations with their parts, figures and margins. */
import {
  type Chances,
  type FinderAnswer,
  type FoundCombination,
  type HeldFigure,
  type Option,
  type RankingName,
  sizeValue,
  TITLES,
} from '../../assess/combination/finder/index.js';
import type { QuantityKind } from '../../quantity/index.js';
import type { AnswerRow } from '../combination-views.js';
import type { ShownIn } from '../measure-views.js';
import { chanceWords } from './answers.js';
import { shownEnds, shownQuantity } from './shown.js';

export interface FoundView {
  readonly words: readonly string[];
  readonly rankings: readonly {
    readonly name: RankingName;
    readonly title: string;
    readonly combinations: readonly FoundCombinationView[];
  }[];
  /** Where nothing fits: the combination that the smallest loosening lets through. */
  readonly nearest?: FoundCombinationView;
  readonly missing: readonly string[];
}
export interface FoundCombinationView {
  /** Names it among all that were found. */
  readonly id: string;
  readonly combination: FoundCombination;
  readonly parts: readonly { readonly name: string; readonly text: string }[];
  /** "0.35 mm of metal off, 118 and 2 prices not known, margin 24 %". */
  readonly words: string;
  readonly figures: readonly AnswerRow[];
}
const RANKINGS: Readonly<Record<RankingName, string>> = {
  'least-metal': 'Least metal removed',
  'least-cost': 'Least cost',
  'most-margin': 'Most margin',
};

/** `whole`: the search went to its end. */
export function foundView(answer: FinderAnswer, shownIn: ShownIn, whole = true): FoundView {
  return {
    words: whole ? answer.words : [brokenOff(answer)],
    rankings: (Object.keys(RANKINGS) as readonly RankingName[]).map((name) => ({
      name,
      title: RANKINGS[name],
      combinations: answer.best[name].map((one) => combinationOf(one, shownIn)),
    })),
    ...(answer.together && { nearest: combinationOf(answer.together.with, shownIn) }),
    missing: answer.missing.map(({ what, for: purpose }) => `${what}, for ${purpose}`),
  };
}

const brokenOff = ({ feasible, raw }: FinderAnswer): string =>
  `${feasible} of ${raw} combinations kept everything when the search was cancelled; the rest was not looked at.`;

/** Name of a found combination: the number of the option taken of each choice. The same within one search only. */
export const foundId = ({ picked }: Pick<FoundCombination, 'picked'>): string => picked.join('-');

function combinationOf(one: FoundCombination, shownIn: ShownIn): FoundCombinationView {
  return {
    id: foundId(one),
    combination: one,
    parts: one.options.map(({ choice, option }) => ({
      name: choiceTitle(choice),
      text: optionWords(choice, option, shownIn),
    })),
    words: [metalWords(one, shownIn), costWords(one), `least margin ${percent(one.worst)}`].join('; '),
    figures: one.figures.map((figure) => heldRow(figure, shownIn)),
  };
}

/** "deck cut, bank left". */
export function choiceTitle(choice: string): string {
  const [kind = '', bank] = choice.split('@');
  const title = TITLES[kind as keyof typeof TITLES] ?? kind;
  return bank === undefined ? title : `${title}, bank ${bank}`;
}

const QUANTITIES: Readonly<Record<string, QuantityKind>> = {
  'chamber.value': 'volume',
  'cam-advance.value': 'angle',
  'rocker-ratio.value': 'ratio',
  'piston.crownVolume': 'volume',
};
const SIZES: Readonly<Record<string, string>> = { compressionHeight: 'compression height ', crownVolume: 'crown ' };
/** The bore of a gasket follows from which one it is. */
const UNSAID = new Set(['bore', 'pocketDeeper']);

function optionWords(choice: string, { name, sizes, asIs }: Option, shownIn: ShownIn): string {
  const kind = choice.split('@')[0] ?? '';
  if (asIs === true) return kind === 'piston' ? 'as they are' : 'none';
  const each = Object.entries(sizes)
    .filter(([size]) => !UNSAID.has(size))
    .map(([size, value]) => {
      const quantity = QUANTITIES[`${kind}.${size}`] ?? 'length';
      return `${SIZES[size] ?? ''}${shownQuantity(quantity, sizeValue(value), shownIn)}`;
    });
  return [...each, ...(name === '' ? [] : [name])].join(', ');
}

const metalWords = ({ metal }: FoundCombination, shownIn: ShownIn): string =>
  metal === 0 ? 'no metal taken off' : `${shownQuantity('length', metal, shownIn)} of metal off all faces together`;

function costWords({ cost, unpriced }: FoundCombination): string {
  const unknown = unpriced === 0 ? '' : `${unpriced} ${unpriced === 1 ? 'price' : 'prices'} not known`;
  if (cost === 0 && unpriced > 0) return unknown;
  return `cost ${cost}${unknown === '' ? '' : `, ${unknown}`}`;
}
const percent = (share: number): string => `${Math.round(share * 100)} %`;

/** How near a limit counts as near: a twentieth of what the margin is a share of (common practice, no source). */
const NEAR = 0.05;

function heldRow(figure: HeldFigure, shownIn: ShownIn): AnswerRow {
  const { key, name, quantity, value, low, high, margin, shareOf } = figure;
  const ends = { ...(low !== undefined && { low }), ...(high !== undefined && { high }) };
  const nearEnd = high === undefined || (low !== undefined && value - low <= high - value) ? 'low' : 'high';
  return {
    key,
    name,
    value: shownQuantity(quantity, value, shownIn),
    doubt: '',
    verdict: margin < 0 ? 'out' : margin < NEAR ? 'near' : 'in',
    limit: shownEnds(quantity, ends, shownIn),
    origin: '',
    nearEnd,
    distance: `margin ${percent(margin)} of ${shareOf}`,
  };
}

/** Chances as they stand beside the figures of a combination: for each limit, and for all together. */
export function chancesView(rows: readonly AnswerRow[], { limits, together, unstated }: Chances) {
  const byKey = new Map(limits.map((one) => [one.key, one]));
  return {
    figures: rows.map((row): AnswerRow => {
      const own = byKey.get(row.key);
      return own === undefined ? row : { ...row, chance: chanceWords(own.byDerivatives ?? own.byTrials) };
    }),
    together: chanceWords(together.byDerivatives ?? together.byTrials),
    unstated,
  };
}
