import { VerdictShape, type VerdictState } from './verdict-shape.js';

const words: Record<VerdictState, string> = {
  in: 'IN',
  near: 'NEAR',
  out: 'OUT',
  'no-data': 'NO DATA',
  again: 'CHECK AGAIN',
};

interface VerdictProps {
  readonly state: VerdictState;
  readonly nearEnd?: 'low' | 'high';
  /** The value as measured; absent when there is none. */
  readonly value?: string;
  /** The limit and where it comes from. */
  readonly limit: string;
  /** Distance to the limit, in words. */
  readonly distance?: string;
}

/** Shape, word and colour, with the number, its limit and the distance between them: a bare word is not enough. */
export function Verdict({ state, nearEnd, value, limit, distance }: VerdictProps) {
  return (
    <div className={`verdict verdict-${state}`} data-verdict={state}>
      <div className="verdict-block">
        <VerdictShape state={state} {...(nearEnd ? { nearEnd } : {})} />
        <span>{words[state]}</span>
      </div>
      <div className="verdict-words">
        {value !== undefined && <span className="verdict-value">{value}</span>}
        <span>{limit}</span>
        {distance && <span>{distance}</span>}
      </div>
    </div>
  );
}
