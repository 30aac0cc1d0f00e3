import type { ReadRow } from '@gudgeon/core/workbench';
import { useState } from 'react';
import { StrikeReading } from '../../../bench/index.js';

interface ReadListProps {
  readonly title: string;
  readonly rows: readonly ReadRow[];
  readonly strike: (entry: string, reason: string) => boolean;
}

/** Readings that stand, the newest first; those that look wrong before all others. None is ever changed: it is struck out with its reason. */
export function ReadList({ title, rows, strike }: ReadListProps) {
  const [asked, setAsked] = useState<string>();
  if (rows.length === 0) return null;
  const newest = [...rows].reverse();
  const sorted = [...newest.filter(({ wrong }) => wrong), ...newest.filter(({ wrong }) => !wrong)];
  return (
    <section className="stack" aria-label={title}>
      <h2>
        {title} ({rows.length})
      </h2>
      <ul className="plain turning-reads">
        {sorted.map(({ entry, words, wrong, given }) => (
          <li key={entry} className={wrong ? 'turning-wrong' : undefined} data-read={entry}>
            <span>
              {wrong && (
                <>
                  <strong>Looks wrong: </strong>
                  {wrong}. <br />
                </>
              )}
              {words}{' '}
              <span className="soft">
                ({given.by}, {given.at})
              </span>
            </span>
            {asked === entry ? (
              <div className="row">
                <StrikeReading words={words} strike={(reason) => strike(entry, reason) && setAsked(undefined)} />
                <button type="button" className="button" onClick={() => setAsked(undefined)}>
                  Leave it
                </button>
              </div>
            ) : (
              <button
                type="button"
                className="button"
                aria-label={`Strike out: ${words}`}
                onClick={() => setAsked(entry)}
              >
                Strike out
              </button>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
