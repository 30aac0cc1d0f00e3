import type { RecordRow } from '@gudgeon/core/workbench';
import { PhotoView } from '../../photos/index.js';
import { StrikeRow } from './strike-row.js';

interface RecordRowViewProps {
  readonly job: string;
  readonly row: RecordRow;
  readonly columns: readonly string[];
  readonly strike: (entry: string, reason: string) => boolean;
}

/** One written fact. On a phone its cells stand one below the other, each with its name; a photo stands below the words it has. */
export function RecordRowView({ job, row, columns, strike }: RecordRowViewProps) {
  const cells = [row.what, row.value, row.limit, row.origin, row.by, row.at];
  const isStruck = row.struck !== undefined;
  return (
    <>
      <tr className={isStruck ? 'struck' : undefined} data-entry={row.entry}>
        {cells.map((cell, at) => (
          <td key={columns[at]} data-name={columns[at]} data-empty={cell === '' ? '' : undefined}>
            {isStruck && cell !== '' ? <del>{cell}</del> : cell}
            {at === 1 && isStruck && <strong className="struck-why"> struck out: {row.struck}</strong>}
            {at === 5 && !isStruck && <StrikeRow row={row} strike={strike} />}
          </td>
        ))}
      </tr>
      {row.photo && (
        <tr className="record-photo">
          <td colSpan={columns.length}>
            <PhotoView job={job} photo={row.photo} place={row.what.replace(/^Photo: /, '')} />
          </td>
        </tr>
      )}
    </>
  );
}
