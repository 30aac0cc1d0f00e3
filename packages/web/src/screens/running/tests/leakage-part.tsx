import type { HeardPlace } from '@gudgeon/core/plan';
import { proposeLeakage } from '@gudgeon/core/workbench';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { ActButton, Finished, StrikeOut, Verdict, VerdictMark, verdictState } from '../../../bench/index.js';
import { type Action, useActions } from '../../../keys/index.js';
import { useWayOn } from '../../../shell/index.js';
import { lastChosen, noteChosen } from '../../work/kept.js';
import { FigureEntry } from '../figure-entry.js';
import { CylinderBar } from './cylinder-bar.js';
import { limitOf, type TestsProps } from './tests-props.js';

/** The loss of each cylinder at firing dead centre: what it holds of the supply, and where the rest is heard. */
export function LeakagePart({ desk, view }: TestsProps) {
  const { leakage } = view;
  const [chosen, setChosen] = useState<number>();
  const cylinder = chosen ?? leakage.rows.find(({ read }) => read === undefined)?.cylinder;
  return (
    <>
      <div className="bench-two">
        <div className="bench">
          {cylinder === undefined ? (
            <AllHeld desk={desk} view={view} />
          ) : (
            <ReadLoss key={cylinder} desk={desk} view={view} cylinder={cylinder} done={() => setChosen(undefined)} />
          )}
        </div>
        <section className="bench" aria-label="All cylinders">
          <Verdict
            state={verdictState(leakage.verdict)}
            value={leakage.words}
            limit={limitOf(leakage.words, leakage.rule)}
          />
          <ul className="plain cylinder-rows">
            {leakage.rows.map((row) => (
              <li key={row.cylinder} data-cylinder={row.cylinder}>
                <span className="cylinder-name">
                  {row.cylinder}
                  <small>{row.bank}</small>
                </span>
                <span className="cylinder-figure">
                  <CylinderBar
                    share={row.leak === '' ? undefined : Number.parseFloat(row.leak) / 100}
                    limit={undefined}
                    out={row.verdict === 'out'}
                    words={`Cylinder ${row.cylinder}: ${row.leak === '' ? 'not read' : `${row.leak} lost`}`}
                  />
                  <span>
                    <strong>{row.leak === '' ? 'not read' : `${row.leak} lost`}</strong> {row.read?.text}
                    {row.says !== '' && `: ${row.says}`}
                  </span>
                </span>
                <span className="cylinder-again">
                  <VerdictMark verdict={row.verdict} />
                  <button
                    type="button"
                    className="button"
                    aria-pressed={row.cylinder === cylinder}
                    aria-label={`Read: cylinder ${row.cylinder}, leakage`}
                    onClick={() => setChosen(row.cylinder)}
                  >
                    Read
                  </button>
                </span>
              </li>
            ))}
          </ul>
        </section>
      </div>
      <details className="fold">
        <summary>Strike one out</summary>
        {leakage.rows.map(
          ({ cylinder: number, read }) =>
            read && (
              <StrikeOut
                key={read.entry}
                words={`Cylinder ${number}, ${read.text}`}
                given={read}
                strike={(reason) => desk.recorder.strikeOut(read.entry, reason)}
              />
            ),
        )}
      </details>
    </>
  );
}

interface ReadLossProps extends TestsProps {
  readonly cylinder: number;
  readonly done: () => void;
}
interface Keyed {
  readonly text: string;
  readonly raw: string;
}
function ReadLoss({ desk, view, cylinder, done }: ReadLossProps) {
  const [supply, setSupply] = useState(() => lastChosen('supply')[0]);
  const [held, setHeld] = useState<Keyed>();
  if (supply === undefined)
    return (
      <FigureEntry
        slot="Pressure of the supply"
        about="supply"
        units={view.leakage.units}
        memory="leakage"
        recordLabel="Take this supply"
        take={(text) => {
          noteChosen('supply', text);
          setSupply(text);
        }}
      />
    );
  if (held === undefined)
    return (
      <>
        <p className="test-next">
          Cylinder {cylinder} at firing dead centre, crank held. Supply {supply}.
        </p>
        <FigureEntry
          slot={`Cylinder ${cylinder} holds`}
          about={`held ${cylinder}`}
          units={view.leakage.units}
          memory="leakage"
          recordLabel="Take this figure"
          take={(text, raw) => setHeld({ text, raw })}
        />
        <button type="button" className="button" onClick={() => setSupply(undefined)}>
          Another supply
        </button>
      </>
    );
  const write = (heard?: HeardPlace) => {
    const wish = { cylinder, supply, held: held.text, ...(heard !== undefined && { heard }) };
    const words = `Cylinder ${cylinder}: ${held.text} of ${supply}`;
    if (desk.recorder.take(proposeLeakage(desk.bench, wish), words, held.raw)) done();
    else setHeld(undefined);
  };
  return <HeardWhere view={view} held={`${held.text} of ${supply}`} write={write} again={() => setHeld(undefined)} />;
}

interface HeardWhereProps {
  readonly view: TestsProps['view'];
  readonly held: string;
  readonly write: (heard?: HeardPlace) => void;
  readonly again: () => void;
}
function HeardWhere({ view, held, write, again }: HeardWhereProps) {
  const places = view.leakage.heard.map(({ id, words, means }, index): Action & { readonly means: string } => ({
    name: `heard ${id}`,
    label: words,
    keys: [`${index + 1}`],
    available: true,
    means,
    run: () => write(id),
  }));
  const nothing: Action = {
    name: 'record',
    label: 'Nothing is heard',
    keys: ['Enter', ' ', 'PageDown'],
    available: true,
    run: () => write(),
  };
  const back: Action = { name: 'again', label: 'Key it again', keys: ['Escape'], available: true, run: again };
  const run = useActions([nothing, ...places, back]);
  return (
    <section className="stack" aria-labelledby="heard">
      <h2 id="heard" className="step-lead">
        {held}. Where is it heard?
      </h2>
      <div className="reason-grid">
        <ActButton action={nothing} run={run} />
        {places.map((action) => (
          <ActButton key={action.name} action={action} run={run} second>
            {action.label}
            <span className="act-key">{action.means}</span>
          </ActButton>
        ))}
      </div>
      <div className="apart">
        <ActButton action={back} run={run} second />
      </div>
    </section>
  );
}

function AllHeld({ desk }: TestsProps) {
  const [, go] = useLocation();
  const on = useWayOn(desk.job, 'tests', { to: `/engine/${desk.job}`, toWords: 'Back to the engine' });
  return <Finished words="Leakage: every cylinder is read" {...on} go={() => go(on.to)} after="record" />;
}
