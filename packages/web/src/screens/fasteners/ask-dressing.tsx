import { useId } from 'react';
import type { Dressing, DressingPlace } from './placed.js';

const names: Record<DressingPlace, string> = {
  onThread: 'What went on the thread',
  underHead: 'What went under the head',
};
const usual = ['oil', 'dry', 'sealer', 'assembly-lube'] as const;

interface AskDressingProps {
  readonly asked: readonly DressingPlace[];
  readonly dressing: Dressing;
  readonly change: (dressing: Dressing) => void;
}

/** The sheet names no treatment: it is looked up elsewhere, and what was used is recorded, never guessed. */
export function AskDressing({ asked, dressing, change }: AskDressingProps) {
  const id = useId();
  return (
    <>
      {asked.map((place) => (
        <div key={place} className="field">
          <label htmlFor={`${id}-${place}`}>{names[place]} (look it up; the sheet does not say)</label>
          <input
            id={`${id}-${place}`}
            className="input"
            maxLength={60}
            autoComplete="off"
            value={dressing[place] ?? ''}
            onChange={(event) => change({ ...dressing, [place]: event.target.value })}
          />
          <div className="row">
            {usual.map((word) => (
              <button
                key={word}
                type="button"
                className="button"
                aria-label={`${names[place]}: ${word}`}
                onClick={() => change({ ...dressing, [place]: word })}
              >
                {word}
              </button>
            ))}
          </div>
        </div>
      ))}
    </>
  );
}
