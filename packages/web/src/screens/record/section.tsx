import type { RecordView } from '@gudgeon/core/workbench';
import { RecordRowView } from './row.js';

interface SectionProps {
  readonly section: RecordView['sections'][number];
  readonly strike: (entry: string, reason: string) => boolean;
}
const columns = ['What', 'Value', 'Limit', 'Where the limit comes from', 'Who', 'When'] as const;

/** One part of the record: a table of everything written down, and what is still open. */
export function Section({ section, strike }: SectionProps) {
  return (
    <section className="record-section">
      <h2>{section.title}</h2>
      {section.rows.length === 0 ? (
        <p>Nothing is recorded.</p>
      ) : (
        <table className="record-table">
          <caption className="only-read">{section.title}</caption>
          <thead>
            <tr>
              {columns.map((name) => (
                <th key={name} scope="col">
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {section.rows.map((row) => (
              <RecordRowView key={row.entry} row={row} columns={columns} strike={strike} />
            ))}
          </tbody>
        </table>
      )}
      {section.open.map((line) => (
        <p key={line} className="record-open-line">
          Open: {line}
        </p>
      ))}
    </section>
  );
}
