/** Runs a search beside the page, a slice at a time, so that a message to cancel is heard between two slices. */
import {
  advance,
  answerOf,
  beginSearch,
  chancesOf,
  describeFinderFault,
  type FinderInput,
  type FinderSearch,
} from '@gudgeon/core/assess/finder';
import type { FromFinder, ToFinder } from './finder-messages.js';

/** Steps of a slice: some hundredths of a second. */
const SLICE = 50_000;
/** Between two words about the progress [ms]. */
const TELL = 100;

let input: FinderInput | undefined;
let search: FinderSearch | undefined;
let told = 0;

const say = (message: FromFinder) => self.postMessage(message);

self.onmessage = ({ data }: MessageEvent<ToFinder>) => {
  if (data.kind === 'search') begin(data.input);
  if (data.kind === 'cancel') finish(false);
  if (data.kind === 'chances') chances(data.id, data.picked);
};

function begin(given: FinderInput): void {
  input = given;
  const begun = beginSearch(given);
  if (!begun.ok) {
    say({ kind: 'refused', words: describeFinderFault(begun.fault) });
    return;
  }
  search = begun.value;
  slice();
}

function slice(): void {
  if (search === undefined) return;
  const progress = advance(search, SLICE);
  if (progress.done) {
    say({ kind: 'progress', progress });
    finish(true);
    return;
  }
  const now = performance.now();
  if (now - told > TELL) {
    told = now;
    say({ kind: 'progress', progress });
  }
  setTimeout(slice);
}

function finish(whole: boolean): void {
  if (search === undefined) return;
  say({ kind: 'answer', answer: answerOf(search), whole });
  search = undefined;
}

function chances(id: string, picked: readonly number[]): void {
  if (input === undefined) return;
  const found = chancesOf(input, picked);
  if (found.ok) say({ kind: 'chances', id, chances: found.value });
  else say({ kind: 'refused', words: describeFinderFault(found.fault) });
}
