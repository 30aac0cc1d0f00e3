/** A figure as a person types it: for the scratch copy as a value, for the log as a statement with its reason. */
import { figureKind, figureParts } from '../../engine/index.js';
import { describeFault, done, type Outcome, parseQuantity, refused } from '../../quantity/index.js';
import { FIGURE_UNITS, type StatedReading } from '../../record/index.js';
import type { Bench } from '../bench.js';
import type { ShownIn } from '../measure-views.js';
import { type Proposal, propose } from '../propose.js';
import { shownWay } from './shown.js';

/** Digits alone are meant in the unit that stands beside the field. */
const BARE = /^[\s\d.,+\-−]+$/;

/** A typed figure, or one line why it is none. One of several words is taken as its place in their list. */
export function typedFigure(key: string, text: string, shownIn: ShownIn): Outcome<StatedReading, string> {
  const kind = figureKind(figureParts(key).key);
  if (kind === undefined) return refused(`"${key}" is no figure of the combination.`);
  const typed = text.trim();
  if (kind.choices) {
    const at = kind.choices.indexOf(typed);
    if (at < 0) return refused(`${kind.title}: ${kind.choices.join(' or ')} is valid.`);
    return done({ text: typed, value: at, unit: '1' });
  }
  if (typed === '') return refused(`${kind.title}: type a figure.`);
  const { unit } = shownWay(kind.quantity, shownIn);
  const whole = BARE.test(typed) && unit !== '' ? `${typed} ${unit}` : typed;
  const read = parseQuantity(kind.quantity, whole);
  if (!read.ok) return refused(describeFault(read.fault));
  const { value } = read.value;
  if (kind.sign === 'positive' && !(value > 0)) return refused(`${kind.title}: above 0 is valid.`);
  if (kind.sign === 'not-negative' && value < 0) return refused(`${kind.title}: 0 or more is valid.`);
  return done({ text: whole, value, unit: FIGURE_UNITS[kind.quantity] ?? '1' });
}

export interface FigureWish {
  readonly key: string;
  /** As typed. */
  readonly text: string;
  /** Where it comes from, in the person's words. */
  readonly why: string;
}
/** The entry for a figure that a person states; without saying where it comes from none is made. */
export function proposeFigure(bench: Bench, { key, text, why }: FigureWish, shownIn: ShownIn): Proposal {
  if (why.trim() === '') return refused('Say where the figure comes from: card, drawing, scale, catalogue page.');
  const reading = typedFigure(key, text, shownIn);
  if (!reading.ok) return reading;
  return propose(bench, { kind: 'figure-stated', data: { key, reading: reading.value, why: why.trim() } });
}
