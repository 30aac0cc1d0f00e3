/** The order to the machine shop with its parts list, and what came back held against it: all from engine and log. */
import {
  type Assessment,
  type Measured,
  type OrderedLine,
  type OrderLine,
  orderLines,
  partsList,
  type Returned,
  type ReturnedPlace,
  returnedWork,
  windowsOf,
} from '../assess/index.js';
import type { Window } from '../engine/index.js';
import { assessmentOf } from './assessment.js';
import { type Bench, givenBy } from './bench.js';
import { decisionViews } from './decision-view.js';
import type { DecisionView, OrderLineView, OrderView, ShownIn } from './measure-views.js';
import { shownFigure, shownWindow } from './shown-figures.js';
import type { Caution } from './views.js';

const middle = ({ low = 0, high = 0 }: Window<number>): number => (low + high) / 2;
const isClosed = ({ low, high }: Window<number>): boolean => low !== undefined && high !== undefined && low !== high;

interface Shown {
  readonly target: string;
  readonly tolerance: string;
}
/** "102.362 mm" with "±0.005 mm"; a window that is open at one end is said as it is and has no tolerance. */
function shownTarget(measured: Measured, window: Window<number>, shownIn: ShownIn): Shown {
  if (!isClosed(window)) return { target: shownWindow(measured, window, shownIn), tolerance: '' };
  const half = ((window.high ?? 0) - (window.low ?? 0)) / 2;
  return {
    target: shownFigure(measured, middle(window), shownIn),
    tolerance: `±${shownFigure(measured, half, shownIn)}`,
  };
}

const sameWindow = (one: Window<number>, other: Window<number>): boolean =>
  one.low === other.low && one.high === other.high;

/** The target of a whole line: one figure where all places have the same window. */
function lineTarget(line: OrderLine, shownIn: ShownIn): Shown {
  const measured = line.measured ?? 'length';
  const windows = windowsOf(line).map(({ window }) => window);
  const [first] = windows;
  if (first === undefined) return { target: 'as described', tolerance: '' };
  if (windows.every((one) => sameWindow(one, first))) return shownTarget(measured, first, shownIn);
  return { target: 'each place its own', tolerance: '' };
}

function placeNames({ plan }: Assessment, { property = '' }: OrderLine): ReadonlyMap<string, string> {
  const feature = plan.features.find(({ kind }) => kind.id === property.slice(0, property.indexOf('.')));
  return new Map((feature?.places ?? []).map(({ id, name }) => [id, name]));
}

function placesOf(
  assessment: Assessment,
  line: OrderLine,
  returned: Returned | undefined,
  shownIn: ShownIn,
): OrderLineView['places'] {
  const names = placeNames(assessment, line);
  const back = new Map((returned?.places ?? []).map((one) => [one.place, one]));
  const windows = new Map(windowsOf(line).map((one) => [one.place, one]));
  return line.places.map((place) => {
    const own = windows.get(place);
    const one = back.get(place);
    return {
      name: names.get(place) ?? one?.name ?? place,
      target: own === undefined ? '' : shownWindow(line.measured ?? 'length', own.window, shownIn),
      fittedTo: own?.fittedTo ?? '',
      ...(one === undefined ? {} : { returned: placeBack(line.measured ?? 'length', one, shownIn) }),
    };
  });
}

/** What a place has become: size with its doubt, and how far beyond what was ordered. */
function placeBack(
  measured: Measured,
  one: ReturnedPlace,
  shownIn: ShownIn,
): NonNullable<OrderLineView['places'][number]['returned']> {
  const { state, size, verdict, beyond, read, of } = one;
  if (state === 'away') return { state: verdict, words: 'not back yet' };
  if (size === undefined) return { state: verdict, words: `back, ${read} of ${of} read again` };
  const doubt = size.u === undefined ? ', uncertainty not known' : ` ±${shownFigure(measured, 2 * size.u, shownIn)}`;
  const off =
    beyond === undefined
      ? ''
      : `, ${shownFigure(measured, Math.abs(beyond), shownIn)} too ${beyond > 0 ? 'large' : 'small'}`;
  return { state: verdict, words: `${shownFigure(measured, size.value, shownIn)}${doubt}${off}` };
}

/** One sentence for the whole line: how many are in, and which are not. */
function returnedWords(returned: Returned | undefined, { property }: OrderLine): OrderLineView['returned'] {
  if (returned === undefined) {
    const words = property === undefined ? 'no reading belongs to this work: look at it' : 'no size was ordered';
    return { state: 'no data', words };
  }
  const { places, verdict } = returned;
  const away = places.filter(({ state }) => state === 'away');
  if (away.length === places.length) return { state: verdict, words: 'not back yet' };
  const measured = places.filter(({ state }) => state === 'measured');
  const said = (['out', 'check again', 'near'] as const).flatMap((word) => {
    const names = measured.filter((one) => one.verdict === word).map(({ name }) => name);
    return names.length === 0 ? [] : [`${word}: ${names.join(', ')}`];
  });
  const unknown = measured.filter((one) => one.verdict === 'no data').length;
  const parts = [
    `${measured.filter((one) => one.verdict === 'in').length} of ${places.length} in`,
    ...said,
    ...(unknown > 0 ? [`${unknown} measured, uncertainty not known`] : []),
    ...(measured.length + away.length < places.length
      ? [`${places.length - measured.length - away.length} to measure again`]
      : []),
    ...(away.length > 0 ? [`${away.length} not back`] : []),
  ];
  return { state: verdict, words: parts.join('; ') };
}

