import type { OrderLineView } from '@gudgeon/core/workbench';

/** Targets place by place, where the work has places: each with the part that it is fitted to and what it has become. */
export function Places({ places }: { readonly places: OrderLineView['places'] }) {
  if (places.length === 0) return null;
  const fitted = places.some(({ fittedTo }) => fittedTo !== '');
  return (
    <table className="order-places">
      <thead>
        <tr>
          <th scope="col">Place</th>
          <th scope="col">To</th>
          {fitted && <th scope="col">Fitted to</th>}
          <th scope="col">Come back as</th>
        </tr>
      </thead>
      <tbody>
        {places.map(({ name, target, fittedTo, returned }) => (
          <tr key={name}>
            <td data-name="Place">{name}</td>
            <td data-name="To">{target}</td>
            {fitted && <td data-name="Fitted to">{fittedTo}</td>}
            <td data-name="Come back as">
              {returned && returned.state !== 'no data' && <strong>{returned.state.toUpperCase()} </strong>}
              {returned?.words ?? 'not measured'}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
