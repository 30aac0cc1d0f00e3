/** The invented single of one cylinder as a book that begins at its crankshaft. */
import { readFileSync } from 'node:fs';
import { engineOf, SHEETS } from '../../packages/core/src/workbench/bench.suite.js';
import { Builder } from '../../packages/core/src/workbench/work/work.suite.js';

export function singleAtCrankshaft(): Builder {
  const person = new Builder(engineOf(SHEETS.single));
  const text = readFileSync(new URL(`../../sheets/${SHEETS.single}.yaml`, import.meta.url), 'utf8');
  person.append({ kind: 'sheet-adopted', data: { name: 'skelbeck', text, reason: 'put on the stand' } });
  person.begin('crankshaft');
  return person;
}
