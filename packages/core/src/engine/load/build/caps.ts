/** Stages that are gone through cap by cap: written once in the sheet, done in full on one cap before the next begins. */
import type { Joint } from '../../model.js';
import type { Path } from '../document.js';
import type { SheetReader } from '../reader.js';
import { repeated } from '../repeated.js';
import type { RawJoint } from '../schema.js';

type RawStage = RawJoint['stages'][number];
export interface Cap {
  readonly name: string;
  readonly holes: readonly string[];
}
/** An entry of the sheet's list, on one cap where it is gone through cap by cap. */
export interface Entry {
  readonly index: number;
  readonly raw: RawStage;
  readonly cap?: Cap;
}

/** Caps in the order in which a pass of the joint comes to them. */
function capsOf(
  raw: RawJoint,
  ids: readonly string[],
  order: Joint['order'],
  path: Path,
  reader: SheetReader,
): readonly Cap[] {
  const visited = order?.holes ?? ids;
  const caps = Object.entries(raw.caps ?? {}).flatMap(([mark, holes]): readonly Cap[] => {
    const read = reader.selection(holes, [...path, 'caps', mark]);
    return read === undefined ? [] : [{ name: `cap ${mark}`, holes: read }];
  });
  const named = caps.flatMap((cap) => cap.holes);
  for (const id of named.filter((one) => !ids.includes(one)))
    reader.fault('unknown-hole', [...path, 'caps'], `hole ${id} is under a cap, but the joint has no such hole`);
  for (const id of repeated(named)) reader.fault('hole-twice', [...path, 'caps'], `hole ${id} is under two caps`);
  const first = (cap: Cap) => Math.min(...cap.holes.map((id) => visited.indexOf(id)));
  return caps.toSorted((a, b) => first(a) - first(b));
}

/** The sheet's entries as they are done. Holes that could not be read, `ids` absent, leave nothing to go cap by cap. */
export function entriesByCap(
  raw: RawJoint,
  ids: readonly string[] | undefined,
  order: Joint['order'],
  path: Path,
  reader: SheetReader,
): readonly Entry[] {
  const caps = ids === undefined ? [] : capsOf(raw, ids, order, path, reader);
  const entries: Entry[] = [];
  let block: Entry[] = [];
  const endBlock = () => {
    for (const cap of caps) entries.push(...block.map((one) => ({ ...one, cap })));
    block = [];
  };
  raw.stages.forEach((stage, index) => {
    const entry = { index, raw: stage };
    if (stage.each === undefined) {
      endBlock();
      entries.push(entry);
      return;
    }
    const at: Path = [...path, 'stages', index];
    if (raw.caps === undefined && block.length === 0)
      reader.fault('no-caps', at, 'each: cap needs "caps" of the joint, the holes of each cap by its mark');
    if (stage.holes !== undefined)
      reader.fault('cap-or-holes', at, 'each: cap takes the holes of the cap; leave out "holes"');
    block.push(entry);
  });
  endBlock();
  return entries;
}
