import type { FeatureKind, Place, SizeRule } from '../model.js';
import type { Anatomy } from './anatomy.js';

/** A feature with the rule that says where an engine has it. */
export interface FeatureRule {
  readonly kind: FeatureKind;
  readonly places: (anatomy: Anatomy) => readonly Place[];
  /** Engines that have it although no limit names it; a limit of the sheet always brings it in. */
  readonly has: (anatomy: Anatomy) => boolean;
  /** What of the kind depends on the engine: its material, the heights that its maker names. */
  readonly fitted?: (anatomy: Anatomy) => Partial<FeatureKind>;
}

export const always = (): boolean => true;
/** Only where a limit of the sheet names it. */
export const whenAsked = (): boolean => false;

/** Usual resolutions [m] of what lies in the box. */
export const TENTH = 2.54e-6;
export const FIVE_TENTHS = 12.7e-6;
export const THOU = 25.4e-6;
export const HUNDREDTH = 1e-5;
export const CALIPER = 2e-5;

/** Mean diameter, out-of-round and taper of a part read on a grid of heights and directions. */
export function round(id: string, word: string): readonly SizeRule[] {
  return [
    { property: `${id}.diameter`, title: `${word} diameter`, form: 'mean' },
    { property: `${id}.out-of-round`, title: `${word} out-of-round`, form: 'out-of-round' },
    { property: `${id}.taper`, title: `${word} taper`, form: 'taper' },
  ];
}

export function single(property: string, title: string): readonly SizeRule[] {
  return [{ property, title, form: 'single' }];
}

/** A size read at several points, which must also be even. */
export function even(id: string, size: string, title: string): readonly SizeRule[] {
  return [
    { property: `${id}.${size}`, title, form: 'mean' },
    { property: `${id}.spread`, title: `${title}, spread over the points`, form: 'spread' },
  ];
}

export function worst(property: string, title: string): readonly SizeRule[] {
  return [{ property, title, form: 'largest' }];
}

/** Which way wear moves a size: a shape and a spread have no sense of the part's, they only grow. */
export const senseOf = (kind: Pick<FeatureKind, 'sense'>, { form }: Pick<SizeRule, 'form'>): FeatureKind['sense'] =>
  form === 'out-of-round' || form === 'taper' || form === 'spread' ? 'hole' : kind.sense;
