import type { OrderView } from '@gudgeon/core/workbench';

const COLUMNS = ['How many', 'Part', 'Number', 'Size', 'For'] as const;

/** What has to be bought, the same part in the same size once. */
export function PartsToBuy({ buys }: { readonly buys: OrderView['buys'] }) {
  return (
    <section className="stack" aria-labelledby="buy">
      <h2 id="buy">Parts to buy</h2>
      {buys.length === 0 ? (
        <p>No part has to be bought for what is decided so far.</p>
      ) : (
        <table className="order-places" aria-labelledby="buy">
          <thead>
            <tr>
              {COLUMNS.map((name) => (
                <th key={name} scope="col">
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {buys.map(({ count, part, partNumber, size, for: use }) => (
              <tr key={`${part} ${partNumber} ${size}`}>
                {[`${count}`, part, partNumber, size, use].map((cell, at) => (
                  <td key={COLUMNS[at]} data-name={COLUMNS[at]} data-empty={cell === '' ? '' : undefined}>
                    {cell}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}
