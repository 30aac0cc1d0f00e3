import type { Place } from '../../model.js';
import type { Anatomy } from '../anatomy.js';

/** What a size usually is where the sheet prints no limit for it, in SI, with the reason. */
export interface Typical {
  readonly nominal?: number;
  readonly low: number;
  readonly high: number;
  readonly why: string;
  /** Ends that the sheet itself allows, new or worn: never questioned. */
  readonly allowed?: { readonly low?: number | undefined; readonly high?: number | undefined };
}
export type TypicalRule = (anatomy: Anatomy, place: Place) => Typical;

export const MM = 1e-3;
/** Bore [m] taken where the sheet gives none; the windows made from it are wide. */
const SOME_BORE = 0.095;

const boreOf = ({ engine }: Anatomy): number | undefined => engine.crankTrain.bore?.value;

/** The same in every engine: common practice, no source. */
export const usually =
  (low: number, high: number): TypicalRule =>
  () => ({ low: low * MM, high: high * MM, why: 'usual in engines of this kind; the sheet prints no limit' });

/** A usual range that is not a length. */
export const between =
  (low: number, high: number): TypicalRule =>
  () => ({ low, high, why: 'usual in engines of this kind; the sheet prints no limit' });

/** As a share of the bore: common practice, no source. Without a bore in the sheet a wider window of middling engines. */
export const ofBore =
  (low: number, high: number): TypicalRule =>
  (anatomy) => {
    const bore = boreOf(anatomy);
    if (bore === undefined)
      return {
        low: low * SOME_BORE * 0.7,
        high: high * SOME_BORE * 1.6,
        why: 'usual in engines; the sheet gives neither bore nor limit',
      };
    return { low: low * bore, high: high * bore, why: 'a usual share of the bore; the sheet prints no limit' };
  };

/** Masses and volumes go with the bore cubed [kg/m3]. */
export const ofBoreCubed =
  (low: number, high: number): TypicalRule =>
  (anatomy) => {
    const cube = (boreOf(anatomy) ?? SOME_BORE) ** 3;
    return { low: low * cube, high: high * cube, why: 'usual for a bore of this size; the sheet prints no limit' };
  };

/** Around a figure of the sheet; `else` where it gives none. */
export function near(
  figure: (anatomy: Anatomy, place: Place) => { readonly value: number; readonly text: string } | undefined,
  below: number,
  above: number,
  otherwise: TypicalRule,
): TypicalRule {
  return (anatomy, place) => {
    const found = figure(anatomy, place);
    if (found === undefined) return otherwise(anatomy, place);
    const { value, text } = found;
    return {
      nominal: value,
      low: value * (1 - below),
      high: value * (1 + above),
      why: `near ${text} of the sheet, which prints no limit`,
    };
  };
}
