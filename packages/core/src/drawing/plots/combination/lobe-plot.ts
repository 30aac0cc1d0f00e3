/** Plots of a lobe as it grows from its readings: lift over the crank, and how far each reading lies off the curve. */
import type { LobeDegreed, PlacedReading } from '../../../assess/index.js';
import type { DisplaySystem } from '../../../quantity/index.js';
import { axisOver, crankAxis } from '../axis.js';
import type { Curve, Plot, PlotMark } from '../plot.js';
import { degreesOf, readerUnit } from './reader-units.js';

export interface LobeShown {
  readonly lobe: LobeDegreed;
  /** "cylinder 1 intake". */
  readonly name: string;
  /** What the centreline should be, crank angle after the lobe's own top of overlap [rad]. */
  readonly wanted?: number;
}
type Points = Curve['points'];
const CRANK = 'crank after top of overlap';
const STEP = 30;

/** Readings, the curve through them and that of the card, with both centrelines and the places that would help most. */
export function lobePlot({ lobe, name, wanted }: LobeShown, system: DisplaySystem): Plot {
  const length = readerUnit('length', system);
  const inUnits = (points: Points): Points => points.map(([x, y]) => [x, length.of(y)]);
  const off = new Set(lobe.suspects.map(({ reading }) => reading));
  const [good, wrong] = [lobe.readings.filter((one) => !off.has(one)), lobe.readings.filter((one) => off.has(one))];
  const curves: readonly Curve[] = [
    curveOf('card', 'card', inUnits(lobe.card), 'dashed'),
    curveOf('fit', 'curve through the readings', inUnits(lobe.curve), 'solid'),
    { ...curveOf('read', 'read', inUnits(good.map(placeOf)), 'none'), symbol: 'circle' },
    { ...curveOf('off', 'read, looks wrong', inUnits(wrong.map(placeOf)), 'none'), symbol: 'cross' },
  ];
  const shown = curves.filter(({ points }) => points.length > 0);
  const marks = marksOf(lobe, wanted);
  const xs = [...shown.flatMap(({ points }) => points.map(([x]) => x)), ...marks.map(({ x }) => x)];
  const [from, to] = xs.length === 0 ? [-STEP, STEP] : reachOf(xs);
  return {
    id: `lobe-${lobe.lobe.cylinder}-${lobe.lobe.kind}-${lobe.lobe.index}`,
    title: `Lobe of ${name}`,
    description: `Lift of the lobe of ${name} over the crank, ${lobe.readings.length} readings.`,
    x: crankAxis(CRANK, from, to),
    left: axisOver(
      'lobe lift',
      length.unit,
      shown.flatMap(({ points }) => points.map(([, y]) => y)),
      [0],
    ),
    curves: shown,
    limits: [],
    marks,
  };
}

/** What an indicator of hundredths shows of a reading; finer than this there is nothing to see. */
const SEEN = 5e-6;

/** Read less the curve; undefined before there is a curve. */
export function offCurvePlot({ lobe, name }: LobeShown, system: DisplaySystem): Plot | undefined {
  if (lobe.residuals.length === 0) return undefined;
  const small =
    system === 'inch'
      ? { unit: '0.001 in', of: (m: number) => m / 25.4e-6 }
      : { unit: 'µm', of: (m: number) => m * 1e6 };
  const seen = small.of(SEEN);
  const points: Points = lobe.residuals.map(([x, y]) => [x, small.of(y)]);
  const [from, to] = reachOf(points.map(([x]) => x));
  return {
    id: `off-curve-${lobe.lobe.cylinder}-${lobe.lobe.kind}-${lobe.lobe.index}`,
    title: `Readings off the curve, ${name}`,
    description: 'How far each reading lies above or below the curve through all of them.',
    x: crankAxis(CRANK, from, to),
    left: axisOver(
      'read less curve',
      small.unit,
      points.map(([, y]) => y),
      [-seen, seen],
    ),
    curves: [
      { ...curveOf('off', 'read less curve', points, 'none'), symbol: 'circle' },
      curveOf(
        'curve',
        'curve',
        [
          [from, 0],
          [to, 0],
        ],
        'solid',
      ),
    ],
    limits: [],
    marks: lobe.suspects.map(({ reading, off }, at) => ({
      id: `wrong-${at + 1}`,
      name: 'looks wrong',
      x: degreesOf(reading.angle),
      y: small.of(off),
      axis: 'left',
    })),
  };
}

const placeOf = ({ angle, lift }: PlacedReading): readonly [number, number] => [degreesOf(angle), lift];
const curveOf = (id: string, name: string, points: Points, line: Curve['line']): Curve => ({
  id,
  name,
  axis: 'left',
  points,
  line,
});
const reachOf = (xs: readonly number[]): readonly [number, number] => [
  Math.floor(Math.min(...xs) / STEP) * STEP,
  Math.ceil(Math.max(...xs) / STEP) * STEP,
];

function marksOf({ middle, next }: LobeDegreed, wanted: number | undefined): readonly PlotMark[] {
  const line = (id: string, name: string, angle: number): PlotMark => ({ id, name, x: degreesOf(angle), axis: 'left' });
  return [
    ...(middle === undefined ? [] : [line('centreline', 'centreline', middle.value)]),
    ...(wanted === undefined ? [] : [line('wanted', 'wanted', wanted)]),
    ...next.map(({ angle }, at) => ({
      id: `next-${at + 1}`,
      name: `read ${at + 1}`,
      x: degreesOf(angle),
      y: 0,
      axis: 'left' as const,
    })),
  ];
}
