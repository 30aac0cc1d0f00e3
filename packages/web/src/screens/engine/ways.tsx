import type { Bench } from '@gudgeon/core/workbench';
import { useMemo } from 'react';
import { Link } from 'wouter';
import { type Station, stationsOf } from './stations.js';

interface WaysProps {
  readonly job: string;
  readonly bench: Bench;
  /** Place of the next action, marked on its way. */
  readonly next: string;
}

/** The ways to work on the engine. */
export function Ways({ job, bench, next }: WaysProps) {
  const groups = useMemo(() => stationsOf(bench), [bench]);
  return (
    <div className="stack-wide">
      {groups.map((group) => (
        <section key={group.way} className="stack" aria-labelledby={`way-${group.way}`}>
          <h2 id={`way-${group.way}`}>{group.name}</h2>
          {group.parts.length === 0 && <p>{group.none}</p>}
          {group.parts.map((part) => (
            <div key={part.name} className="station">
              {part.name !== group.name && <h3>{part.name}</h3>}
              <ul className="plain ways">
                {part.stations.map((station) => (
                  <li key={station.place}>
                    <Way job={job} station={station} next={station.place === next} />
                  </li>
                ))}
              </ul>
            </div>
          ))}
        </section>
      ))}
    </div>
  );
}

function Way({ job, station, next }: { readonly job: string; readonly station: Station; readonly next: boolean }) {
  return (
    <Link href={`/engine/${job}/${station.place}`} className={next ? 'way way-next' : 'way'}>
      <strong>
        {station.finished ? '✓ ' : ''}
        {station.name}
      </strong>
      <small>
        {next ? 'Next. ' : ''}
        {station.state}
      </small>
    </Link>
  );
}
