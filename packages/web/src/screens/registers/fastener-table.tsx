import type { RegistersView } from '@gudgeon/core/workbench';
import { Cell } from './part-table.js';

type Fastener = RegistersView['fasteners'][number];

/** What sat and sits in each hole, joint by joint. */
export function FastenerTable({ fasteners }: { readonly fasteners: readonly Fastener[] }) {
  const joints = [...new Map(fasteners.map(({ joint, jointName }) => [joint, jointName]))];
  return (
    <section className="record-section" aria-labelledby="fasteners-by-hole">
      <h2 id="fasteners-by-hole">Fasteners by hole</h2>
      {joints.length === 0 && <p>The sheet lists no holes, and no bolt card is written.</p>}
      {joints.map(([joint, name]) => (
        <details key={joint} className="fold register-joint">
          <summary>{name}</summary>
          <table className="record-table register-fasteners">
            <thead>
              <tr>
                {['Hole', 'Fastener', 'Length', 'Opens into', 'Placed by'].map((head) => (
                  <th key={head} scope="col">
                    {head}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {fasteners
                .filter((one) => one.joint === joint)
                .map((one) => (
                  <tr key={one.hole}>
                    <td data-name="Hole">{one.hole}</td>
                    <Cell name="Fastener" text={one.fastener} />
                    <Cell name="Length" text={one.length} />
                    <Cell name="Opens into" text={one.opensInto} />
                    <Cell name="Placed by" text={one.given ? `${one.given.by}, ${one.given.at}` : ''} />
                  </tr>
                ))}
            </tbody>
          </table>
        </details>
      ))}
    </section>
  );
}
