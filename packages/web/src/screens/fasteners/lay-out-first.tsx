import type { LayOut } from '@gudgeon/core/workbench';
import { ActButton } from '../../bench/index.js';
import { useActions } from '../../keys/index.js';

/** What has to lie on the bench, by kind and number, before the first one goes in. */
export function LayOutFirst({ rows, done }: { readonly rows: readonly LayOut[]; readonly done: () => void }) {
  const action = { name: 'laid-out', label: 'All laid out', keys: ['Enter', ' '], available: true, run: done };
  const run = useActions([action]);
  return (
    <section className="stack" aria-labelledby="lay-out">
      <h2 id="lay-out" className="step-title">
        Lay these out
      </h2>
      <ul className="plain stack">
        {rows.map((row) => (
          <li key={row.fastener} className="lay-out">
            <strong className="lay-out-count">{row.count} ×</strong>
            <span>
              {row.name}, {row.thread}, <strong>{row.length}</strong>
              <br />
              <span className="field-hint">{row.use}</span>
            </span>
          </li>
        ))}
      </ul>
      <ActButton action={action} run={run} />
    </section>
  );
}
