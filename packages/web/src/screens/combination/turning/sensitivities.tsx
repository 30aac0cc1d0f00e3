import type { SensitivityRow } from '@gudgeon/core/workbench';

/** What moves the least room, and by how much. */
export function Sensitivities({ rows }: { readonly rows: readonly SensitivityRow[] }) {
  if (rows.length === 0) return null;
  return (
    <section className="stack" aria-labelledby="sensitivities">
      <h2 id="sensitivities">What moves the least room</h2>
      <table className="turning-table">
        <thead>
          <tr>
            <th scope="col">Change</th>
            <th scope="col">Intake</th>
            <th scope="col">Exhaust</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ key, name, intake, exhaust }) => (
            <tr key={key}>
              <th scope="row">{name}</th>
              <td>{intake === '' ? 'not known' : intake}</td>
              <td>{exhaust === '' ? 'not known' : exhaust}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
