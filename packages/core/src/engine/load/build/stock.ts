import type { Length, QuantityKind } from '../../../quantity/index.js';
import type { GradeChart, PistonStock, ShellStock, Stock, StockPart, ThicknessStock, Window } from '../../model.js';
import type { Path } from '../document.js';
import { given } from '../given.js';
import type { RawText, SheetReader } from '../reader.js';
import { repeated } from '../repeated.js';
import type { Sheet } from '../schema.js';

type RawStock = NonNullable<Sheet['stock']>;
type RawPart = NonNullable<RawStock['thrustWashers']>[number];
type RawShell = NonNullable<RawStock['mainShells']>[number];

/**
 * Parts that can be had. Refuses ids that stand twice in a list, a thickness or wall of nothing, and an oversize below standard; a
 * row with a figure that cannot be read is left out after its fault is noted.
 */
export function buildStock(sheet: Sheet, reader: SheetReader): Stock | undefined {
  const raw = sheet.stock;
  if (raw === undefined) return undefined;
  return {
    pistons: rowsOf(raw.pistons, 'pistons', reader, (each, path, part) => {
      const oversize = fromStandard(each.oversize, [...path, 'oversize'], reader);
      if (oversize === undefined) return undefined;
      const skirt = sized(each.skirt, [...path, 'skirt'], reader);
      return {
        ...part,
        oversize,
        ...given('skirt', skirt),
        ...given('grade', each.grade),
        ...formOf(each, path, reader),
      };
    }),
    mainShells: shells(raw.mainShells, 'mainShells', reader),
    rodShells: shells(raw.rodShells, 'rodShells', reader),
    thrustWashers: rowsOf(raw.thrustWashers, 'thrustWashers', reader, thickPart(reader)),
    headGaskets: rowsOf(raw.headGaskets, 'headGaskets', reader, (each, path, part) => {
      const thick = thickPart(reader)(each, path, part);
      if (thick === undefined) return undefined;
      const bore = sized(each.bore, [...path, 'bore'], reader)?.low;
      const { protrusion } = each;
      const read = protrusion === undefined ? undefined : reader.window('length', protrusion, [...path, 'protrusion']);
      return { ...thick, ...given('protrusion', read?.window), ...given('bore', bore) };
    }),
    springShims: rowsOf(raw.springShims, 'springShims', reader, thickPart(reader)),
    linerShims: rowsOf(raw.linerShims, 'linerShims', reader, thickPart(reader)),
    rings: rowsOf(raw.rings, 'rings', reader, (each, path, part) => {
      const oversize = fromStandard(each.oversize, [...path, 'oversize'], reader);
      if (oversize === undefined) return undefined;
      const gap = each.gap === undefined ? undefined : reader.window('length', each.gap, [...path, 'gap']);
      return { ...part, oversize, ...given('gap', gap?.window), ring: each.ring };
    }),
    camOffsets: rowsOf(raw.camOffsets, 'camOffsets', reader, (each, path, part) => {
      const offset = positive('angle', each.offset, [...path, 'offset'], reader);
      return offset === undefined ? undefined : { ...part, offset };
    }),
    gradeCharts: (raw.gradeCharts ?? []).map((each, index) =>
      buildChart(each, ['stock', 'gradeCharts', index], reader),
    ),
  };
}

/** The rows of one list, without those that could not be read. */
function rowsOf<Raw extends RawPartFields, Built>(
  raw: readonly Raw[] | undefined,
  list: string,
  reader: SheetReader,
  build: (each: Raw, path: Path, part: StockPart) => Built | undefined,
): readonly Built[] {
  const rows = raw ?? [];
  for (const id of repeated(rows.map((each) => each.id)))
    reader.fault('id-twice', ['stock', list], `the id "${id}" stands twice; each part of a list has its own`);
  return rows.flatMap((each, index) => {
    const path: Path = ['stock', list, index];
    const built = build(each, path, buildPart(each, path, reader));
    return built === undefined ? [] : [built];
  });
}

