/** Plot of the least room of both kinds of valve over the place of the cam. */
import type { CamWindowAnswer } from '../../../assess/index.js';
import type { ValveKind } from '../../../engine/index.js';
import type { DisplaySystem } from '../../../quantity/index.js';
import { axisOver } from '../axis.js';
import type { Curve, Plot, PlotMark } from '../plot.js';
import { degreesOf, readerUnit } from './reader-units.js';
import { leastLimits } from './valve-room-plot.js';

/** Room over the curves for the names of places. */
const OVER = 1.2;
const KINDS = ['intake', 'exhaust'] as const;
const LOOKS: Readonly<Record<ValveKind, Pick<Curve, 'line' | 'symbol'>>> = {
  intake: { line: 'solid', symbol: 'circle' },
  exhaust: { line: 'dashed', symbol: 'square' },
};

/** `advance` [rad]: how far the cam is turned ahead now. */
export function roomAdvancePlot(
  { table, window, limits }: Pick<CamWindowAnswer, 'table' | 'window' | 'limits'>,
  advance: number,
  system: DisplaySystem,
): Plot {
  const length = readerUnit('length', system);
  const curves = KINDS.flatMap((kind): Curve | readonly [] => {
    const points = table.flatMap((at) => {
      const room = at[kind];
      return room === undefined ? [] : [[degreesOf(at.advance), length.of(room)] as const];
    });
    return points.length === 0 ? [] : { id: kind, name: kind, axis: 'left', points, ...LOOKS[kind] };
  });
  const ends = [table[0]?.advance ?? 0, table.at(-1)?.advance ?? 0].map(degreesOf) as [number, number];
  const held = leastLimits(
    KINDS.flatMap((kind) => (limits[kind] === undefined ? [] : [{ kind, limit: limits[kind] }])),
    length.of,
  );
  const line = (id: string, name: string, angle: number | undefined): readonly PlotMark[] =>
    angle === undefined ? [] : [{ id, name, x: degreesOf(angle), axis: 'left' }];
  return {
    id: 'room-over-advance',
    title: 'Least room as the cam is moved',
    description: 'Least room of each kind of valve over the overlap, for every place of the cam.',
    x: { name: 'cam earlier', unit: '°', from: ends[0], to: ends[1], places: 0 },
    left: axisOver(
      'least room',
      length.unit,
      curves.flatMap(({ points }) => points.map(([, y]) => y)),
      [0, OVER * Math.max(0, ...curves.flatMap(({ points }) => points.map(([, y]) => y))), ...held.map(({ at }) => at)],
    ),
    curves,
    limits: held,
    marks: [
      ...line('now', 'now', advance),
      ...line('most', 'earliest', window?.most),
      ...line('least', 'latest', window?.least),
    ],
  };
}
