import type { FastenerKind, From, Hole, Joint } from '../../model.js';
import type { Path } from '../document.js';
import { given } from '../given.js';
import type { SheetReader } from '../reader.js';
import { repeated } from '../repeated.js';
import type { RawJoint, Sheet } from '../schema.js';
import { type BuiltHead, readPlace, turnedPlace } from './heads.js';
import { buildStages } from './stages.js';

const LOOK_IT_UP = "Not stated in the sheet: look it up in the engine maker's manual before going on.";

export function buildJoints(sheet: Sheet, heads: readonly BuiltHead[], reader: SheetReader): readonly Joint[] {
  const joints: Joint[] = [];
  sheet.joints?.forEach((raw, index) => {
    const path: Path = ['joints', index];
    for (const joint of buildOne(raw, heads, path, reader)) {
      if (joints.some((each) => each.id === joint.id))
        reader.fault('joint-twice', path, `there already is a joint "${joint.id}"`);
      joints.push(joint);
    }
  });
  return joints;
}

function buildOne(raw: RawJoint, heads: readonly BuiltHead[], path: Path, reader: SheetReader): readonly Joint[] {
  const from = reader.from(raw.from, [...path, 'from']);
  const fasteners = raw.fasteners.map((_, index) => buildFastener(raw, index, from, path, reader));
  const faultsBefore = reader.faults.length;
  const holes = buildHoles(raw, from, path, reader);
  // Where the holes cannot be read, complaints about unknown holes would only hide the first fault.
  const ids = reader.faults.length > faultsBefore ? undefined : holes.map((hole) => hole.id);
  const order = buildOrder(raw, ids, from, path, reader);
  const name = raw.name ?? raw.id;
  const joint: Joint = {
    id: raw.id,
    name,
    fasteners,
    holes,
    ...given('order', order),
    stages: buildStages(raw, ids, order, from, path, reader),
    whenInDoubt: raw.whenInDoubt ?? LOOK_IT_UP,
    ...given('wrench', raw.wrench),
    cautions: raw.cautions ?? [],
  };
  if (raw.head !== undefined && raw.heads !== undefined)
    reader.fault('head-or-heads', path, 'give either "head" or "heads"');
  if (raw.heads === undefined)
    return raw.head === undefined ? [joint] : [onHead(joint, raw.head, heads, [...path, 'head'], reader)];
  return raw.heads.map((id, index) => {
    const headName = heads.find((each) => each.head.id === id)?.head.name ?? id;
    const own = { ...joint, id: `${raw.id}-${id}`, name: `${name}, ${headName}` };
    return onHead(own, id, heads, [...path, 'heads', index], reader);
  });
}

function onHead(joint: Joint, id: string, heads: readonly BuiltHead[], path: Path, reader: SheetReader): Joint {
  const built = heads.find((each) => each.head.id === id);
  if (built === undefined) {
    const names = heads.map((each) => each.head.id).join(', ') || 'none is described';
    reader.fault('unknown-head', path, `there is no head "${id}"; heads: ${names}`);
    return joint;
  }
  if (!built.turned) return { ...joint, head: id };
  const holes = joint.holes.map((hole) =>
    hole.at === undefined ? hole : { ...hole, at: turnedPlace(hole.at, built.head.length) },
  );
  return { ...joint, head: id, holes };
}

function buildFastener(raw: RawJoint, index: number, from: From, path: Path, reader: SheetReader): FastenerKind {
  const one = raw.fasteners[index]!;
  const at: Path = [...path, 'fasteners', index];
  if (raw.fasteners.findIndex((each) => each.id === one.id) !== index)
    reader.fault('fastener-twice', at, `there already is a fastener "${one.id}"`);
  const lengthLimit = reader.stated('length', one.lengthLimit, [...at, 'lengthLimit'], from);
  if (one.use === 'reuse-to-length' && one.lengthLimit === undefined) {
    reader.fault('length-limit', at, 'use: reuse-to-length needs lengthLimit, the longest length for another use');
  }
  return {
    id: one.id,
    name: one.name,
    thread: one.thread,
    ...given('length', reader.stated('length', one.length, [...at, 'length'], from)),
    ...given('strengthClass', one.strengthClass),
    use: one.use ?? 'not-stated',
    ...given('lengthLimit', lengthLimit),
  };
}