type RawPartFields = Omit<RawPart, 'thickness'>;
function buildPart(raw: RawPartFields, path: Path, reader: SheetReader): StockPart {
  return {
    id: raw.id,
    name: raw.name,
    ...given('partNumber', raw.partNumber),
    ...given('count', raw.count),
    ...given('price', raw.price),
    from: reader.from(raw.from, [...path, 'from']),
  };
}

function shells(raw: readonly RawShell[] | undefined, list: string, reader: SheetReader): readonly ShellStock[] {
  return rowsOf(raw, list, reader, (each, path, part) => {
    const undersize = fromStandard(each.undersize, [...path, 'undersize'], reader);
    const wall = sized(each.wall, [...path, 'wall'], reader);
    if (undersize === undefined || wall === undefined) return undefined;
    return { ...part, undersize, wall, ...given('grade', each.grade) };
  });
}

const thickPart =
  (reader: SheetReader) =>
  (each: RawPart, path: Path, part: StockPart): ThicknessStock | undefined => {
    const at = [...path, 'thickness'];
    const read = reader.stated('length', each.thickness, at);
    if (read === undefined) return undefined;
    if (read.value <= 0) reader.fault('not-positive', at, `"${read.text}" is not more than zero`);
    return { ...part, thickness: read.value };
  };

/** What a piston of its own form is: height, crown, pockets and mass. */
function formOf(
  raw: NonNullable<RawStock['pistons']>[number],
  path: Path,
  reader: SheetReader,
): Pick<PistonStock, 'form' | 'compressionHeight' | 'crownVolume' | 'pocketDeeper' | 'mass'> {
  return {
    ...given('form', raw.form),
    ...given('compressionHeight', positive('length', raw.compressionHeight, [...path, 'compressionHeight'], reader)),
    ...given('crownVolume', reader.stated('volume', raw.crownVolume, [...path, 'crownVolume'])?.value),
    ...given('pocketDeeper', reader.stated('length', raw.pocketDeeper, [...path, 'pocketDeeper'])?.value),
    ...given('mass', positive('mass', raw.mass, [...path, 'mass'], reader)),
  };
}

function positive<K extends QuantityKind>(kind: K, raw: RawText | undefined, path: Path, reader: SheetReader) {
  const read = reader.stated(kind, raw, path);
  if (read !== undefined && read.value <= 0) reader.fault('not-positive', path, `"${read.text}" is not more than zero`);
  return read?.value;
}

/** `standard`, or how far from it. */
function fromStandard(raw: RawText, path: Path, reader: SheetReader): Length | undefined {
  if (typeof raw === 'string' && /^\s*standard\s*$/i.test(raw)) return 0 as Length;
  const read = reader.stated('length', raw, path);
  if (read !== undefined && read.value < 0)
    reader.fault('not-positive', path, `"${read.text}" has a sign; write the difference from standard without one`);
  return read?.value;
}

/** A printed size or its window with both ends, more than zero. */
function sized(raw: RawText | undefined, path: Path, reader: SheetReader): Window<Length> | undefined {
  const read = reader.stated('length', raw, path);
  if (read === undefined) return undefined;
  const window = read.window ?? { low: read.value, high: read.value };
  if ((window.low ?? 0) <= 0) reader.fault('not-positive', path, `"${read.text}" is not more than zero`);
  return window;
}

function buildChart(raw: NonNullable<RawStock['gradeCharts']>[number], path: Path, reader: SheetReader): GradeChart {
  for (const marks of repeated(raw.rows.map((row) => `${row.housing} and ${row.journal}`)))
    reader.fault('row-twice', [...path, 'rows'], `housing and journal ${marks} stand twice; keep one row`);
  return { for: raw.for, rows: raw.rows, from: reader.from(raw.from, [...path, 'from']) };
}
