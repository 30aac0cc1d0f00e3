import type { Angle } from '../../../quantity/index.js';
import type { Bank, Cylinder, Layout } from '../../model.js';
import type { Path } from '../document.js';
import { given } from '../given.js';
import type { SheetReader } from '../reader.js';
import { repeated } from '../repeated.js';
import type { Sheet } from '../schema.js';

const PATH: Path = ['layout'];

export function buildLayout(sheet: Sheet, reader: SheetReader): Layout {
  const raw = sheet.layout;
  const banks = buildBanks(sheet, reader);
  const order = orderOf(raw.firingOrder);
  const firingOrder = readOrder(order?.value, reader);
  const intervals = readIntervals(sheet, reader);
  const from = reader.from(raw.from, [...PATH, 'from']);
  const borePitch = reader.stated('length', raw.borePitch, [...PATH, 'borePitch']);
  return {
    form: raw.form,
    banks,
    cylinders: buildCylinders(sheet, banks, reader),
    rotation: raw.rotation ?? 'clockwise',
    firingOrder,
    ...given('firingOrderFrom', order && reader.from(order.from, [...PATH, 'firingOrder', 'from'], from)),
    ...given('firingIntervals', intervals),
    ...given('borePitch', borePitch),
    from,
  };
}

interface RawOrder {
  readonly value: string | readonly number[];
  readonly from?: string | undefined;
}
function orderOf(raw: Sheet['layout']['firingOrder']): RawOrder | undefined {
  if (raw === undefined) return undefined;
  // A single fires alone: YAML reads its order as a number.
  if (typeof raw === 'number') return { value: [raw] };
  return typeof raw === 'object' && 'value' in raw ? raw : { value: raw };
}

function buildBanks(sheet: Sheet, reader: SheetReader): readonly Bank[] {
  const raw = sheet.layout.banks;
  if (raw === undefined) {
    if (sheet.layout.form !== 'inline') {
      reader.fault(
        'banks-missing',
        PATH,
        `an engine of form "${sheet.layout.form}" names its banks, e.g. banks: { left: 45 deg, right: -45 deg }`,
      );
    }
    return [{ id: 'main', angle: 0 as Angle }];
  }
  return Object.entries(raw).map(([id, angle]) => ({
    id,
    angle: reader.value('angle', angle, [...PATH, 'banks', id]) ?? (0 as Angle),
  }));
}

function buildCylinders(sheet: Sheet, banks: readonly Bank[], reader: SheetReader): readonly Cylinder[] {
  const path = [...PATH, 'cylinders'];
  const byBank = numbersByBank(sheet, banks, reader, path);
  const longest = Math.max(0, ...byBank.map(([, numbers]) => numbers.length));
  const inPlace: { readonly number: number; readonly bank: string }[] = [];
  for (let row = 0; row < longest; row++) {
    for (const [bank, numbers] of byBank) {
      const number = numbers[row];
      if (number !== undefined) inPlace.push({ number, bank });
    }
  }
  checkNumbers(
    inPlace.map((each) => each.number),
    reader,
    path,
  );
  const pins = crankpinsOf(sheet, inPlace.length, reader);
  return inPlace.map((each, index) => ({ ...each, place: index + 1, ...pins.get(each.number) }));
}

function numbersByBank(
  sheet: Sheet,
  banks: readonly Bank[],
  reader: SheetReader,
  path: Path,
): readonly (readonly [string, readonly number[]])[] {
  const raw = sheet.layout.cylinders;
  if (Array.isArray(raw)) {
    if (banks.length > 1)
      reader.fault(
        'bank-missing',
        path,
        `give the cylinders of each bank: ${banks.map((each) => `${each.id}: [...]`).join(', ')}`,
      );
    return [[banks[0]?.id ?? 'main', raw]];
  }
  const entries = Object.entries(raw as Readonly<Record<string, readonly number[]>>);
  for (const [id] of entries) {
    if (banks.some((bank) => bank.id === id)) continue;
    reader.fault(
      'unknown-bank',
      [...path, id],
      `there is no bank "${id}"; banks: ${banks.map((bank) => bank.id).join(', ')}`,
    );
  }
  for (const bank of banks) {
    if (!entries.some(([id]) => id === bank.id))
      reader.fault('bank-missing', path, `no cylinders are given for bank "${bank.id}"`);
  }
  return entries;
}

function checkNumbers(numbers: readonly number[], reader: SheetReader, path: Path): void {
  for (const number of repeated(numbers)) reader.fault('cylinder-twice', path, `cylinder ${number} stands twice`);
  const missing = numbers.map((_, index) => index + 1).filter((number) => !numbers.includes(number));
  if (missing.length === 0 || repeated(numbers).length > 0) return;
  reader.fault(
    'cylinder-numbers',
    path,
    `${numbers.length} cylinders are numbered 1 to ${numbers.length}, but ${missing.join(', ')} is missing`,
  );
}

function crankpinsOf(sheet: Sheet, count: number, reader: SheetReader) {
  const pins = new Map<number, { readonly crankpin: number; readonly throwAngle?: Angle }>();
  sheet.layout.crankpins?.forEach((pin, index) => {
    const path = [...PATH, 'crankpins', index];
    const at = reader.value('angle', pin.at, [...path, 'at']);
    for (const number of pin.cylinders) {
      if (pins.has(number))
        reader.fault(
          'crankpin-twice',
          path,
          `cylinder ${number} already stands on crankpin ${pins.get(number)?.crankpin}`,
        );
      if (number > count) reader.fault('unknown-cylinder', path, `there is no cylinder ${number}`);
      pins.set(number, { crankpin: index + 1, ...(at === undefined ? {} : { throwAngle: at }) });
    }
  });
  return pins;
}

function readOrder(raw: string | readonly number[] | undefined, reader: SheetReader): readonly number[] {
  if (raw === undefined) return [];
  if (typeof raw !== 'string') return raw;
  const pieces = raw.split(/[\s,–—-]+/).filter((piece) => piece !== '');
  const wrong = pieces.find((piece) => !/^\d{1,2}$/.test(piece));
  if (wrong === undefined && pieces.length > 0) return pieces.map(Number);
  reader.fault(
    'firing-order',
    [...PATH, 'firingOrder'],
    `"${(wrong ?? raw).slice(0, 40)}" is not a cylinder; write the order as 1-3-4-2`,
  );
  return [];
}

function readIntervals(sheet: Sheet, reader: SheetReader): readonly Angle[] | undefined {
  const raw = sheet.layout.firingIntervals;
  if (raw === undefined || raw === 'even') return undefined;
  const angles = raw.map((each, index) => reader.value('angle', each, [...PATH, 'firingIntervals', index]));
  return angles.every((each) => each !== undefined) ? angles : undefined;
}
