/** Which act tightens a joint of the sheet, and at which moment a worksheet is filled in. */
import type { Joint } from '../../engine/model.js';
import type { JointRole, MeasuringMoment, WorksheetToFill } from './model.js';

/** Words of the trade in id and name of a joint; the first that fits decides. */
const ROLES: readonly (readonly [RegExp, JointRole])[] = [
  [/\bvalve covers?\b|\brocker covers?\b/, 'valve-covers'],
  [/\btiming covers?\b|\bfront cover\b/, 'timing-cover'],
  [/\bcam(shaft)? (gears?|sprockets?|wheels?)\b|\bthrust plate\b|\bretainer plate\b/, 'cam-gear'],
  [/\bcam(shaft)?( bearing)? caps?\b/, 'cam-caps'],
  [/\brockers?\b/, 'rockers'],
  [/\b(connecting )?rods?\b|\bconrods?\b/, 'rods'],
  [/\bmains?\b/, 'mains'],
  [/\bdampers?\b|\bpulley\b|\bbalancer\b/, 'damper'],
  [/\bflywheel\b|\bdrive plate\b|\bflexplate\b/, 'flywheel'],
  [/\boil pump\b|\bpickup\b/, 'pump'],
  [/\boil pan\b|\bpan\b|\bsump\b/, 'pan'],
  [/\b(intake|inlet)\b/, 'intake'],
  [/\bheads?\b/, 'head'],
];

/** A joint that names no part of the engine's inside and holds no head is fitted with what hangs outside. */
export function roleOfJoint(joint: Joint): JointRole {
  const words = `${joint.id} ${joint.name}`.toLowerCase().replaceAll('-', ' ');
  const role = ROLES.find(([pattern]) => pattern.test(words))?.[1];
  return role ?? (joint.head === undefined ? 'other' : 'head');
}

const MOMENTS: Readonly<Record<string, MeasuringMoment>> = {
  'gasket-thickness': 'new-parts',
  'bolt-length': 'new-parts',
  'shim-thickness': 'new-parts',
  'main-bearing-bore': 'main-bearings',
  'rod-bearing-bore': 'rod-bearings',
  'main-strip': 'main-bearings',
  'rod-strip': 'rod-bearings',
  'deck-clearance': 'combination',
  'piston-protrusion': 'combination',
  'chamber-volume': 'combination',
  'crown-volume': 'combination',
  'liner-protrusion': 'combination',
  'pushrod-length': 'combination',
  'retainer-to-guide': 'combination',
  'retainer-to-rocker': 'combination',
  'installed-height': 'heads',
  'stem-height': 'heads',
  'injector-protrusion': 'heads',
};

/** Features with a moment of their own; all others are read when it is apart, or as found where the strip-down destroys them. */
export const FEATURES_WITH_A_MOMENT = Object.keys(MOMENTS);

export function momentOf({ feature, vanishes }: Pick<WorksheetToFill, 'feature' | 'vanishes'>): MeasuringMoment {
  if (vanishes) return 'as-found';
  if (feature.startsWith('ring-gap')) return 'rings';
  return MOMENTS[feature] ?? 'parts-apart';
}
