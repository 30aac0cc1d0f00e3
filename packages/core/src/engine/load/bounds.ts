/** Bounds on what is read, so that a wrong file is refused in one line instead of filling the memory. */
export const MOST_CHARACTERS = 1_000_000;
export const LONGEST_LINE = 2_000;
export const DEEPEST = 24;
export const MOST_VALUES = 20_000;
export const MOST_FAULTS = 60;
export const MOST_CYLINDERS = 24;
export const MOST_HOLES = 200;
export const MOST_STAGES = 100;
export const MOST_ROWS = 2_000;
