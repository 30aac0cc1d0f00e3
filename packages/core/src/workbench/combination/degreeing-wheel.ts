/** The degree wheel as it stands now, with what was read of one lobe round its rim. */

import type { StopReading } from '../../assess/index.js';
import { type DegreeingAnswer, figure, type LobeDegreed } from '../../assess/index.js';
import { degreeWheel, type WheelMark } from '../../drawing/combination/index.js';
import type { Figure, Shown } from '../../drawing/index.js';
import { inDegrees } from './degreeing-shown.js';
import type { Tried } from './tried.js';

export interface WheelNow {
  readonly answer: DegreeingAnswer;
  readonly stops: readonly StopReading[];
  readonly lobe: LobeDegreed | undefined;
  /** [rad]; where nothing was read yet the wheel stands at 0. */
  readonly wheel: number;
}

export function wheelFigure(tried: Tried, { answer, stops, lobe, wheel }: WheelNow, shown: Shown): Figure {
  const [stroke, rod] = ['stroke', 'rod-length'].map((key) => figure(tried, key)?.value);
  const top = wheelAtTop(answer, lobe);
  return degreeWheel(
    {
      title: 'Degree wheel',
      reading: inDegrees(wheel),
      rotation: tried.engine.layout.rotation,
      marks: marksOf(stops, lobe),
      ...(top !== undefined && { top: inDegrees(top) }),
      ...(stroke !== undefined && rod !== undefined && { throwOverRod: stroke / 2 / rod }),
    },
    shown,
  );
}

/** What the wheel reads at the top of the lobe's own cylinder [rad]: by its placed readings, else by the stop. */
export function wheelAtTop({ deadCentre }: DegreeingAnswer, lobe: LobeDegreed | undefined): number | undefined {
  if (deadCentre === undefined) return undefined;
  const [reading] = lobe?.readings ?? [];
  return reading === undefined ? deadCentre.top : reading.wheel - reading.angle;
}

function marksOf(stops: readonly StopReading[], lobe: LobeDegreed | undefined): readonly WheelMark[] {
  const off = new Set(lobe?.suspects.map(({ reading }) => reading));
  return [
    ...stops
      .flatMap(({ first, second }) => [first, second].map(inDegrees))
      .map((reading): WheelMark => ({ reading, kind: 'stop' })),
    ...(lobe?.readings ?? []).map(
      (one): WheelMark => ({ reading: inDegrees(one.wheel), kind: off.has(one) ? 'off' : 'read' }),
    ),
    ...(lobe?.next ?? []).map(({ wheel }): WheelMark => ({ reading: inDegrees(wheel), kind: 'next' })),
  ];
}
