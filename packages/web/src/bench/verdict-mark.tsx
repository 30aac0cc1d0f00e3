import type { VerdictWord } from '@gudgeon/core/assess';
import { VerdictShape, type VerdictState } from './verdict-shape.js';

/** The verdict's name as the bench components know it. */
export const verdictState = (verdict: VerdictWord): VerdictState =>
  verdict === 'no data' ? 'no-data' : verdict === 'check again' ? 'again' : verdict;

const WORDS: Readonly<Record<VerdictWord, string>> = {
  in: 'IN',
  near: 'NEAR',
  out: 'OUT',
  'no data': 'NO DATA',
  'check again': 'CHECK AGAIN',
};

interface VerdictMarkProps {
  readonly verdict: VerdictWord;
  readonly nearEnd?: 'low' | 'high';
}

/** A verdict in a row: shape and word, with the colour behind them. The numbers stand beside it. */
export function VerdictMark({ verdict, nearEnd }: VerdictMarkProps) {
  const state = verdictState(verdict);
  return (
    <span className={`mark verdict-${state}`} data-verdict={state}>
      <span className="verdict-block">
        <VerdictShape state={state} {...(nearEnd ? { nearEnd } : {})} />
        <span>{WORDS[verdict]}</span>
      </span>
    </span>
  );
}
