/** Compression as its screen shows it: one cylinder built up part by part, every ratio beside it, and the way back from a wanted ratio. */
import {
  type Answered,
  type AnsweredFigure,
  compressionOf,
  intakeFacesOf,
  type RatioGoal,
  solveCompression,
} from '../../assess/index.js';
import type { StackShown } from '../../drawing/combination/index.js';
import type { CylinderNumber } from '../../engine/index.js';
import type { Bench } from '../bench.js';
import type { AnswerRow, PlaceView, SubjectView } from '../combination-views.js';
import type { ShownIn } from '../measure-views.js';
import { answerRows } from './answers.js';
import { stackShown } from './compression-stack.js';
import type { InputWish } from './inputs.js';
import { shownQuantity } from './shown.js';
import { subjectView } from './subject.js';
import type { Tried } from './tried.js';

export interface CompressionWish {
  /** The first of the engine where left out. */
  readonly cylinder?: CylinderNumber;
  /** A change holds for the chosen cylinder only. */
  readonly alone?: boolean;
  /** What is wanted, for the way back. */
  readonly goal?: RatioGoal;
}
export interface CompressionView extends SubjectView {
  readonly cylinder: CylinderNumber;
  readonly cylinders: readonly PlaceView[];
  /** The chosen cylinder, built up part by part. */
  readonly stack: StackShown;
  /** What each part alone would have to be for the goal. */
  readonly solved: readonly AnswerRow[];
  readonly solvedCautions: readonly string[];
  /** Intake faces of a vee, as soon as anything moves a head. */
  readonly intake: readonly AnswerRow[];
}

const OF_CYLINDER = [
  'chamber-volume',
  'gasket-thickness',
  'gasket-bore',
  'head-cut',
  'deck-cut',
  'deck-clearance',
  'compression-height',
  'deck-height',
  'rod-length',
  'piston-volume',
  'pocket-volume',
  'land-diameter',
  'land-height',
  'other-volume',
  'bore',
  'stroke',
  'chamber-area',
  'head-thickness',
] as const;
const OF_ENGINE = [
  'intake-closes',
  'closing-allowance',
  'cam-advance',
  'ratio-least',
  'ratio-most',
  'ratio-spread-most',
  'quench-least',
  'quench-most',
  'effective-ratio-least',
  'effective-ratio-most',
] as const;
const OF_VEE = ['gasket-thickness-before', 'intake-face-angle', 'intake-gasket-change'] as const;

/** One cylinder's stack and all ratios, as tried; a cylinder that the engine has not gives its first. `goal` is a wanted ratio to 1, for the ways back. */
export function compressionView(
  bench: Bench,
  tried: Tried,
  shownIn: ShownIn,
  { cylinder: asked, alone = false, goal }: CompressionWish,
): CompressionView {
  const answered = compressionOf(tried);
  const stack = answered.stacks.find((one) => one.cylinder === asked) ?? answered.stacks[0]!;
  const { cylinder } = stack;
  const faces = intakeFacesOf(tried);
  const solved = goal === undefined ? NOTHING : solveCompression(tried, goal);
  const here = (one: AnsweredFigure): boolean => one.cylinder === undefined || one.cylinder === cylinder;
  const vee = faces.figures.length > 0;
  // Where nothing moves a head, rows of nothing say nothing.
  const moved = faces.figures.some(({ value }) => Math.abs(value) > STILL);
  return {
    ...subjectView(
      bench,
      tried,
      {
        id: 'compression',
        inputs: inputsOf(cylinder, alone, vee),
        answered: { ...answered, missing: vee ? [...answered.missing, ...faces.missing] : answered.missing },
        shown: here,
        plots: [],
      },
      shownIn,
    ),
    cylinder,
    cylinders: answered.stacks.map((one) => placeOf(answered, one.cylinder, shownIn)),
    stack: stackShown(tried, stack, deckOf(answered, cylinder), shownIn),
    solved: answerRows(solved, shownIn, here),
    solvedCautions: solved.cautions,
    intake: answerRows(faces, shownIn, () => moved),
  };
}
/** A nanometre. */
const STILL = 1e-9;
const NOTHING: Pick<Answered, 'figures' | 'cautions'> = { figures: [], cautions: [] };

function inputsOf(cylinder: CylinderNumber, alone: boolean, vee: boolean): readonly InputWish[] {
  return [
    ...OF_CYLINDER.map((key): InputWish => (alone ? `${key}@${cylinder}` : { key, at: cylinder })),
    ...OF_ENGINE,
    ...(vee ? OF_VEE.map((key): InputWish => ({ key, at: cylinder })) : []),
  ];
}

const deckOf = ({ figures }: Answered, cylinder: CylinderNumber): number | undefined =>
  figures.find((one) => one.key === 'deck-clearance' && one.cylinder === cylinder)?.value;

function placeOf({ figures }: Answered, cylinder: CylinderNumber, shownIn: ShownIn): PlaceView {
  const ratio = figures.find((one) => one.key === 'ratio' && one.cylinder === cylinder);
  return {
    id: `${cylinder}`,
    name: `${cylinder}`,
    value: ratio === undefined ? '' : shownQuantity('ratio', ratio.value, shownIn),
    ...(ratio?.verdict !== undefined && { verdict: ratio.verdict }),
  };
}
