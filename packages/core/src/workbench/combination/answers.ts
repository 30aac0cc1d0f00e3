/** Answered numbers of a subject as rows: value, doubt, verdict, limit with its origin, distance to it and the chance that it holds. */
import type { Answered, AnsweredFigure } from '../../assess/index.js';
import type { AnswerRow } from '../combination-views.js';
import type { ShownIn } from '../measure-views.js';
import { shownEnds, shownQuantity } from './shown.js';

/** "cylinder 3", "exhaust 2 of cylinder 5", "bank left", "intake". */
export function placeOfAnswer({ cylinder, bank, kind, valve }: AnsweredFigure): string {
  if (valve !== undefined) return `valve ${valve.replaceAll('-', ' ')}`;
  return [cylinder === undefined ? '' : `cylinder ${cylinder}`, bank === undefined ? '' : `bank ${bank}`, kind ?? '']
    .filter((part) => part !== '')
    .join(', ');
}

/** Key of an answered number with its place: `ratio@3`. */
export function answerKey(figure: AnsweredFigure): string {
  const place = figure.valve ?? figure.cylinder ?? figure.bank ?? figure.kind;
  return place === undefined ? figure.key : `${figure.key}@${place}`;
}

/** Every number as a row. `only` leaves out those that it refuses. */
export const answerRows = (
  { figures }: Pick<Answered, 'figures'>,
  shownIn: ShownIn,
  only: (figure: AnsweredFigure) => boolean = () => true,
): readonly AnswerRow[] => figures.filter(only).map((one) => answerRow(one, shownIn));

function answerRow(one: AnsweredFigure, shownIn: ShownIn): AnswerRow {
  const { quantity, value, u, limit, verdict } = one;
  const place = placeOfAnswer(one);
  const near = limit && distanceOf(one, shownIn);
  return {
    key: answerKey(one),
    name: place === '' ? one.name : `${one.name}, ${place}`,
    value: shownQuantity(quantity, value, shownIn),
    doubt: u === undefined || u === 0 ? '' : `±${shownQuantity(quantity, 2 * u, shownIn)}`,
    ...(verdict !== undefined && { verdict }),
    limit: limit === undefined ? '' : shownEnds(quantity, limit, shownIn),
    origin: limit?.from ?? '',
    ...near,
    // Without any doubt there is no chance to speak of.
    ...(one.inside !== undefined && u !== 0 && { chance: chanceWords(one.inside) }),
  };
}

/** The nearer end, and how far off it the value lies. */
function distanceOf(
  { quantity, value, limit }: AnsweredFigure,
  shownIn: ShownIn,
): Pick<AnswerRow, 'distance' | 'nearEnd'> {
  const low = limit?.low === undefined ? undefined : value - limit.low;
  const high = limit?.high === undefined ? undefined : limit.high - value;
  if (low === undefined && high === undefined) return {};
  const nearEnd = high === undefined || (low !== undefined && low <= high) ? 'low' : 'high';
  const distance = (nearEnd === 'low' ? low : high) ?? 0;
  const figure = shownQuantity(quantity, Math.abs(distance), shownIn);
  const limitWords = `the ${nearEnd} limit`;
  if (distance < 0) return { nearEnd, distance: `${figure} ${nearEnd === 'low' ? 'below' : 'above'} ${limitWords}` };
  return { nearEnd, distance: `${figure} from ${limitWords}` };
}

/** A chance never reads as certain: nothing is. */
export function chanceWords(share: number): string {
  if (share > 0.995) return 'over 99 %';
  if (share < 0.005) return 'under 1 %';
  return `${Math.round(share * 100)} %`;
}
