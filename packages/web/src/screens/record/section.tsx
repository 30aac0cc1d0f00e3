import type { RecordView } from '@gudgeon/core/workbench';
import { useId } from 'react';
import { RecordRowView } from './row.js';

interface SectionProps {
  readonly job: string;
  readonly section: RecordView['sections'][number];
  readonly strike: (entry: string, reason: string) => boolean;
}
const columns = ['What', 'Value', 'Limit', 'Where the limit comes from', 'Who', 'When'] as const;

/** One part of the record: a table of everything written down, and what is still open. */
export function Section({ job, section, strike }: SectionProps) {
  const id = useId();
  return (
    <section className="record-section" aria-labelledby={id}>
      <h2 id={id}>{section.title}</h2>
      {section.rows.length === 0 ? (
        <p>Nothing is recorded.</p>
      ) : (
        <table className="record-table" aria-labelledby={id}>
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
              <RecordRowView key={row.entry} job={job} row={row} columns={columns} strike={strike} />
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
