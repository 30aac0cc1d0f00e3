/** What the cut of a deck or head face has in common: how much is needed, what is left, what moves with it. */
import { discVolume, intakeFace } from '../../calc/cylinder/index.js';
import type { Window } from '../../engine/index.js';
import { type Angle, inch, type Length } from '../../quantity/index.js';
import type { Assessment, ShownFigure } from '../model.js';
import { figure } from './decision.js';
import type { LengthWords } from './length-words.js';
import { volumeWords } from './other-words.js';

/** Half of the width in which a surface grinder or mill hits a height. Common practice, no source. */
const USUAL_HALF_WIDTH = inch(0.001);

/** Window of a height after a cut [m]: about the height aimed at, never below the least that may be left. */
export function heightAfter(
  aim: number,
  least: number | undefined,
): Window<number> & { readonly low: number; readonly high: number } {
  const low = least === undefined ? aim - USUAL_HALF_WIDTH : Math.max(least, aim - USUAL_HALF_WIDTH);
  return { low, high: Math.max(aim + USUAL_HALF_WIDTH, low) };
}
export const TOLERANCE_FROM = 'Height after the cut to ± 0.001 in (common practice, no source)';

/**
 * What a cut does to the intake side of a vee engine and to the combustion space, in figures of a decision. The angle of the intake
 * face is not in the sheet: the figures are for a face square to the deck.
 */
export function consequences(
  assessment: Assessment,
  bank: string,
  cut: number,
  words: LengthWords,
): readonly ShownFigure[] {
  const { layout, crankTrain, stock } = assessment.engine;
  const angle = layout.banks.find(({ id }) => id === bank)?.angle;
  const bore = stock?.headGaskets.find((one) => one.bore !== undefined)?.bore ?? crankTrain.bore?.value;
  const lost =
    bore === undefined
      ? []
      : [figure('space taken from each cylinder, at most', volumeWords(discVolume(bore, cut as Length)))];
  if (layout.form !== 'vee' || angle === undefined || cut <= 0) return lost;
  const alpha = Math.abs(angle) as Angle;
  const { faceCut, drop } = intakeFace(cut as Length, alpha, alpha, 0 as Length);
  return [
    ...lost,
    figure('intake face of the head, square to the deck', `take off ${words.length(faceCut)}`),
    figure('manifold comes down by', words.length(drop)),
  ];
}

/** What must be looked at after any cut of a face. */
export function cutCautions({ engine }: Assessment): readonly string[] {
  return [
    ...(engine.layout.form === 'vee'
      ? [
          'Both banks are cut alike, so that the manifold still fits; another angle of the intake face: calculation cylinder.intake-face.',
        ]
      : []),
    'A cut raises the compression, brings valves nearer to the pistons, and shortens what the pushrods or the cam drive have to reach.',
  ];
}
