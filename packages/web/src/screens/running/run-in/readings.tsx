import { useMemo } from 'react';
import { StrikeOut, VerdictMark } from '../../../bench/index.js';
import { PlotView } from '../../../plots/index.js';
import { readingsPlot } from './readings-plot.js';
import type { RunInProps } from './run-in-props.js';

/** Everything that was read, newest first, as a table and over the minutes of the run-in. */
export function Readings({ desk, view }: RunInProps) {
  const { readings } = view;
  const plot = useMemo(() => readingsPlot(readings), [readings]);
  if (readings.length === 0) return null;
  return (
    <section className="stack" aria-labelledby="readings">
      <h2 id="readings">Readings ({readings.length})</h2>
      <div className="table-wide">
        <table className="readings">
          <thead>
            <tr>
              <th scope="col">Min</th>
              <th scope="col">Read</th>
              <th scope="col">Verdict</th>
            </tr>
          </thead>
          <tbody>
            {readings.map(({ given, title, text, verdict, says, minute }) => (
              <tr key={given.entry}>
                <td>{minute ?? '–'}</td>
                <td>
                  {title} <strong>{text}</strong>
                </td>
                <td>
                  {verdict && <VerdictMark verdict={verdict} />} <span className="soft">{says}</span>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {plot && <PlotView plot={plot} />}
      <details className="fold">
        <summary>Strike one out</summary>
        {readings.map(({ given, title, text }) => (
          <StrikeOut
            key={given.entry}
            words={`${title} ${text}`}
            given={given}
            strike={(reason) => desk.recorder.strikeOut(given.entry, reason)}
          />
        ))}
      </details>
    </section>
  );
}
