import type { GasketItemView } from '@gudgeon/core/workbench';

const stateWords: Record<GasketItemView['state'], string> = { open: 'not looked at', good: '✓', bad: '✗' };

/** Every check of this gasket with its answer; touching one asks it again. */
export function CheckedItems({
  items,
  look,
}: {
  readonly items: readonly GasketItemView[];
  readonly look: (item: string) => void;
}) {
  return (
    <details className="fold">
      <summary>All {items.length} checks</summary>
      <ul className="plain stack">
        {items.map((item) => (
          <li key={item.item}>
            <button type="button" className="button row-button" onClick={() => look(item.item)}>
              <span>{item.title}</span>
              <span>
                {stateWords[item.state]} {item.given?.seen}
              </span>
            </button>
          </li>
        ))}
      </ul>
    </details>
  );
}
