import type { Engine } from '@gudgeon/core/engine';
import type { StoredEnvelope } from '@gudgeon/core/record';
import { type ReactNode, useMemo } from 'react';
import { Link } from 'wouter';
import { allEntries, type JobState, type JobStore, useJob } from '../log/index.js';
import { BackStrip } from './back-strip.js';
import { CopyState } from './copy-state.js';
import { Shell } from './shell.js';

export interface OpenJob {
  readonly job: string;
  readonly engine: Engine;
  readonly entries: readonly StoredEnvelope[];
  readonly state: JobState;
  readonly store: JobStore;
}

/** Opens a job for a screen; says plainly why where it cannot be opened. */
export function WithJob({ job, children }: { readonly job: string; readonly children: (open: OpenJob) => ReactNode }) {
  const { state, store } = useJob(job);
  const entries = useMemo(() => allEntries(state), [state]);
  const { engine } = state;
  const name = engine?.name;
  const place = useMemo(() => name !== undefined && <Link href={`/engine/${job}`}>{name}</Link>, [job, name]);
  const status = state.status !== 'loading' && (
    <>
      <CopyState job={job} state={state} />
      <BackStrip job={job} />
    </>
  );
  return (
    <Shell place={place} status={status}>
      {engine ? children({ job, engine, entries, state, store }) : <NotOpen state={state} store={store} />}
    </Shell>
  );
}

function NotOpen({ state, store }: { readonly state: JobState; readonly store: JobStore }) {
  if (state.status === 'loading') return <p role="status">Fetching the engine from the server…</p>;
  const why =
    state.status === 'no-server' ? 'The engine could not be fetched.' : 'There is no readable sheet for this engine.';
  return (
    <div className="stack">
      <h1>{why}</h1>
      {state.trouble && <p>{state.trouble}</p>}
      {state.sheetFaults.length > 0 && (
        <ul className="stack">
          {state.sheetFaults.map((fault) => (
            <li key={`${fault.path} ${fault.code} ${fault.line}`}>
              {fault.line ? `Line ${fault.line}: ` : ''}
              {fault.message}
            </li>
          ))}
        </ul>
      )}
      <div className="row">
        <button type="button" className="button button-main" onClick={store.reload}>
          Try again
        </button>
        <Link className="button" href="/">
          All engines
        </Link>
      </div>
    </div>
  );
}
