import type { Given } from '@gudgeon/core/workbench';
import { useState } from 'react';

const reasons = ['pressed by mistake', 'wrong fastener', 'wrong figure'] as const;

interface StrikeOutProps {
  readonly words: string;
  readonly given: Given;
  readonly strike: (reason: string) => void;
}

/** One recorded line. Striking it out takes two touches well apart and a reason; nothing is ever erased. */
export function StrikeOut({ words, given, strike }: StrikeOutProps) {
  const [asked, setAsked] = useState(false);
  return (
    <div className="recorded">
      <span>
        {words}{' '}
        <span className="soft">
          ({given.by}, {given.at})
        </span>
      </span>
      {asked ? (
        <fieldset className="plain row">
          <legend>Why?</legend>
          {reasons.map((reason) => (
            <button key={reason} type="button" className="button" onClick={() => strike(reason)}>
              {reason}
            </button>
          ))}
          <button type="button" className="button" onClick={() => setAsked(false)}>
            Leave it
          </button>
        </fieldset>
      ) : (
        <button type="button" className="button" aria-label={`Strike out: ${words}`} onClick={() => setAsked(true)}>
          Strike out
        </button>
      )}
    </div>
  );
}
