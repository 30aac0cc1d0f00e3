/** Cells and columns of a worksheet as a table of text, safe to open in a spreadsheet. */

/** Columns in plain words, in the order in which they are written. */
export const COLUMNS = [
  'feature',
  'place',
  'reading',
  'value',
  'second value',
  'unit',
  'instrument',
  'by',
  'at',
  'struck',
] as const;
export type Column = (typeof COLUMNS)[number];
/** Without these a row names no reading. */
export const NEEDED: readonly Column[] = ['feature', 'place', 'reading', 'value', 'unit'];

/**
 * First signs by which a spreadsheet takes a text for a formula, also in their wide forms; the quote itself is among them, so that
 * what is added can always be told from what was there. Source: OWASP, CSV injection (recalled).
 */
const OPENS_FORMULA = /^['=+\-@\t\r\n＝＋－＠]/;
const ADDED_QUOTE = /^'(?=['=+\-@\t\r\n＝＋－＠])/;
const FIGURE = /^[+-]?[\d.,]+$/;

/** A text cell that no spreadsheet computes; a figure with its sign stays a figure. */
export const defused = (text: string): string => (OPENS_FORMULA.test(text) && !FIGURE.test(text) ? `'${text}` : text);
/** The text before it was defused. */
export const restored = (cell: string): string => cell.replace(ADDED_QUOTE, '');

export const DELIMITERS = [',', ';', '\t'] as const;
export type Delimiter = (typeof DELIMITERS)[number];

const folded = (text: string): string => text.trim().toLowerCase().replace(/\s+/g, ' ');
/** Whether two names are one to a person: case and blanks do not count. */
export const sameWords = (one: string, other: string): boolean => folded(one) === folded(other);
export const columnOf = (cell: string): Column | undefined => COLUMNS.find((column) => sameWords(column, cell));
