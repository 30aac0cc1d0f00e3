/** Rockers and pushrods as their screen shows them: sweep over the stem, trials of pushrod lengths, preload. */
import {
  type Answered,
  type AnsweredFigure,
  type ContactPath,
  preloadOf,
  pushrodOf,
  type RockerAnswer,
  rockersOf,
} from '../../assess/index.js';
import { rockerSweep } from '../../drawing/combination/index.js';
import type { Figure, Shown } from '../../drawing/index.js';
import { contactPlots } from '../../drawing/plots/index.js';
import { figureKey, type ValveId, type ValveKind, valveKey, valveName, valvesOf } from '../../engine/index.js';
import { assessmentOf, findingsAt } from '../assessment.js';
import { type Bench, givenBy } from '../bench.js';
import { combinationReadings, type TriedPushrod } from '../combination-readings.js';
import type { PlaceView, SubjectView } from '../combination-views.js';
import type { ShownIn } from '../measure-views.js';
import type { ReadRow } from './degreeing-views.js';
import type { InputWish } from './inputs.js';
import { keyedWords } from './keyed-words.js';
import { shownWay, systemOf } from './shown.js';
import { subjectView } from './subject.js';
import type { Tried } from './tried.js';

export interface RockersWish {
  /** `valveKey` of the valve at which pushrods are tried. */
  readonly valve?: string;
  readonly shown?: Shown;
}
export interface RockersView extends SubjectView {
  readonly valve: { readonly id: ValveId; readonly key: string; readonly name: string; readonly kind: ValveKind };
  /** `value` says how many pushrods were tried at each; empty where none was. */
  readonly valves: readonly PlaceView[];
  /** Whether this engine has pushrods to try. */
  readonly pushrods: boolean;
  readonly trials: readonly ReadRow[];
  readonly figure: Figure;
}

const OF_KIND = [
  'rocker-ratio',
  'valve-arm',
  'valve-arm-above',
  'pushrod-arm',
  'pushrod-arm-below',
  'pushrod-tilt',
  'pushrod-length',
  'pushrod-zero-lash',
  'pushrod-gasket',
  'base-circle-smaller',
  'tip-higher',
  'pivot-higher',
  'lobe-lift',
  'valve-lash',
  'lifter-preload',
  'lifter-travel',
  'lifter-collapsed-gap',
  'lifter-preload-least',
  'lifter-preload-most',
] as const;
const OF_CYLINDER = ['gasket-thickness', 'deck-cut', 'head-cut'] as const;

/** One valve's rocker and its pushrod trials, as tried; a valve that the engine has not gives its first. Lengths in the unit that the device shows. */
export function rockersView(bench: Bench, tried: Tried, shownIn: ShownIn, wish: RockersWish): RockersView {
  const valve = valveOf(bench, wish.valve);
  const { trials: all } = combinationReadings(bench.state);
  const trials = all.get(valveKey(valve)) ?? [];
  const rockers = rockersOf(tried);
  const pushrods = pushrodOf(tried, trials.length === 0 ? {} : { trials: { [valve.kind]: trials } });
  const answered = joined([rockers, pushrods, preloadOf(tried)]);
  const own = (one: AnsweredFigure): boolean => one.kind === undefined || one.kind === valve.kind;
  return {
    ...subjectView(
      bench,
      tried,
      {
        id: 'rockers',
        inputs: [
          ...OF_CYLINDER.map((key): InputWish => ({ key, at: valve.cylinder })),
          ...OF_KIND.map((key) => figureKey(key, valve.kind)),
          'preload-turns',
        ],
        answered,
        shown: own,
        plots: plotsOf(rockers, valve.kind, shownIn),
      },
      shownIn,
    ),
    valve: { id: valve, key: valveKey(valve), name: valveName(bench.engine, valve), kind: valve.kind },
    valves: valvesOf(bench.engine).map((one) => ({
      id: valveKey(one),
      name: valveName(bench.engine, one),
      value: all.has(valveKey(one)) ? `${all.get(valveKey(one))!.length} tried` : '',
    })),
    pushrods: bench.engine.valveGear === undefined || bench.engine.valveGear.kind === 'pushrod',
    trials: trialRows(bench, trials),
    figure: sweepFigure(bench, valve, trials, pushrods, shownIn, wish.shown ?? {}),
  };
}

function valveOf(bench: Bench, asked: string | undefined): ValveId {
  const valves = valvesOf(bench.engine);
  return valves.find((one) => valveKey(one) === asked) ?? valves[0] ?? { cylinder: 1, kind: 'intake', index: 1 };
}

const joined = (all: readonly Answered[]): Answered => ({
  figures: all.flatMap(({ figures }) => figures),
  missing: all.flatMap(({ missing }) => missing),
  working: all.flatMap(({ working }) => working),
  sources: [...new Set(all.flatMap(({ sources }) => sources))],
  assumed: [...new Set(all.flatMap(({ assumed }) => assumed))],
  cautions: [...new Set(all.flatMap(({ cautions }) => cautions))],
});

function plotsOf({ paths }: RockerAnswer, kind: ValveKind, shownIn: ShownIn) {
  const path: ContactPath | undefined = paths.find((one) => one.kind === kind);
  return path === undefined ? [] : contactPlots(path, systemOf(shownIn));
}

const trialRows = (bench: Bench, trials: readonly TriedPushrod[]): readonly ReadRow[] =>
  trials.flatMap(({ entry }) => {
    const given = givenBy(bench, entry);
    return given === undefined ? [] : [{ entry, given, words: `pushrod ${keyedWords(bench, entry)}` }];
  });

/** Diameter of the stem as measured, else the middle of its printed window; undefined where neither is known. */
function stemOf(bench: Bench, valve: ValveId): number | undefined {
  const finding = findingsAt(assessmentOf(bench), 'valve-stem.diameter', valveKey(valve))[0];
  const { low, high } = finding?.held.find(({ against }) => against === 'new')?.window ?? {};
  return finding?.size?.value ?? (low === undefined || high === undefined ? undefined : (low + high) / 2);
}
const MM = 1e-3;
function sweepFigure(
  bench: Bench,
  valve: ValveId,
  trials: readonly TriedPushrod[],
  { figures }: Answered,
  shownIn: ShownIn,
  shown: Shown,
): Figure {
  const { unit } = shownWay('length', shownIn);
  const stem = stemOf(bench, valve);
  const found = (key: string) => figures.find((one) => one.key === key && one.kind === valve.kind)?.value;
  const [narrowest, centred] = [found('pushrod-narrowest'), found('pushrod-centred')];
  return rockerSweep(
    {
      title: 'Marks on the stem for each pushrod tried',
      ...(stem !== undefined && { stem: stem / MM }),
      trials: trials.map(({ length, width, offset }) => ({
        length: length / MM,
        width: width / MM,
        offset: (offset ?? 0) / MM,
      })),
      ...(narrowest !== undefined && { narrowest: narrowest / MM }),
      ...(centred !== undefined && { centred: centred / MM }),
      unit: unit === 'in' ? { name: 'in', places: 3, mm: 25.4 } : { name: 'mm', places: 1, mm: 1 },
    },
    shown,
  );
}
