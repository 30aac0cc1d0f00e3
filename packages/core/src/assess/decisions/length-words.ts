import type { Engine, Window } from '../../engine/index.js';
import { formatQuantity, formatUncertain, formatWindow } from '../../quantity/index.js';

export type LengthUnit = 'mm' | 'in';
/** How lengths are written in the words of a decision: in the unit that the person chose. */
export interface LengthWords {
  readonly unit: LengthUnit;
  /** A size to the tenth of a thou, or the thousandth of a millimetre. */
  readonly length: (value: number) => string;
  /** A measured size with its expanded uncertainty (k = 2); says so where the doubt is not known. */
  readonly sure: (value: number, u: number | undefined) => string;
  readonly window: (window: Window<number>) => string;
}

const PLACES = { mm: 3, in: 4 } as const;

export const lengthWords = (unit: LengthUnit): LengthWords => {
  const length = (value: number) => formatQuantity('length', value, unit, PLACES[unit]);
  return {
    unit,
    length,
    sure: (value, u) =>
      u === undefined
        ? `${length(value)}, uncertainty not known`
        : formatUncertain('length', { value, u }, unit, { places: PLACES[unit] }),
    window: (window) => formatWindow('length', window, unit, PLACES[unit]),
  };
};

/** Unit in which the sheet gives the bore, where no person has chosen one. */
export const unitOfSheet = ({ crankTrain }: Engine): LengthUnit =>
  /\b(in|inch|thou)\b|"/.test((crankTrain.bore ?? crankTrain.stroke)?.text ?? '') ? 'in' : 'mm';