/** The plate that the sheet asks for stands on every line about bores, whichever decision wrote the line. */
function withOf(bench: Bench, line: OrderLine): string {
  const plate = bench.engine.machining?.torquePlate;
  if (line.with !== undefined) return line.with;
  return plate !== undefined && line.property?.startsWith('cylinder-bore.') ? plate : '';
}
/** D64: what a bore is with the plate on is what counts; a shop without one says so before it hones. */
function plateNotes(bench: Bench, line: OrderLine): readonly string[] {
  if (!line.property?.startsWith('cylinder-bore.')) return [];
  return bench.engine.machining?.torquePlate === undefined
    ? ['The sheet names no torque plate: ask the maker whether the bores are honed under one.']
    : [
        'Sizes hold with the plate on; write down the bore with the plate off as well, so that it can be told later what the bolts do.',
      ];
}

function lineView(bench: Bench, { line, choice }: OrderedLine, number: number, shownIn: ShownIn): OrderLineView {
  const assessment = assessmentOf(bench);
  const returned = returnedWork(assessment, line, choice);
  const { by, at, entry, reason } = choice;
  return {
    id: line.id,
    number,
    operation: line.operation,
    part: line.part,
    ...lineTarget(line, shownIn),
    places: placesOf(assessment, line, returned, shownIn),
    finish: line.finish ?? '',
    fittedTo: line.fittedTo ?? '',
    with: withOf(bench, line),
    notes: [...line.notes, ...plateNotes(bench, line)],
    decidedBy: { ...(givenBy(bench, entry) ?? { by, at, entry }), reason },
    returned: returnedWords(returned, line),
  };
}

const MOST_NAMED = 3;
/** Decisions that may still change the order: to be taken, waiting for data, or overtaken by what was measured since. */
function openLines(decisions: readonly DecisionView[]): readonly string[] {
  const waitsFor = ({ missing }: DecisionView) => {
    const more = missing.length - MOST_NAMED;
    return `${missing.slice(0, MOST_NAMED).join('; ')}${more > 0 ? `; and ${more} more` : ''}`;
  };
  return decisions.flatMap((one) => {
    if (one.state === 'open') return [`${one.title}: to be decided`];
    if (one.state === 'waiting') return [`${one.title}: waits for ${waitsFor(one)}`];
    return one.state === 'changed'
      ? [`${one.title}: computed otherwise since it was decided: ${one.decided?.differs[0] ?? ''}`]
      : [];
  });
}

/** Gauges whose readings stand behind the order, with their resolution and how they were checked. */
function measuredWith({ readings }: Assessment): readonly string[] {
  const used = new Set(
    [...readings.bySlot.values(), ...readings.before.values()].flat().map(({ instrument }) => instrument),
  );
  return [...readings.instruments.values()]
    .filter(({ id }) => used.has(id))
    .map(({ name, kind, unit, measured, resolution, id }) => {
      const checks = readings.checks.filter(({ instrument }) => instrument === id).length;
      const step = shownFigure(measured, resolution, { length: unit === 'in' ? 'in' : 'mm' });
      return `${name} (${kind.replaceAll('-', ' ')}, reads ${step}, ${checks === 0 ? 'not held to a standard' : `held to a standard ${checks === 1 ? 'once' : `${checks} times`}`})`;
    });
}

const CAUTIONS: readonly Caution[] = [
  {
    word: 'NOTICE',
    can: 'A size that is cut away cannot be put back.',
    because: 'This order rests on readings of the engine as it was found.',
    act: 'Measure the part that it is fitted to before the last cut; where this order and the maker’s manual differ, stop and ask: the manual outranks it.',
  },
  {
    word: 'NOTICE',
    can: 'The shop knows its machines better than a list does.',
    because: 'Figures here are targets, not a way of working.',
    act: 'The shop’s own practice and local codes decide how the work is done and what has to be tested.',
  },
];

/** The whole order: every line that a standing choice asks for, the parts list, what is still open, and what came back. */
export function orderView(bench: Bench, shownIn: ShownIn): OrderView {
  const assessment = assessmentOf(bench);
  return {
    title: `Machine-shop order for ${bench.engine.name}`,
    invented: bench.engine.invented,
    lines: orderLines(assessment.readings).map((ordered, at) => lineView(bench, ordered, at + 1, shownIn)),
    buys: partsList(assessment.readings).map(({ part, partNumber, size, count, for: use }) => ({
      part,
      partNumber: partNumber ?? '',
      size,
      count,
      for: use,
    })),
    open: openLines(decisionViews(bench, shownIn)),
    measuredWith: measuredWith(assessment),
    cautions: CAUTIONS,
  };
}
