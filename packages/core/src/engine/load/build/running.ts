import type { QuantityKind, QuantityOf } from '../../../quantity/index.js';
import type { CompressionRule, Engine, Ignition, RunInStep, Running, ServiceDue, Stated } from '../../model.js';
import type { Path } from '../document.js';
import { given } from '../given.js';
import type { RawFigure, SheetReader } from '../reader.js';
import type { Sheet } from '../schema.js';

type Raw = NonNullable<Sheet['running']>;

export function buildRunIn(sheet: Sheet, reader: SheetReader): Engine['runIn'] {
  return (sheet.runIn ?? []).map((raw, index): RunInStep => {
    const at = (name: string): Path => ['runIn', index, name];
    return {
      text: raw.text,
      ...given('time', positive('time', raw.time, at('time'), reader)),
      ...given('speed', raw.speed === undefined ? undefined : speedOf(raw.speed, at('speed'), reader)),
      ...given('load', raw.load),
      from: reader.from(raw.from, at('from')),
    };
  });
}

/** "below 3500 rpm" is said of a speed more often than written with a sign; the text stays as printed. */
function speedOf(raw: string | number, path: Path, reader: SheetReader): RunInStep['speed'] {
  const text = typeof raw === 'string' ? raw.trim() : raw;
  const signed = typeof text === 'string' ? text.replace(/^(not above|below|up to)\s+/i, '<= ') : text;
  const read = reader.window('angular-speed', signed, path);
  return read && { text: String(text), window: read.window };
}

/** What is watched while it runs. Every size is more than zero, and a share at most all of it. */
export function buildRunning(sheet: Sheet, reader: SheetReader): Running | undefined {
  const raw = sheet.running;
  if (raw === undefined) return undefined;
  const at = (...more: Path): Path => ['running', ...more];
  const size = <K extends QuantityKind, N extends keyof Raw & string>(name: N, kind: K, value: RawFigure | undefined) =>
    given(name, positive(kind, value, at(name), reader));
  return {
    ...given('ignition', raw.ignition && buildIgnition(raw.ignition, at('ignition'), reader)),
    oilPressure: buildOilPressure(raw.oilPressure, at('oilPressure'), reader),
    ...given('idleSpeed', reader.windowFigure('angular-speed', raw.idleSpeed, at('idleSpeed'))),
    ...size('fullLoadSpeed', 'angular-speed', raw.fullLoadSpeed),
    ...size('exhaustMost', 'temperature', raw.exhaustMost),
    ...size('oilTemperatureMost', 'temperature', raw.oilTemperatureMost),
    ...size('coolantMost', 'temperature', raw.coolantMost),
    ...size('stopWithoutPressure', 'time', raw.stopWithoutPressure),
    ...given('compression', raw.compression && buildCompression(raw.compression, at('compression'), reader)),
    ...given('leakageMost', share(raw.leakageMost, at('leakageMost'), reader)),
    ...given(
      'headAgain',
      raw.headAgain && {
        when: raw.headAgain.when,
        ...given('text', raw.headAgain.text),
        from: reader.from(raw.headAgain.from, at('headAgain', 'from')),
      },
    ),
    service: (raw.service ?? []).map((each, index) => buildService(each, at('service', index), reader)),
  } as Running;
}

function buildIgnition(raw: NonNullable<Raw['ignition']>, path: Path, reader: SheetReader): Ignition {
  const from = reader.from(raw.from, [...path, 'from']);
  const angle = (name: 'staticAdvance' | 'fullAdvance' | 'postOfFirst') =>
    given(name, reader.stated('angle', raw[name], [...path, name], from));
  const speed = positive('angular-speed', raw.fullAdvanceSpeed, [...path, 'fullAdvanceSpeed'], reader, from);
  return {
    ...angle('staticAdvance'),
    ...angle('fullAdvance'),
    ...given('fullAdvanceSpeed', speed),
    ...given('rotor', raw.rotor),
    ...angle('postOfFirst'),
    from,
  } as Ignition;
}

function buildOilPressure(raw: Raw['oilPressure'], path: Path, reader: SheetReader): Running['oilPressure'] {
  return (raw ?? []).flatMap((each, index) => {
    const at = (name: string): Path => [...path, index, name];
    const pressure = reader.windowFigure('pressure', each.pressure, at('pressure'));
    if (pressure === undefined) return [];
    const row = {
      pressure,
      ...given('speed', positive('angular-speed', each.speed, at('speed'), reader, pressure.from)),
      ...given('temperature', positive('temperature', each.temperature, at('temperature'), reader, pressure.from)),
    };
    return [row as Running['oilPressure'][number]];
  });
}

function buildCompression(raw: NonNullable<Raw['compression']>, path: Path, reader: SheetReader): CompressionRule {
  const from = reader.from(raw.from, [...path, 'from']);
  const at = (name: string): Path => [...path, name];
  return {
    ...given('share', share(raw.share, at('share'), reader, from)),
    ...given('floor', positive('pressure', raw.floor, at('floor'), reader, from)),
    ...given('difference', positive('pressure', raw.difference, at('difference'), reader, from)),
    ...given('printed', reader.windowFigure('pressure', raw.printed, at('printed'))),
    ...given('crankingSpeed', positive('angular-speed', raw.crankingSpeed, at('crankingSpeed'), reader, from)),
    from,
  } as CompressionRule;
}

function buildService(raw: NonNullable<Raw['service']>[number], path: Path, reader: SheetReader): ServiceDue {
  if (raw.hours === undefined && raw.months === undefined && raw.distance === undefined)
    reader.fault('never-due', path, `"${raw.what}" says no hours, months or distance after which it is due`);
  return {
    what: raw.what,
    ...given('hours', positive('time', raw.hours, [...path, 'hours'], reader)),
    ...given('months', raw.months),
    ...given('distance', raw.distance),
    from: reader.from(raw.from, [...path, 'from']),
  } as ServiceDue;
}

function positive<K extends QuantityKind>(
  kind: K,
  raw: RawFigure | undefined,
  path: Path,
  reader: SheetReader,
  origin?: Running['service'][number]['from'],
): Stated<QuantityOf<K>> | undefined {
  const read = reader.stated(kind, raw, path, origin);
  if (read !== undefined && !((read.value as number) > 0))
    reader.fault('not-positive', path, `"${read.text}" is not more than zero`);
  return read;
}

function share(raw: RawFigure | undefined, path: Path, reader: SheetReader, origin?: Ignition['from']) {
  const read = positive('ratio', raw, path, reader, origin);
  if (read !== undefined && read.value > 1)
    reader.fault('more-than-all', path, `"${read.text}" is more than all of it; write a share such as 75 %`);
  return read;
}
