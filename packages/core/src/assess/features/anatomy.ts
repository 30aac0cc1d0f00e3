import type { BankId, CylinderNumber, Engine, ValveId } from '../../engine/index.js';

/** One crankpin with the cylinders whose rods it carries. */
export interface Crankpin {
  readonly number: number;
  readonly cylinders: readonly CylinderNumber[];
}
/** One camshaft: its id, its name, and what its lobes open. */
export interface Camshaft {
  readonly id: string;
  readonly name: string;
  readonly journals: number;
}

/**
 * What an engine is made of as far as measuring goes, worked out once from the sheet. `assumptions` says what was taken for granted.
 */
export interface Anatomy {
  readonly engine: Engine;
  /** Along the crank, one bank after the other, the second from the rear forward. */
  readonly cylinders: readonly { readonly number: CylinderNumber; readonly bank: BankId; readonly place: number }[];
  readonly banks: readonly BankId[];
  readonly mains: number;
  /** Number of the main bearing with the thrust faces, where the sheet says so. */
  readonly thrustAt?: number;
  readonly crankpins: readonly Crankpin[];
  readonly camshafts: readonly Camshaft[];
  readonly valves: readonly ValveId[];
  /** Heights at which the sheet prints spring loads, as typed there. */
  readonly loadHeights: { readonly closed?: string; readonly open?: string };
  /** Ids of the features that limits of the sheet name. */
  readonly asked: ReadonlySet<string>;
  readonly assumptions: readonly { readonly feature: string; readonly words: string }[];
  readonly missing: readonly { readonly feature: string; readonly why: string }[];
}

export const isPushrod = ({ engine }: Anatomy): boolean => engine.valveGear?.kind === 'pushrod';
export const isBucket = ({ engine }: Anatomy): boolean => engine.valveGear?.kind === 'overhead-bucket';
export const hasRockers = ({ engine }: Anatomy): boolean =>
  engine.valveGear?.kind === 'pushrod' || engine.valveGear?.kind === 'overhead-rocker';
export const hasLash = ({ engine }: Anatomy): boolean => engine.valveGear?.adjustment === 'mechanical';
export const hasShims = ({ engine }: Anatomy): boolean =>
  ['shim-over-bucket', 'shim-under-bucket'].includes(engine.valveGear?.adjuster.place ?? '');
export const hasWetLiners = ({ engine }: Anatomy): boolean => engine.crankTrain.wetLiners === true;
export const isOverhead = (anatomy: Anatomy): boolean => anatomy.engine.valveGear !== undefined && !isPushrod(anatomy);
/** The maker chooses the gasket, or judges the piston, by how far it stands above the block. */
export const hasProtrusion = ({ engine, asked }: Anatomy): boolean =>
  asked.has('piston-protrusion') || (engine.stock?.headGaskets ?? []).some((each) => each.protrusion !== undefined);
