import type { Length } from '../../../quantity/index.js';
import type { Inspection, Machining } from '../../model.js';
import type { Path } from '../document.js';
import { given } from '../given.js';
import type { SheetReader } from '../reader.js';
import { repeated } from '../repeated.js';
import type { Sheet } from '../schema.js';

type RawInspection = NonNullable<Sheet['inspection']>;

/** Where bores and journals are measured. Refuses heights out of order, names that stand twice, a thrust bearing that is not there. */
export function buildInspection(sheet: Sheet, reader: SheetReader): Inspection | undefined {
  const raw = sheet.inspection;
  if (raw === undefined) return undefined;
  const at = (...more: Path): Path => ['inspection', ...more];
  for (const name of repeated(raw.boreDirections ?? []))
    reader.fault('name-twice', at('boreDirections'), `"${name}" stands twice; each direction has its own name`);
  const { mainJournals, thrustAt } = raw;
  if (mainJournals !== undefined && thrustAt !== undefined && thrustAt > mainJournals)
    reader.fault(
      'no-such-bearing',
      at('thrustAt'),
      `there is no main bearing ${thrustAt}; valid: 1 to ${mainJournals}`,
    );
  return {
    ...given('boreHeights', buildHeights(raw.boreHeights, at('boreHeights'), reader)),
    ...given('boreDirections', raw.boreDirections),
    ...given('mainJournals', mainJournals),
    ...given('camJournals', raw.camJournals),
    ...given('camshafts', raw.camshafts),
    ...given('thrustAt', thrustAt),
    ...given('pistonHeight', positive('pistonHeight', raw.pistonHeight, 'inspection', reader)),
    ...given('ringDepth', positive('ringDepth', raw.ringDepth, 'inspection', reader)),
    ...given('materials', raw.materials as Inspection['materials']),
  };
}

function buildHeights(raw: RawInspection['boreHeights'], path: Path, reader: SheetReader): Inspection['boreHeights'] {
  if (raw === undefined) return undefined;
  for (const name of repeated(raw.map((each) => each.name)))
    reader.fault('name-twice', path, `"${name}" stands twice; each height has its own name`);
  const heights = raw.map((each, index) => ({
    name: each.name,
    ...given('depth', reader.stated('length', each.depth, [...path, index, 'depth'])),
  }));
  let deepest = -1;
  heights.forEach(({ depth }, index) => {
    if (depth === undefined) return;
    if (depth.value < 0) reader.fault('not-positive', [...path, index, 'depth'], `"${depth.text}" is above the deck`);
    else if (depth.value <= deepest)
      reader.fault('not-in-order', [...path, index, 'depth'], `"${depth.text}" is not below the height before it`);
    deepest = Math.max(deepest, depth.value);
  });
  return heights;
}

const LENGTHS = [
  'boreCleanUp',
  'honeAllowance',
  'journalCleanUp',
  'leastDeckHeight',
  'leastHeadThickness',
  'leastBoreWall',
] as const;
const TEXTS = ['boreFinish', 'journalFinish', 'deckFinish', 'torquePlate'] as const;

/** What the machine shop is told besides sizes. Every allowance and least size is more than zero; a mix of 0 means never. */
export function buildMachining(sheet: Sheet, reader: SheetReader): Machining | undefined {
  const raw = sheet.machining;
  if (raw === undefined) return undefined;
  const lengths = LENGTHS.map((name) => given(name, positive(name, raw[name], 'machining', reader)));
  const mix = reader.stated('length', raw.widestShellMix, ['machining', 'widestShellMix']);
  if (mix !== undefined && mix.value < 0)
    reader.fault('not-positive', ['machining', 'widestShellMix'], `"${mix.text}" has a sign; 0 mm means never mix`);
  const mass = reader.stated('mass', raw.massMatch, ['machining', 'massMatch']);
  if (mass !== undefined && mass.value <= 0) notPositive(['machining', 'massMatch'], mass.text, reader);
  return Object.assign(
    {},
    ...lengths,
    given('widestShellMix', mix),
    ...TEXTS.map((name) => given(name, raw[name])),
    given('ringGapFactor', raw.ringGapFactor && buildGapFactor(raw.ringGapFactor, reader)),
    given('massMatch', mass && { text: mass.text, value: mass.value, from: mass.from }),
  );
}

function buildGapFactor(
  raw: NonNullable<NonNullable<Sheet['machining']>['ringGapFactor']>,
  reader: SheetReader,
): Machining['ringGapFactor'] {
  const factor = (ring: 'top' | 'second') => {
    const path: Path = ['machining', 'ringGapFactor', ring];
    const read = reader.stated('ratio', raw[ring], path);
    if (read !== undefined && (read.value <= 0 || read.value > 0.02))
      reader.fault(
        'impossible-size',
        path,
        `"${read.text}" is outside 0 to 0.02 of the bore; usual is 0.0030 to 0.0065`,
      );
    return given(ring, read);
  };
  return { ...factor('top'), ...factor('second') };
}

type RawLength = NonNullable<Sheet['machining']>['boreCleanUp'];
function positive(name: string, raw: RawLength, section: string, reader: SheetReader) {
  const read = reader.stated('length', raw, [section, name]);
  if (read !== undefined && (read.value as Length) <= 0) notPositive([section, name], read.text, reader);
  return read;
}

function notPositive(path: Path, text: string, reader: SheetReader): void {
  reader.fault('not-positive', path, `"${text}" is not more than zero`);
}
