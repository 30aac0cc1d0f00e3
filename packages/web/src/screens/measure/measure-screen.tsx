import { type Bench, type MeasureView, measureView } from '@gudgeon/core/workbench';
import { useMemo } from 'react';
import { Link } from 'wouter';
import { CautionsAgain, Progress } from '../../bench/index.js';
import { usePerson } from '../../log/index.js';
import { AskPerson, type OpenJob, Said, Title, today, useBench, useRecord, WithJob } from '../../shell/index.js';
import { Gauges } from './gauges.js';
import { SheetList } from './sheet-list.js';
import { Temperature } from './temperature.js';

export function MeasureScreen({ job }: { readonly job: string }) {
  return <WithJob job={job}>{(open) => <Measure open={open} />}</WithJob>;
}

/** Everything that there is to measure, what comes next, and what a reading rests on: gauges and temperature. */
function Measure({ open }: { readonly open: OpenJob }) {
  const bench = useBench(open);
  const person = usePerson();
  const view = useMemo(() => measureView(bench, { today: today() }), [bench]);
  return (
    <div className="stack-wide">
      <div className="stack">
        <Title tab="Measure">Measure</Title>
        <Progress {...view.progress} />
        {view.next && (
          <Link href={`/engine/${open.job}/measure/${view.next.feature}`} className="next-link">
            <small>Next</small>
            {view.next.words}
          </Link>
        )}
      </div>
      <Before view={view} />
      {person === '' && <AskPerson />}
      <Again job={open.job} again={view.again} />
      <div className="measure-two">
        <SheetList job={open.job} view={view} />
        {person !== '' && <Ready open={open} bench={bench} view={view} />}
      </div>
      <Missing lines={view.missing} />
      <CautionsAgain cautions={view.cautions} />
    </div>
  );
}

/** What must hold before a reading counts: open until the first one is taken, then folded away. */
function Before({ view }: { readonly view: MeasureView }) {
  return (
    <details className="card" open={view.progress.done === 0}>
      <summary>Before a reading counts</summary>
      <ul className="before-list">
        {view.before.map((one) => (
          <li key={one.code}>{one.words}</li>
        ))}
      </ul>
    </details>
  );
}

interface ReadyProps {
  readonly open: OpenJob;
  readonly bench: Bench;
  readonly view: MeasureView;
}
function Ready({ open, bench, view }: ReadyProps) {
  const recorder = useRecord(open, bench);
  return (
    <div className="stack-wide">
      <Said recorder={recorder} />
      <Temperature bench={bench} recorder={recorder} {...(view.temperature ? { noted: view.temperature } : {})} />
      <Gauges bench={bench} recorder={recorder} gauges={view.instruments} />
    </div>
  );
}

/** Readings on which an undecided verdict hangs: worth more than any new one. */
function Again({ job, again }: { readonly job: string; readonly again: MeasureView['again'] }) {
  if (again.length === 0) return null;
  return (
    <section className="stack" aria-labelledby="again">
      <h2 id="again">Measure these again first</h2>
      <ul className="plain stack">
        {again.slice(0, 6).map((one) => (
          <li key={one.slot}>
            <Link
              className="button row-button"
              href={`/engine/${job}/measure/${one.feature}?slot=${encodeURIComponent(one.slot)}`}
            >
              {one.words}
            </Link>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Missing({ lines }: { readonly lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <details className="card">
      <summary>What the sheet does not say, and what was taken for granted ({lines.length})</summary>
      <ul className="stack notes">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </details>
  );
}
