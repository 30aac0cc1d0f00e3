import type { StartTryView } from '@gudgeon/core/workbench';
import { Link, useLocation } from 'wouter';
import { ActButton, StrikeOut, Verdict, verdictState } from '../../../bench/index.js';
import { type Action, useActions } from '../../../keys/index.js';
import { runInPlace, startPlace } from '../places.js';
import type { GoProps } from './start-props.js';

/** What the last go told, and the way on: a new cam is not left at idle. */
export function TryResult({ desk, view, again }: GoProps & { readonly again: () => void }) {
  const [, go] = useLocation();
  const [newest] = view.tries;
  const good = newest?.verdict === 'in';
  const on: Action = {
    name: 'run-in',
    label: 'It runs: to the clock of the run-in',
    keys: good ? ['Enter', ' ', 'PageDown'] : [],
    available: good,
    run: () => go(runInPlace(desk.job)),
  };
  const anew: Action = { name: 'again', label: 'Start it again', keys: ['a'], available: true, run: again };
  const run = useActions([on, anew]);
  if (newest === undefined) return null;
  return (
    <section className="bench" data-try={newest.verdict}>
      <Verdict
        state={verdictState(newest.verdict)}
        value={newest.words}
        limit={`oil pressure within ${view.stop.seconds} s; ${view.stop.origin}`}
        distance={newest.says}
      />
      {good ? (
        <ActButton action={on} run={run} />
      ) : (
        <Link className="button help-elsewhere" href={startPlace(desk.job)}>
          The list: ready to start?
        </Link>
      )}
      <div className="apart">
        <ActButton action={anew} run={run} second />
      </div>
      <Tries tries={view.tries} strike={(entry, reason) => desk.recorder.strikeOut(entry, reason)} />
    </section>
  );
}

interface TriesProps {
  readonly tries: readonly StartTryView[];
  readonly strike: (entry: string, reason: string) => void;
}
function Tries({ tries, strike }: TriesProps) {
  return (
    <details className="fold">
      <summary>Goes at the starter ({tries.length})</summary>
      {tries.map(({ given, words }) => (
        <StrikeOut key={given.entry} words={words} given={given} strike={(reason) => strike(given.entry, reason)} />
      ))}
    </details>
  );
}
