/** Degreeing as its screen shows it: the stop, the lobe that grows, what looks wrong, where to read next, and what would correct the cam. */
import type { Answered, AnsweredFigure, DegreeingAnswer } from '../../assess/index.js';
import { lobePlot, offCurvePlot } from '../../drawing/plots/index.js';
import { figureKey, type ValveId, valveKey, valveName } from '../../engine/index.js';
import { type Bench, givenBy } from '../bench.js';
import { combinationReadings } from '../combination-readings.js';
import type { ShownIn } from '../measure-views.js';
import { camAtRest, curvesThroughOverlap, degreeingOf } from './cam-as-read.js';
import { camStanding } from './cam-standing.js';
import { TURNING_CAUTIONS } from './degreeing-cautions.js';
import { corrections } from './degreeing-corrections.js';
import { chosenLobe, lobeChoices, lobeWords, nextRows, readRows, wantedMiddle } from './degreeing-lobe.js';
import { degreesText, wheelText } from './degreeing-shown.js';
import type { DegreeingView, DegreeingWish } from './degreeing-views.js';
import { wheelFigure } from './degreeing-wheel.js';
import type { InputWish } from './inputs.js';
import { keyedWords } from './keyed-words.js';
import { systemOf } from './shown.js';
import { subjectView } from './subject.js';
import { timingStock } from './timing-stock.js';
import type { Tried } from './tried.js';
import { askedOf } from './valve-room-asked.js';

/** The lobe that is read or was read last, as degreed: figures in crank degrees with their doubt. Too few readings are `no data`. */
export function degreeingView(bench: Bench, tried: Tried, shownIn: ShownIn, wish: DegreeingWish): DegreeingView {
  const { cam, stops } = combinationReadings(bench.state);
  const answer = degreeingOf(bench, tried);
  const makeup = camAtRest(tried);
  const lobe = chosenLobe(bench, wish.lobe, cam.at(-1)?.lobe);
  const key = valveKey(lobe);
  const name = valveName(bench.engine, lobe);
  const degreed = answer.lobes.find((one) => valveKey(one.lobe) === key);
  const wanted = wantedMiddle(makeup, lobe);
  const { carries } = askedOf(bench, tried, wish.carries === undefined ? {} : { carries: wish.carries });
  const ways =
    degreed &&
    corrections(
      makeup,
      {
        lobe: degreed,
        atHand: wish.atHand,
        carries,
        read: curvesThroughOverlap(bench, tried),
        standing: camStanding(bench, tried, carries).carried,
      },
      shownIn,
    );
  const shownLobe = degreed && { lobe: degreed, name, ...(wanted !== undefined && { wanted }) };
  const offCurve = shownLobe && offCurvePlot(shownLobe, systemOf(shownIn));
  const last = cam.findLast((one) => valveKey(one.lobe) === key)?.wheel;
  return {
    ...subjectView(
      bench,
      tried,
      {
        id: 'degreeing',
        inputs: inputsOf(lobe),
        answered: ways === undefined ? answer : withWays(answer, ways.answered),
        shown: ownFigures(lobe, key),
        plots: shownLobe ? [lobePlot(shownLobe, systemOf(shownIn)), ...(offCurve ? [offCurve] : [])] : [],
      },
      shownIn,
    ),
    stop: stopOf(bench, answer),
    lobes: lobeChoices(bench, answer),
    lobe: { id: lobe, key, name, words: lobeWords(degreed, wanted) },
    before: TURNING_CAUTIONS,
    begun: cam.length + stops.length > 0,
    readings: readRows(bench, degreed, shownIn),
    next: nextRows(degreed),
    corrections: ways?.rows ?? [],
    stock: timingStock(bench.engine),
    carries,
    figure: wheelFigure(
      tried,
      { answer, stops, lobe: degreed, wheel: wish.wheel ?? last ?? stops.at(-1)?.second ?? 0 },
      wish.shown ?? {},
    ),
  };
}

const inputsOf = ({ kind }: ValveId): readonly InputWish[] => [
  ...(['centreline-wanted', 'lobe-lift', 'duration-at-lift', 'lobe-duration', 'lobe-fullness'] as const).map((key) =>
    figureKey(key, kind),
  ),
  'checking-lift',
  ...(['rocker-ratio', 'valve-lash'] as const).map((key) => figureKey(key, kind)),
];

/** Numbers of the lobe, of its cylinder, and of the correction. Those of the stop stand with it. */
const ownFigures =
  ({ cylinder }: ValveId, key: string) =>
  (one: AnsweredFigure): boolean =>
    one.valve === undefined
      ? one.key === 'change-wanted' || (one.cylinder === cylinder && STOP.every((each) => each !== one.key))
      : one.valve === key;
const STOP = ['wheel-at-top', 'wheel-correction', 'stop-each-side'];

const withWays = (answer: Answered, ways: Answered): Answered => ({
  figures: [...answer.figures, ...ways.figures],
  missing: [...answer.missing, ...ways.missing],
  working: [...answer.working, ...ways.working],
  sources: [...new Set([...answer.sources, ...ways.sources])],
  assumed: [...new Set([...answer.assumed, ...ways.assumed])],
  cautions: [...new Set([...answer.cautions, ...ways.cautions])],
});

function stopOf(bench: Bench, { deadCentre }: DegreeingAnswer): DegreeingView['stop'] {
  const { stops } = combinationReadings(bench.state);
  const cylinder = stops[0]?.cylinder ?? bench.engine.layout.cylinders[0]!.number;
  const pairs = stops.flatMap(({ entry }) => {
    const given = givenBy(bench, entry);
    return given === undefined
      ? []
      : [{ entry: given.entry, given, words: `stop on cylinder ${cylinder}: ${keyedWords(bench, given.entry)}` }];
  });
  if (deadCentre === undefined) return { cylinder, found: false, pairs, words: '' };
  const { top, u } = deadCentre;
  return {
    cylinder,
    found: true,
    pairs,
    words: `At the true top of cylinder ${cylinder} the wheel reads ${wheelText(top)} (±${degreesText(2 * u)}). Take the stop out; leave wheel and pointer as they are: every reading counts from there.`,
  };
}
