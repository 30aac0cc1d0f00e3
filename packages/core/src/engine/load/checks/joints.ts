import { holesOfStage, stageTightens } from '../../joints.js';
import type { Joint } from '../../model.js';
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
  const wet = joint.holes.filter((hole) => hole.opensInto === 'water' && ['oil', 'dry'].includes(hole.onThread));
  if (wet.length === 0) return;
  const names = `${wet.length === 1 ? 'hole' : 'holes'} ${wet.map((hole) => hole.id).join(', ')}`;
  reader.caution('water-hole', [...path, 'holes'], `${names} into water without sealer on the thread; sealer is usual`);
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
