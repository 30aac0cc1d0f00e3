/** Figures that go into a subject: value, where each comes from, and between which ends a slider moves it on the scratch copy. */
import { figure, type GivenFigure } from '../../assess/index.js';
import { type FigureKindOf, figureKind, figureParts, valveOfKey } from '../../engine/index.js';
import { fromUnit, type QuantityKind, toUnit } from '../../quantity/index.js';
import type { InputView } from '../combination-views.js';
import type { ShownIn } from '../measure-views.js';
import { PLANNED } from './planned.js';
import { shownNumber, shownWay } from './shown.js';
import { sliderEnds, sliderStep } from './slider-ends.js';
import type { Tried } from './tried.js';

/** The cylinder, kind of valve or single valve for which a figure is looked up. */
export type Spot = NonNullable<Parameters<typeof figure>[2]>;

/** A key such as `stroke` or `spring-rate@intake`; with `at`, what counts there is shown while a change is written under the key. */
export type InputWish = string | { readonly key: string; readonly at: Spot };

/** What a figure's place means for looking it up. */
export function spotOfPlace(place: string | undefined): Spot | undefined {
  if (place === undefined) return undefined;
  if (place === 'intake' || place === 'exhaust') return place;
  const valve = valveOfKey(place);
  return valve.ok ? valve.value : Number(place);
}

/** "chamber volume, cylinder 3", "spring rate, intake". */
export function titleOfFigure(key: string): string {
  const { key: bare, place } = figureParts(key);
  const title = figureKind(bare)?.title ?? bare.replaceAll('-', ' ');
  if (place === undefined) return title;
  return `${title}, ${/^\d+$/.test(place) ? `cylinder ${place}` : place.replaceAll('-', ' ')}`;
}

/** The inputs of a subject in the order of the keys. Keys of no figure are left out. */
export function inputViews(tried: Tried, wishes: readonly InputWish[], shownIn: ShownIn): readonly InputView[] {
  return wishes.flatMap((wish) => {
    const key = typeof wish === 'string' ? wish : wish.key;
    const parts = figureParts(key);
    const kind = figureKind(parts.key);
    if (kind === undefined) return [];
    const spot = typeof wish === 'string' ? spotOfPlace(parts.place) : wish.at;
    return [inputView(tried, kind, key, spot, shownIn)];
  });
}

type Given = Pick<GivenFigure, 'value' | 'origin' | 'from'>;
interface Kept {
  readonly shownIn: ShownIn;
  readonly view: InputView;
}
/** By figure and key: while a slider moves, all figures but one stand as they were. A figure of the log has one base, and what is tried is made anew. */
const views = new WeakMap<Given, Map<string, Kept>>();

function inputView(tried: Tried, kind: FigureKindOf, key: string, spot: Spot | undefined, shownIn: ShownIn): InputView {
  const bare = kind.key;
  const given = figure(tried, bare, spot) ?? (PLANNED.has(bare) ? NOTHING_PLANNED : undefined);
  if (given === undefined) return madeView(kind, key, undefined, undefined, shownIn);
  const ofFigure = views.get(given) ?? new Map<string, Kept>();
  views.set(given, ofFigure);
  const kept = ofFigure.get(key);
  if (kept?.shownIn === shownIn) return kept.view;
  const base = figure(tried.before, bare, spot) ?? (PLANNED.has(bare) ? NOTHING_PLANNED : given);
  const view = madeView(kind, key, given, base, shownIn);
  ofFigure.set(key, { shownIn, view });
  return view;
}

function madeView(
  kind: FigureKindOf,
  key: string,
  given: Given | undefined,
  base: Given | undefined,
  shownIn: ShownIn,
): InputView {
  const own = { key, title: titleOfFigure(key), meaning: kind.meaning };
  if (kind.choices) return { ...own, ...chosen(kind.choices, given), unit: '', choices: kind.choices };
  const { unit } = shownWay(kind.quantity, shownIn);
  if (given === undefined || base === undefined) return { ...own, value: '', unit, origin: 'missing', from: '' };
  const slider = sliderOf(kind, base.value, given.value, shownIn);
  return {
    ...own,
    value: shownNumber(kind.quantity, given.value, shownIn),
    unit,
    ...from(given),
    ...(slider && { slider }),
  };
}

const NOTHING_PLANNED: Given = {
  value: 0,
  origin: 'assumed',
  from: 'nothing is planned',
};
const from = ({ origin, from: words }: Given) => ({ origin, from: words });

function chosen(choices: readonly string[], given: Given | undefined) {
  if (given === undefined) return { value: '', origin: 'missing', from: '' };
  return { value: choices[given.value] ?? '', ...from(given) };
}

/** Ends rest on the figure as it is without the scratch copy, so that a slider does not run away from the hand. */
function sliderOf(kind: FigureKindOf, base: number, now: number, shownIn: ShownIn): InputView['slider'] {
  const ends = sliderEnds(kind, base);
  if (ends === undefined) return undefined;
  const { unit } = shownWay(kind.quantity, shownIn);
  const step = sliderStep(kind.quantity, shownIn);
  const shown = (value: number) => toUnit(kind.quantity, value, unit);
  const [least, most] = [Math.min(ends[0], now), Math.max(ends[1], now)];
  const down = Math.floor(shown(least) / step + WHOLE) * step;
  const up = Math.ceil(shown(most) / step - WHOLE) * step;
  return { now: shown(now), from: tidy(down), to: tidy(up), step };
}
const WHOLE = 1e-6;
const tidy = (value: number): number => Number(value.toFixed(6));

/** SI value of a number that a slider shows. */
export function slid(key: string, number: number, shownIn: ShownIn): number {
  const quantity: QuantityKind = figureKind(figureParts(key).key)?.quantity ?? 'ratio';
  return fromUnit(quantity, number, shownWay(quantity, shownIn).unit);
}
