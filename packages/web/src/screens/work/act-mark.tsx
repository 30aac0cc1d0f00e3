import type { WorkActView } from '@gudgeon/core/workbench';
import { type Stand, StandMark } from '../../bench/index.js';

/** How an act stands, as a person reads it: shape first, then the word, then the colour. */
export type Mark = 'done' | 'look' | 'bad' | 'again' | 'ready' | 'shop' | 'parts' | 'waits' | 'left-out';

const words: Readonly<Record<Mark, string>> = {
  done: 'DONE',
  look: 'LOOK OWED',
  bad: 'NOT GOOD',
  again: 'OPEN AGAIN',
  ready: 'CAN BEGIN',
  shop: 'AT THE SHOP',
  parts: 'PARTS TO COME',
  waits: 'WAITS',
  'left-out': 'LEFT OUT',
};

const LOOKS: Readonly<Record<Mark, Stand>> = {
  done: 'good',
  look: 'look',
  bad: 'wrong',
  again: 'again',
  ready: 'turn',
  shop: 'shop',
  parts: 'parts',
  waits: 'waits',
  'left-out': 'left-out',
};

export function markOf({ state, given, again, look, awaits }: WorkActView): Mark {
  if (state === 'skipped') return 'left-out';
  if (state === 'done') return look === 'owed' ? 'look' : 'done';
  if (given?.result === 'bad') return 'bad';
  if (again !== undefined) return 'again';
  if (state === 'away') return awaits === 'parts' ? 'parts' : 'shop';
  return state === 'ready' ? 'ready' : 'waits';
}

export const ActMark = ({ mark }: { readonly mark: Mark }) => (
  <StandMark look={LOOKS[mark]} word={words[mark]} name={mark} />
);
