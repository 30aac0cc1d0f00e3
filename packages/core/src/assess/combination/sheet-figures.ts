/** Figures that the sheet states in its own sections, each with the doubt that its print leaves. */
import type { Engine, LashFigures, Stated, ValveKind } from '../../engine/index.js';
import { figureKey, figureKind, figureParts } from '../../engine/index.js';
import { fromHalfWidth, fromStep, lastPlace, parseWindow, type QuantityKind } from '../../quantity/index.js';
import type { GivenFigure } from './model.js';

/** Standard uncertainty that a print leaves: a window by its half width, a single figure by its last digit (JCGM 100, 4.3.7). */
export function printedDoubt(quantity: QuantityKind, { text, window, value }: Stated<number>): number | undefined {
  const { low = value, high = value } = window ?? {};
  if (high > low) return fromHalfWidth((high - low) / 2);
  const read = parseWindow(quantity, text.replace(/\s*\([^()]*\)\s*$/, ''));
  return read.ok ? fromStep(lastPlace(quantity, read.value)) : undefined;
}

/** A stated figure of the sheet as a given one. */
export function sheetFigure(key: string, stated: Stated<number> | undefined): readonly GivenFigure[] {
  if (stated === undefined) return [];
  const kind = figureKind(figureParts(key).key);
  const u = kind === undefined ? undefined : kind.choices ? 0 : printedDoubt(kind.quantity, stated);
  return [{ key, value: stated.value, ...(u !== undefined && { u }), origin: 'sheet', from: stated.from.text }];
}

const KINDS: readonly ValveKind[] = ['intake', 'exhaust'];

/** Everything that the sheet states of the combination; a figure under `figures` stands before the same one elsewhere. */
export const sheetFigures = (engine: Engine): readonly GivenFigure[] => [
  ...Object.entries(engine.figures ?? {}).flatMap(([key, stated]) => sheetFigure(key, stated)),
  ...crankFigures(engine),
  ...headFigures(engine),
  ...KINDS.flatMap((kind) => valveFigures(engine, kind)),
  ...camFigures(engine),
];

const crankFigures = ({ crankTrain, layout, machining }: Engine): readonly GivenFigure[] => [
  ...sheetFigure('bore', crankTrain.bore),
  ...sheetFigure('stroke', crankTrain.stroke),
  ...sheetFigure('rod-length', crankTrain.rodLength),
  ...sheetFigure('pin-offset', crankTrain.pinOffset),
  ...sheetFigure('compression-height', crankTrain.compressionHeight),
  ...sheetFigure('deck-height', crankTrain.deckHeight),
  ...sheetFigure('printed-ratio', crankTrain.compressionRatio),
  ...sheetFigure('chamber-volume', crankTrain.chamberVolume),
  ...sheetFigure('cylinder-pitch', layout.borePitch),
  ...sheetFigure('deck-height-least', machining?.leastDeckHeight),
  ...sheetFigure('head-thickness-least', machining?.leastHeadThickness),
  ...sheetFigure('mass-match-most', machining?.massMatch),
];

const headFigures = ({ heads }: Engine): readonly GivenFigure[] =>
  heads.flatMap(({ cylinders, gasket }) => {
    const bore = gasket.openings.find(({ kind }) => kind === 'bore');
    return cylinders.flatMap((cylinder) => [
      ...sheetFigure(figureKey('gasket-thickness', cylinder), gasket.thickness),
      ...(bore === undefined ? [] : [drawn(figureKey('gasket-bore', cylinder), bore.diameter, gasket.from.text)]),
    ]);
  });
/** Drawn in the sheet: no digits are kept from which a doubt would follow. */
const drawn = (key: string, value: number, from: string): GivenFigure => ({
  key,
  value,
  u: fromStep(1e-4),
  origin: 'sheet',
  from: `${from}, drawn to a tenth of a millimetre`,
});

function valveFigures({ heads, valveGear, cam }: Engine, kind: ValveKind): readonly GivenFigure[] {
  const valve = heads.flatMap(({ valves }) => valves).find((one) => one.kind === kind);
  const from = heads[0]?.gasket.from.text ?? '';
  const key = (name: string) => figureKey(name, kind);
  return [
    ...(valve?.diameter === undefined ? [] : [drawn(key('valve-diameter'), valve.diameter, from)]),
    ...(valveGear?.kind === 'overhead-bucket'
      ? [direct(key('rocker-ratio'), 'a bucket: the valve moves as the lobe lifts')]
      : sheetFigure(key('rocker-ratio'), valveGear?.ratio)),
    ...lashFigure(key('valve-lash'), valveGear?.lash?.[kind]),
    ...sheetFigure(key('lobe-lift'), cam?.lobeLift?.[kind]),
  ];
}
const direct = (key: string, from: string): GivenFigure => ({ key, value: 1, u: 0, origin: 'sheet', from });

function lashFigure(key: string, lash: LashFigures | undefined): readonly GivenFigure[] {
  const cold = lash?.cold;
  if (cold?.window.low === undefined || cold.window.high === undefined) return [];
  const value = (cold.window.low + cold.window.high) / 2;
  return sheetFigure(key, { text: cold.text, value, window: cold.window, from: cold.from });
}

/** Cards print whole degrees; the cam itself is made to about one (common practice, no source). */
const CARD_DOUBT = fromHalfWidth(Math.PI / 180);

function camFigures({ cam }: Engine): readonly GivenFigure[] {
  if (cam === undefined) return [];
  const angle = (key: string, value: number, basis: string): GivenFigure => ({
    key,
    value,
    u: CARD_DOUBT,
    origin: 'sheet',
    from: `${cam.from.text}, ${basis}`,
  });
  const lift = cam.checkingLift === undefined ? 'at a lift that is not stated' : `at ${cam.checkingLift.text} of lift`;
  const at = cam.basis === 'seat' ? 'seat' : lift;
  const { events, advertisedDuration } = cam;
  return [
    ...(events === undefined ? [] : [angle('intake-closes', events.intakeCloses, at)]),
    ...KINDS.flatMap((kind) =>
      advertisedDuration === undefined
        ? cam.basis === 'seat' && events !== undefined
          ? [angle(figureKey('lobe-duration', kind), openFor(events, kind), 'from its events')]
          : []
        : [angle(figureKey('lobe-duration', kind), advertisedDuration[kind], 'advertised')],
    ),
  ];
}
const openFor = (events: NonNullable<NonNullable<Engine['cam']>['events']>, kind: ValveKind): number =>
  Math.PI + (kind === 'intake' ? events.intakeOpens + events.intakeCloses : events.exhaustOpens + events.exhaustCloses);
