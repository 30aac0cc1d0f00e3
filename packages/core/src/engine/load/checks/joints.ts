import { formatQuantity, type Length, mm } from '../../../quantity/index.js';
import { holesOfStage, stageTightens } from '../../joints.js';
import type { Joint } from '../../model.js';
import { ownReach } from '../../reach.js';
import type { Path } from '../document.js';
import type { SheetReader } from '../reader.js';
import type { Sheet } from '../schema.js';

/** Every hole is tightened by some stage, every fastener has a hole, and once-only bolts are not asked to go in twice. */
export function checkJoints(joints: readonly Joint[], sheet: Sheet, reader: SheetReader): void {
  const seen = new Set<number>();
  for (const joint of joints) {
    const index = indexOf(joint, sheet);
    if (index < 0 || seen.has(index)) continue;
    seen.add(index);
    checkJoint(joint, ['joints', index], reader);
  }
}

function indexOf(joint: Joint, sheet: Sheet): number {
  return (sheet.joints ?? []).findIndex(
    (raw) => raw.id === joint.id || (raw.heads ?? []).some((head) => `${raw.id}-${head}` === joint.id),
  );
}

function checkJoint(joint: Joint, path: Path, reader: SheetReader): void {
  const tightened = new Set(joint.stages.filter(stageTightens).flatMap((stage) => holesOfStage(joint, stage)));
  const never = joint.holes.map((hole) => hole.id).filter((id) => !tightened.has(id));
  if (joint.stages.length > 0 && never.length > 0) {
    reader.caution(
      'never-tightened',
      [...path, 'stages'],
      `no stage tightens ${never.length === 1 ? 'hole' : 'holes'} ${never.join(', ')}`,
    );
  }
  checkLastAct(joint, path, reader);
  joint.fasteners.forEach((fastener, index) => {
    if (joint.holes.some((hole) => hole.fastener === fastener.id)) return;
    reader.caution('spare-fastener', [...path, 'fasteners', index], `no hole takes the fastener "${fastener.id}"`);
  });
  checkReach(joint, path, reader);
  const wet = joint.holes.filter((hole) => hole.opensInto === 'water' && ['oil', 'dry'].includes(hole.onThread));
  if (wet.length === 0) return;
  const what = `${named(wet)} into water without sealer on the thread; sealer is usual`;
  reader.caution('water-hole', [...path, 'holes'], what);
}

/** A recipe whose last act on a hole slackens it leaves the fastener loose. */
function checkLastAct(joint: Joint, path: Path, reader: SheetReader): void {
  const loose = joint.holes
    .map((hole) => hole.id)
    .filter((id) => {
      const last = joint.stages
        .filter((stage) => stageTightens(stage) || stage.act.kind === 'loosen')
        .filter((stage) => holesOfStage(joint, stage).includes(id));
      return last.at(-1)?.act.kind === 'loosen';
    });
  if (loose.length === 0) return;
  reader.caution(
    'left-loose',
    [...path, 'stages'],
    `the last stage for ${loose.length === 1 ? 'hole' : 'holes'} ${loose.join(', ')} slackens and nothing tightens again`,
  );
}

/** The sheet's own fastener must clamp before it meets the bottom of its hole, and must hold in enough thread. */
function checkReach(joint: Joint, path: Path, reader: SheetReader): void {
  const at = [...path, 'holes'];
  for (const kind of joint.fasteners) {
    const reaches = joint.holes
      .filter((hole) => hole.fastener === kind.id)
      .map((hole) => ({ id: hole.id, depth: hole.depth?.text ?? '', ...ownReach(hole, kind) }));
    const bottom = reaches.filter((one) => one.bottoms);
    const shallow = reaches.filter((one) => one.shallow);
    if (bottom.length > 0)
      reader.caution(
        'bottoms',
        at,
        `${named(bottom)}: the ${kind.name} reaches ${millimetres(bottom[0]?.into)} past what it clamps, the hole is ${bottom[0]?.depth} deep; it would bottom before it clamps`,
      );
    if (shallow.length > 0)
      reader.caution(
        'little-thread',
        at,
        `${named(shallow)}: the ${kind.name} holds in less than one diameter of thread (${millimetres(shallow[0]?.leastThread)}); 1.25 in iron and 2 in aluminium are usual`,
      );
  }
}

const named = (holes: readonly { readonly id: string }[]): string =>
  `${holes.length === 1 ? 'hole' : 'holes'} ${holes.map((hole) => hole.id).join(', ')}`;
const millimetres = (length: Length | undefined): string => formatQuantity('length', length ?? mm(0), 'mm', 1);
