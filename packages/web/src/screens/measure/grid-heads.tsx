import type { WorksheetView } from '@gudgeon/core/workbench';
import { memo } from 'react';

/** One line of heads, or heights over directions. */
export const GridHeads = memo(function GridHeads({ columns }: { readonly columns: WorksheetView['columns'] }) {
  const groups = columns.filter((column, i) => column.group !== undefined && column.group !== columns[i - 1]?.group);
  const grouped = groups.length > 0;
  return (
    <thead>
      {grouped && (
        <tr>
          <th scope="col" rowSpan={2} className="grid-corner">
            Place
          </th>
          {groups.map(({ group = '' }) => (
            <th key={group} scope="colgroup" colSpan={columns.filter((column) => column.group === group).length}>
              {group}
            </th>
          ))}
        </tr>
      )}
      <tr>
        {!grouped && (
          <th scope="col" className="grid-corner">
            Place
          </th>
        )}
        {columns.map((column) => (
          <th key={column.id} scope="col">
            {column.name}
          </th>
        ))}
      </tr>
    </thead>
  );
});
