import type { RegistersView } from '@gudgeon/core/workbench';
import { Fragment } from 'react';
import { Link } from 'wouter';

type Part = RegistersView['parts'][number];
const stateWords: Readonly<Record<Part['state'], string>> = {
  open: '○ not told yet',
  tagged: '◐ told, out',
  back: '● back',
  'left-out': '✕ does not return',
  'not-told': '? not told',
};

interface PartTableProps {
  readonly parts: readonly Part[];
  /** Where an act is answered. */
  readonly way: (act: string) => string;
}

/** Position, end, face and condition of every part that must return. */
export function PartTable({ parts, way }: PartTableProps) {
  return (
    <section className="record-section" aria-labelledby="parts-back">
      <h2 id="parts-back">Parts that must return</h2>
      {parts.length === 0 ? (
        <p>This plan names none.</p>
      ) : (
        <table className="record-table register-parts">
          <thead>
            <tr>
              {['Part', 'Position', 'End', 'Face', 'Condition', 'State'].map((name) => (
                <th key={name} scope="col">
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {parts.map((part) => (
              <tr key={`${part.part} ${part.place}`} data-part-state={part.state}>
                <td data-name="Part">
                  {part.part}, {part.place}
                </td>
                <Cell name="Position" text={part.position} />
                <Cell name="End" text={part.end} />
                <Cell name="Face" text={part.face} />
                <Cell name="Condition" text={part.condition} />
                <td data-name="State">
                  {stateWords[part.state]}
                  {part.why && `: ${part.why}`}
                  {part.given && (
                    <span className="soft">
                      {' '}
                      ({part.given.by}, {part.given.at})
                    </span>
                  )}
                  {part.state === 'open' && part.act !== undefined && (
                    <Fragment>
                      {' '}
                      <Link className="operation-link not-printed" href={way(part.act)}>
                        Tell it
                      </Link>
                    </Fragment>
                  )}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}

/** An empty cell takes no row of a phone. */
export function Cell({ name, text }: { readonly name: string; readonly text: string }) {
  return (
    <td data-name={name} data-empty={text === '' || undefined}>
      {text}
    </td>
  );
}
