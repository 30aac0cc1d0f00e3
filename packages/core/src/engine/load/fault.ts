/** On one line, whatever was typed into it. */
export const oneLine = (message: string) => message.replace(/\s+/g, ' ');

/** Why a sheet was refused: one fault for each thing to mend, with its place in the text. */
export interface SheetFault {
  readonly code: string;
  /** One clear line: where in the sheet, what is wrong, what is valid. */
  readonly message: string;
  /** Place in the sheet's structure, e.g. `joints[0].stages[2].torque`; empty for the sheet as a whole. */
  readonly path: string;
  /** Counted from 1. */
  readonly line?: number;
  /** Counted from 1. */
  readonly column?: number;
}
