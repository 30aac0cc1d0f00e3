import type { RecordRow } from '@gudgeon/core/workbench';
import { StrikeRow } from './strike-row.js';

interface RecordRowViewProps {
  readonly row: RecordRow;
  readonly columns: readonly string[];
  readonly strike: (entry: string, reason: string) => boolean;
}

/** One written fact. On a phone its cells stand one below the other, each with its name. */
export function RecordRowView({ row, columns, strike }: RecordRowViewProps) {
  const cells = [row.what, row.value, row.limit, row.origin, row.by, row.at];
  const isStruck = row.struck !== undefined;
  return (
    <tr className={isStruck ? 'struck' : undefined} data-entry={row.entry}>
      {cells.map((cell, at) => (
        <td key={columns[at]} data-name={columns[at]} data-empty={cell === '' ? '' : undefined}>
          {isStruck && cell !== '' ? <del>{cell}</del> : cell}
          {at === 1 && isStruck && <strong className="struck-why"> struck out: {row.struck}</strong>}
          {at === 5 && !isStruck && <StrikeRow row={row} strike={strike} />}
        </td>
      ))}
    </tr>
  );
}
