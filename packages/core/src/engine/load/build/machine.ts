import type { Angle } from '../../../quantity/index.js';
import type { CamCard, CamEvents, CrankTrain, LashFigures, ValveGear } from '../../model.js';
import type { Path } from '../document.js';
import { given } from '../given.js';
import type { RawFigure, RawText, SheetReader } from '../reader.js';
import type { Sheet } from '../schema.js';

const LENGTHS = ['bore', 'stroke', 'rodLength', 'pinOffset', 'compressionHeight', 'deckHeight'] as const;
const VOLUMES = ['chamberVolume', 'displacement'] as const;

export function buildCrankTrain(sheet: Sheet, reader: SheetReader): CrankTrain {
  const raw = sheet.crankTrain ?? {};
  const lengths = LENGTHS.map((name) => given(name, reader.stated('length', raw[name], ['crankTrain', name])));
  const volumes = VOLUMES.map((name) => given(name, reader.stated('volume', raw[name], ['crankTrain', name])));
  return Object.assign(
    {},
    ...lengths,
    ...volumes,
    given('compressionRatio', reader.stated('ratio', raw.compressionRatio, ['crankTrain', 'compressionRatio'])),
    given('wetLiners', raw.wetLiners),
  );
}

const EVENTS = {
  io: ['intakeOpens', 'BTDC', 'ATDC'],
  ic: ['intakeCloses', 'ABDC', 'BBDC'],
  eo: ['exhaustOpens', 'BBDC', 'ABDC'],
  ec: ['exhaustCloses', 'ATDC', 'BTDC'],
} as const satisfies Readonly<Record<string, readonly [keyof CamEvents, string, string]>>;

export function buildCam(sheet: Sheet, reader: SheetReader): CamCard | undefined {
  const raw = sheet.cam;
  if (raw === undefined) return undefined;
  const figure = (kind: 'length' | 'angle', value: RawFigure | undefined, ...path: string[]) =>
    reader.stated(kind, value, ['cam', ...path]);
  const intake = figure('angle', raw.advertisedDuration?.intake, 'advertisedDuration', 'intake')?.value;
  const exhaust = figure('angle', raw.advertisedDuration?.exhaust, 'advertisedDuration', 'exhaust')?.value;
  const duration =
    intake === undefined || exhaust === undefined ? undefined : { intake: intake as Angle, exhaust: exhaust as Angle };
  const lobeLift = raw.lobeLift && {
    ...given('intake', reader.stated('length', raw.lobeLift.intake, ['cam', 'lobeLift', 'intake'])),
    ...given('exhaust', reader.stated('length', raw.lobeLift.exhaust, ['cam', 'lobeLift', 'exhaust'])),
  };
  return {
    basis: raw.basis,
    ...given('checkingLift', reader.stated('length', raw.checkingLift, ['cam', 'checkingLift'])),
    ...given('events', buildEvents(raw.events, reader)),
    ...given('advertisedDuration', duration),
    ...given('lobeLift', lobeLift),
    from: reader.from(raw.from, ['cam', 'from']),
  };
}

function buildEvents(raw: NonNullable<Sheet['cam']>['events'], reader: SheetReader): CamEvents | undefined {
  if (raw === undefined) return undefined;
  const read = Object.entries(EVENTS).map(([key, [name, usual, opposite]]) => {
    const path: Path = ['cam', 'events', key];
    return [name, readEvent(raw[key as keyof typeof EVENTS], usual, opposite, path, reader)] as const;
  });
  if (read.some(([, value]) => value === undefined)) return undefined;
  return Object.fromEntries(read) as unknown as CamEvents;
}

/** `12 deg`, `12 deg BTDC` or, counted the other way from the same dead centre, `3 deg ATDC`. */
function readEvent(raw: RawText, usual: string, opposite: string, path: Path, reader: SheetReader): Angle | undefined {
  const parts = typeof raw === 'string' ? /^(.*?)\s*\b([A-Za-z]{4})\.?$/.exec(raw.trim()) : null;
  const mark = parts?.[2]?.toUpperCase();
  if (mark === undefined || !/^[AB][TB]DC$/.test(mark)) return reader.value('angle', raw, path);
  if (mark !== usual && mark !== opposite) {
    reader.fault('wrong-dead-centre', path, `this event is counted from ${usual} or ${opposite}, not ${mark}`);
    return undefined;
  }
  const value = reader.value('angle', parts?.[1] ?? '', path);
  return value === undefined ? undefined : ((mark === usual || value === 0 ? value : -value) as Angle);
}

export function buildValveGear(sheet: Sheet, reader: SheetReader): ValveGear | undefined {
  const raw = sheet.valveGear;
  if (raw === undefined) return undefined;
  const path: Path = ['valveGear'];
  const pitch = reader.stated('length', raw.adjuster?.pitch, [...path, 'adjuster', 'pitch']);
  const preload = raw.preload && {
    ...given('turns', reader.stated('angle', raw.preload.turns, [...path, 'preload', 'turns'])),
    ...given(
      'plungerTravel',
      reader.windowFigure('length', raw.preload.plungerTravel, [...path, 'preload', 'plungerTravel']),
    ),
  };
  const lash = raw.lash && {
    intake: buildLash(raw.lash.intake, [...path, 'lash', 'intake'], reader),
    exhaust: buildLash(raw.lash.exhaust, [...path, 'lash', 'exhaust'], reader),
  };
  return {
    kind: raw.kind,
    follower: raw.follower,
    adjustment: raw.adjustment,
    intakeValves: raw.valvesPerCylinder.intake,
    exhaustValves: raw.valvesPerCylinder.exhaust,
    ...given('ratio', reader.stated('ratio', raw.ratio, [...path, 'ratio'])),
    adjuster: {
      place: raw.adjuster?.place ?? 'none',
      ...given('thread', raw.adjuster?.thread),
      ...given('pitch', pitch),
    },
    ...given('preload', preload),
    ...given('lash', lash),
    ...given('shims', buildShims(raw.shims, [...path, 'shims'], reader)),
  };
}

function buildLash(
  raw: { cold?: RawFigure | undefined; hot?: RawFigure | undefined },
  path: Path,
  reader: SheetReader,
): LashFigures {
  return {
    ...given('cold', reader.windowFigure('length', raw.cold, [...path, 'cold'])),
    ...given('hot', reader.windowFigure('length', raw.hot, [...path, 'hot'])),
  };
}

function buildShims(
  raw: NonNullable<Sheet['valveGear']>['shims'],
  path: Path,
  reader: SheetReader,
): ValveGear['shims'] {
  if (raw === undefined) return undefined;
  const thinnest = reader.stated('length', raw.thinnest, [...path, 'thinnest']);
  const thickest = reader.stated('length', raw.thickest, [...path, 'thickest']);
  const step = reader.stated('length', raw.step, [...path, 'step']);
  if (thinnest === undefined || thickest === undefined || step === undefined) return undefined;
  if (thinnest.value >= thickest.value)
    reader.fault('shims', path, 'the thinnest shim is not thinner than the thickest');
  if (step.value <= 0) reader.fault('shims', [...path, 'step'], 'the step from one shim to the next is more than zero');
  return { thinnest, thickest, step, rounding: raw.rounding };
}
