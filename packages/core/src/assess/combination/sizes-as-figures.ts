/** Which sizes of assess are which figures of the combination. */
import type { Engine, ValveKind } from '../../engine/index.js';
import { valveKey } from '../../engine/index.js';
import { crankpinsOf } from '../features/journals.js';
import type { Place } from '../model.js';

export interface SizeAsFigure {
  readonly property: string;
  readonly figure: string;
  /** `-1` where the size counts the other way: a protrusion is a negative deck clearance. */
  readonly sign?: -1;
}

/** One figure for each cylinder. A face of a bank or a head is the figure of every cylinder on it. */
export const CYLINDER_SIZES: readonly SizeAsFigure[] = [
  { property: 'cylinder-bore.diameter', figure: 'bore' },
  { property: 'stroke.length', figure: 'stroke' },
  { property: 'rod-length.length', figure: 'rod-length' },
  { property: 'compression-height.height', figure: 'compression-height' },
  { property: 'deck-height.height', figure: 'deck-height' },
  { property: 'deck-clearance.depth', figure: 'deck-clearance' },
  { property: 'piston-protrusion.height', figure: 'deck-clearance', sign: -1 },
  { property: 'crown-volume.volume', figure: 'piston-volume' },
  { property: 'chamber-volume.volume', figure: 'chamber-volume' },
  { property: 'gasket-thickness.thickness', figure: 'gasket-thickness' },
  { property: 'head-thickness.thickness', figure: 'head-thickness' },
  { property: 'piston-mass.mass', figure: 'piston-mass' },
  { property: 'pin-mass.mass', figure: 'pin-mass' },
  { property: 'ring-mass.mass', figure: 'ring-mass' },
  { property: 'rod-small-end-mass.mass', figure: 'rod-small-end-mass' },
  { property: 'rod-big-end-mass.mass', figure: 'rod-big-end-mass' },
];

/** One figure for each valve. */
export const VALVE_SIZES: readonly SizeAsFigure[] = [
  { property: 'lobe-lift.lift', figure: 'lobe-lift' },
  { property: 'valve-head-diameter.diameter', figure: 'valve-diameter' },
  { property: 'valve-lash.lash', figure: 'valve-lash' },
  { property: 'pushrod-length.length', figure: 'pushrod-length' },
  { property: 'installed-height.height', figure: 'spring-installed-height' },
  { property: 'spring-free-length.length', figure: 'spring-free-length' },
  { property: 'spring-load-closed.load', figure: 'spring-load-closed' },
  { property: 'spring-load-open.load', figure: 'spring-load-open' },
  { property: 'spring-bind-height.height', figure: 'spring-bind-height' },
  { property: 'retainer-to-guide.room', figure: 'retainer-room' },
];

/** Cylinders whose figure a measured place gives. */
export function cylindersOfPlace(engine: Engine, { id, cylinder, bank, journal }: Place): readonly number[] {
  if (cylinder !== undefined) return [cylinder];
  const head = engine.heads.find((one) => one.id === id);
  if (head !== undefined) return head.cylinders;
  if (journal !== undefined) return crankpinsOf(engine).find(({ number }) => number === journal)?.cylinders ?? [];
  return engine.layout.cylinders.filter((one) => one.bank === bank).map(({ number }) => number);
}

/** Text after the `@` of a key: a cylinder, a valve. */
export const valvePlace = ({ valve }: Place): string | undefined => valve && valveKey(valve);
export const VALVE_KINDS: readonly ValveKind[] = ['intake', 'exhaust'];
