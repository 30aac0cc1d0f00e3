import type { Engine, SheetCaution } from '@gudgeon/core/engine';
import { loadSheet, type SheetFault } from '@gudgeon/core/engine/load';

export interface CheckedSheet {
  readonly engine?: Engine;
  readonly faults: readonly SheetFault[];
  readonly cautions: readonly SheetCaution[];
}

/** Reads a sheet here in the browser, with the same code as the server. */
export function checkSheet(text: string): CheckedSheet {
  const read = loadSheet(text);
  return read.ok
    ? { engine: read.value, faults: [], cautions: read.value.cautions }
    : { faults: read.fault, cautions: [] };
}
