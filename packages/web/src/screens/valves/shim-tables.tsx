import type { ShimsView } from '@gudgeon/core/workbench';

interface ShimTablesProps {
  readonly shims: ShimsView;
  readonly measure: (key: string) => void;
}

/** What was found, what goes where, what to buy, and the proof that it cannot be fewer. */
export function ShimTables({ shims, measure }: ShimTablesProps) {
  const chosen = new Map(shims.choices.map((one) => [one.key, one]));
  return (
    <>
      {shims.choices.length > 0 && (
        <section className="stack" aria-labelledby="buy">
          <h2 id="buy" className="step-title">
            To buy
          </h2>
          <p className="ask-number" data-buy>
            {shims.buy.length === 0 ? 'Nothing' : shims.buy.join(', ')}
          </p>
          <p>{shims.proof}</p>
          {shims.unserved.map((line) => (
            <p key={line} className="field-fault">
              {line}
            </p>
          ))}
        </section>
      )}
      <ul className="plain shim-list">
        {shims.measured.map((one) => {
          const choice = chosen.get(one.key);
          return (
            <li key={one.key}>
              <button type="button" className="button row-button" onClick={() => measure(one.key)}>
                <span>
                  <strong>{one.place}</strong>
                  <br />
                  {one.gap === undefined ? 'not measured' : `found: gap ${one.gap}, shim ${one.shim}`}
                </span>
                {choice && (
                  <span>
                    <strong>{choice.shim}</strong>
                    <br />
                    {choice.from}; gap {choice.gap}
                  </span>
                )}
              </button>
            </li>
          );
        })}
      </ul>
    </>
  );
}
