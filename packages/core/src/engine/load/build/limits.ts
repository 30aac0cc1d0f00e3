import { kindsOfUnit, parseWindow } from '../../../quantity/index.js';
import type { InspectionLimit, WearLimit, Window } from '../../model.js';
import type { Path } from '../document.js';
import { given } from '../given.js';
import type { RawText, ReadWindow, SheetReader } from '../reader.js';
import type { Sheet } from '../schema.js';
import { RULES_OF_SHAPE, SHAPES, shapeNamed } from '../shape-rules.js';

type RawLimit = NonNullable<Sheet['limits']>[number];
type LimitKind = InspectionLimit['quantity'];
/** The limit, the unit in which it is printed, and one unit in the last printed place of its figures, for comparisons. */
export interface BuiltLimit {
  readonly limit: InspectionLimit;
  readonly path: Path;
  readonly unit: string;
  readonly step: number;
}

export function buildLimits(sheet: Sheet, reader: SheetReader): readonly BuiltLimit[] {
  return (sheet.limits ?? []).flatMap((raw, index) => {
    const built = buildLimit(raw, ['limits', index], reader);
    return built === undefined ? [] : [built];
  });
}

function buildLimit(raw: RawLimit, path: Path, reader: SheetReader): BuiltLimit | undefined {
  if (raw.whenNew === undefined && raw.wear === undefined) {
    if (raw.note === undefined)
      reader.fault('empty-limit', path, 'a limit has "whenNew", "wear" or, where only words are printed, a "note"');
  }
  if (typeof raw.wear === 'object' && formsIn(raw.wear).length !== 1) {
    reader.fault('wear-form', [...path, 'wear'], 'a wear limit has one form: absolute, changeFromNew or clearance');
    return undefined;
  }
  const kind = raw.quantity ?? kindOf(raw, path, reader);
  if (kind === undefined) return undefined;
  const fresh = raw.whenNew === undefined ? undefined : reader.window(kind, raw.whenNew, [...path, 'whenNew']);
  const wear = raw.wear === undefined ? undefined : readWear(raw.wear, kind, [...path, 'wear'], reader);
  const limit: InspectionLimit = {
    part: raw.part,
    what: raw.what,
    quantity: kind,
    ...given('whenNew', fresh && { window: fresh.window as Window<number>, text: fresh.text }),
    ...given('wear', wear?.limit),
    ...scopeOf(raw, path, reader),
    ...given('property', raw.property),
    ...given('rule', ruleOf(raw, path, reader)),
    from: reader.from(raw.from, [...path, 'from']),
    ...given('note', raw.note),
  };
  const unit = fresh?.unit ?? wear?.unit ?? '';
  return { limit, path, unit, step: Math.max(fresh?.step ?? 0, wear?.step ?? 0) };
}

/** A rule of taper says nothing about out-of-round: the row must name the shape to which its rule belongs. */
function ruleOf(raw: RawLimit, path: Path, reader: SheetReader): string | undefined {
  if (raw.rule === undefined) return undefined;
  const shape = shapeNamed(raw.property ?? '') ?? shapeNamed(raw.what);
  const valid: readonly string[] = shape === undefined ? [] : RULES_OF_SHAPE[shape];
  if (valid.includes(raw.rule)) return raw.rule;
  const why =
    shape === undefined
      ? `a rule belongs to ${SHAPES.join(', ')}, and this row names none`
      : `of ${shape}: ${valid.join(', ')}`;
  reader.fault('rule-of-another-shape', [...path, 'rule'], `"${raw.rule}" does not fit here; ${why}`);
  return undefined;
}

function readWear(
  raw: NonNullable<RawLimit['wear']>,
  kind: LimitKind,
  path: Path,
  reader: SheetReader,
): { readonly limit: WearLimit; readonly unit: string; readonly step: number } | undefined {
  const [form, text, at] = formOf(raw, path);
  const read: ReadWindow<number> | undefined = reader.window(kind, text, at);
  if (read === undefined) return undefined;
  if (form !== 'change-from-new')
    return { limit: { form, window: read.window, text: read.text }, unit: read.unit, step: read.step };
  const change = read.window.high ?? read.window.low ?? 0;
  if (change < 0) reader.fault('not-positive', at, 'a change from new is a size, without sign');
  return { limit: { form, change, text: read.text }, unit: read.unit, step: read.step };
}

