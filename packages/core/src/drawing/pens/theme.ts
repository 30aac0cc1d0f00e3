import type { Fill, LineRole, MarkState } from '../figure.js';

/** Colours of one way of drawing. Shape and words carry the meaning; colour repeats it. */
export interface Theme {
  readonly paper: string;
  readonly lines: Readonly<Record<LineRole, string>>;
  readonly letters: string;
  readonly fills: Readonly<Record<Fill, string>>;
  readonly states: Readonly<Record<MarkState, string>>;
}

/** Black on white, for paper and reports. State colours keep 7:1 on white (bench-ergonomics, section 4). */
export const PRINT: Theme = {
  paper: '#ffffff',
  lines: { visible: '#000000', hidden: '#000000', centre: '#333333', thin: '#000000', dimension: '#000000' },
  letters: '#000000',
  fills: {
    none: 'none',
    metal: '#e4e4e4',
    void: '#ffffff',
    gasket: '#c9c9c9',
    water: '#ffffff',
    oil: '#ffffff',
    mark: '#000000',
  },
  states: {
    idle: '#000000',
    lit: '#000000',
    next: '#000000',
    done: '#00497a',
    missing: '#595959',
    wrong: '#9a3400',
    doubt: '#000000',
  },
};

/** Scribed bright lines on the deep blue of layout fluid, for the screen. */
export const LAYOUT_FLUID: Theme = {
  paper: '#0b1f4d',
  lines: { visible: '#f2f6ff', hidden: '#c3d2f5', centre: '#8fa9e0', thin: '#c3d2f5', dimension: '#c3d2f5' },
  letters: '#ffffff',
  fills: {
    none: 'none',
    metal: '#1d3b7d',
    void: '#0b1f4d',
    gasket: '#2b4f97',
    water: '#0b1f4d',
    oil: '#0b1f4d',
    mark: '#f2f6ff',
  },
  states: {
    idle: '#f2f6ff',
    lit: '#f0e442',
    next: '#ffffff',
    done: '#7cc6f2',
    missing: '#ffffff',
    wrong: '#f5b041',
    doubt: '#ffffff',
  },
};

/** Dashes of ISO 128 in multiples of the line width: 02 dashed, 04 long-dashed dotted. Solid where absent. */
export const DASHES: Readonly<Partial<Record<LineRole, readonly number[]>>> = {
  hidden: [5, 3],
  centre: [12, 3, 1, 3],
};
/** Wide lines are twice as wide as narrow ones (ISO 128-2). */
export const isWide = (role: LineRole): boolean => role === 'visible';
