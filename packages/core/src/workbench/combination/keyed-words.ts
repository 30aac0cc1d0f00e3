/** What was keyed for an entry, in the digits and units in which it was keyed. */
import type { Bench } from '../bench.js';
import { rowWords } from '../record-rows.js';

/** "wheel 72.5 deg, lift 3.21 mm"; empty for an entry that is not there. */
export function keyedWords(bench: Bench, entry: string): string {
  const read = bench.state.entries.find((one) => one.entry.id === entry);
  return read?.reading.understood ? rowWords(bench, read.reading.known).value : '';
}