function buildHoles(raw: RawJoint, from: From, path: Path, reader: SheetReader): readonly Hole[] {
  const usual = reader.stated('length', raw.clamped, [...path, 'clamped'], from);
  const holes = raw.holes.flatMap((one, index): readonly Hole[] => {
    const at: Path = [...path, 'holes', index];
    if ((one.id === undefined) === (one.ids === undefined)) {
      reader.fault('hole-id', at, 'give either "id" for one hole or "ids" for several');
      return [];
    }
    const ids = one.id === undefined ? reader.selection(one.ids ?? '', [...at, 'ids']) : [one.id];
    if (!raw.fasteners.some((each) => each.id === one.fastener)) {
      const names = raw.fasteners.map((each) => each.id).join(', ');
      reader.fault(
        'unknown-fastener',
        [...at, 'fastener'],
        `there is no fastener "${one.fastener}"; fasteners: ${names}`,
      );
    }
    const place = placeOf(one, at, reader);
    const depth = reader.stated('length', one.depth, [...at, 'depth'], from);
    const clamped = reader.stated('length', one.clamped, [...at, 'clamped'], from) ?? usual;
    return (ids ?? []).map((id) => ({
      id,
      fastener: one.fastener,
      ...given('at', place),
      opensInto: one.opensInto ?? 'not-stated',
      ...given('depth', depth),
      ...given('clamped', clamped),
      onThread: one.onThread ?? 'not-stated',
      underHead: one.underHead ?? 'not-stated',
    }));
  });
  const twice = repeated(holes.map((hole) => hole.id));
  for (const id of twice) reader.fault('hole-twice', [...path, 'holes'], `hole ${id} is listed twice`);
  return holes;
}

function placeOf(one: RawJoint['holes'][number], at: Path, reader: SheetReader) {
  if (one.x === undefined && one.y === undefined) return undefined;
  if (one.x === undefined || one.y === undefined) {
    reader.fault('half-a-place', at, 'a place has both x and y');
    return undefined;
  }
  if (one.ids !== undefined)
    reader.fault('several-places', at, 'several holes cannot stand in one place; give each its own entry');
  return readPlace({ x: one.x, y: one.y }, at, reader);
}

function buildOrder(
  raw: RawJoint,
  ids: readonly string[] | undefined,
  from: From,
  path: Path,
  reader: SheetReader,
): Joint['order'] {
  if (raw.order === undefined) return undefined;
  const at: Path = [...path, 'order'];
  const isObject = typeof raw.order === 'object' && !Array.isArray(raw.order);
  const own = isObject
    ? (raw.order as { holes: string | number | (string | number)[]; from?: string })
    : { holes: raw.order as string };
  const order = reader.selection(own.holes, at);
  if (order === undefined) return undefined;
  const unknown = order.filter((id) => ids !== undefined && !ids.includes(id));
  const missing = (ids ?? []).filter((id) => !order.includes(id));
  for (const id of unknown)
    reader.fault('unknown-hole', at, `hole ${id} is in the order, but the joint has no such hole`);
  for (const id of repeated(order)) reader.fault('hole-twice', at, `hole ${id} stands twice in the order`);
  if (missing.length > 0)
    reader.fault(
      'order-incomplete',
      at,
      `the order leaves out ${missing.length === 1 ? 'hole' : 'holes'} ${missing.join(', ')}`,
    );
  return { holes: order, from: reader.from(own.from, [...at, 'from'], from) };
}