const FORMS = { absolute: 'absolute', changeFromNew: 'change-from-new', clearance: 'clearance' } as const;

/** The first form that the row names; `buildLimit` has refused rows that name none or several. */
function formOf(raw: NonNullable<RawLimit['wear']>, path: Path): readonly [WearLimit['form'], RawText, Path] {
  if (typeof raw !== 'object') return ['absolute', raw, path];
  const [key] = formsIn(raw);
  return key === undefined ? ['absolute', '', path] : [FORMS[key], raw[key] ?? '', [...path, key]];
}

function formsIn(raw: Exclude<NonNullable<RawLimit['wear']>, string | number>): readonly (keyof typeof FORMS)[] {
  return (Object.keys(FORMS) as (keyof typeof FORMS)[]).filter((key) => raw[key] !== undefined);
}

const TRIED: readonly LimitKind[] = [
  'length',
  'angle',
  'force',
  'mass',
  'torque',
  'pressure',
  'volume',
  'temperature',
  'angular-speed',
  'stiffness',
  'ratio',
];

/** The kind of quantity that the unit says; asks where the unit belongs to two kinds or is missing. */
function kindOf(raw: RawLimit, path: Path, reader: SheetReader): LimitKind | undefined {
  const [text, at] = firstText(raw, path);
  if (text === undefined) return 'length';
  if (typeof text === 'number') {
    reader.fault('bare-number', at, `${text} has no unit; write it with its unit, or say quantity: ratio`);
    return undefined;
  }
  const main = text.replace(/\s*\([^()]*\)\s*$/, '');
  const fits = TRIED.filter((kind) => {
    const read = parseWindow(kind, main);
    return read.ok && (kind !== 'ratio' || read.value.unit !== '');
  });
  if (fits.length === 1) return fits[0];
  if (fits.length > 1) {
    reader.fault('which-quantity', at, `"${text}" may be ${fits.join(' or ')}; say which with quantity: ${fits[0]}`);
    return undefined;
  }
  if (/[a-z°"%]/i.test(main) && kindsOfUnit(main.replace(/^.*\d\s*/, '')).length === 0) {
    reader.fault(
      'unit-unknown',
      at,
      `"${text.slice(0, 60)}" is not a value with a known unit; write for example 0.0018..0.0030 in, 45 deg or 80 lbf`,
    );
    return undefined;
  }
  reader.fault(
    'bare-number',
    at,
    `"${text.slice(0, 60)}" is not a value with its unit; write for example 0.0018..0.0030 in, or say quantity: ratio`,
  );
  return undefined;
}

function firstText(raw: RawLimit, path: Path): readonly [RawText | undefined, Path] {
  if (raw.whenNew !== undefined) return [raw.whenNew, [...path, 'whenNew']];
  if (raw.wear === undefined) return [undefined, path];
  const [, text, at] = formOf(raw.wear, [...path, 'wear']);
  return [text, at];
}

function scopeOf(raw: RawLimit, path: Path, reader: SheetReader): Pick<InspectionLimit, 'scope' | 'applies'> {
  if (raw.scope === undefined) return {};
  if (typeof raw.scope === 'string') return { scope: raw.scope };
  const at: Path = [...path, 'scope'];
  const { cylinders, bank, grade, depth } = raw.scope;
  const numbers = cylinders === undefined ? undefined : reader.selection(cylinders, [...at, 'cylinders'])?.map(Number);
  const stated = reader.stated('length', depth, [...at, 'depth']);
  const words = [
    numbers && `cylinders ${numbers.join(', ')}`,
    bank && `${bank} bank`,
    grade && `grade ${grade}`,
    stated && `at ${stated.text}`,
  ].filter((each) => each !== undefined);
  return {
    scope: words.join(', '),
    applies: {
      ...given('cylinders', numbers),
      ...given('bank', bank),
      ...given('grade', grade),
      ...given('depth', stated),
    },
  };
}
