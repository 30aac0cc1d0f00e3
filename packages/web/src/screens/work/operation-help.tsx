import type { OperationView } from '@gudgeon/core/workbench';

/** What holds for every act of an operation: what goes on which surface, with what, and what goes wrong. */
export function OperationHelp({ operation }: { readonly operation: OperationView }) {
  const { consumables, tools, mistakes } = operation;
  return (
    <div className="work-help">
      {consumables.length > 0 && (
        <section>
          <h3>What goes on which surface</h3>
          <dl>
            {consumables.map(({ surface, use, mistake }) => (
              <div key={surface}>
                <dt>{surface}</dt>
                <dd>
                  {use} <span className="soft">Not: {mistake}</span>
                </dd>
              </div>
            ))}
          </dl>
          <p className="field-hint">The sheet that comes with the part decides.</p>
        </section>
      )}
      {tools.length > 0 && (
        <section>
          <h3>Tools</h3>
          <ul>
            {tools.map((tool) => (
              <li key={tool}>{tool}</li>
            ))}
          </ul>
        </section>
      )}
      {mistakes.length > 0 && (
        <section>
          <h3>What goes wrong</h3>
          <dl>
            {mistakes.map(({ wrong, cost }) => (
              <div key={wrong}>
                <dt>{wrong}</dt>
                <dd>{cost}</dd>
              </div>
            ))}
          </dl>
        </section>
      )}
    </div>
  );
}
