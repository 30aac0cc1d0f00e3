import { useState } from 'react';
import { Pick, TextField } from '../../bench/index.js';

interface MethodPickProps {
  readonly name?: string;
  readonly offered: readonly string[];
  readonly method: string;
  readonly choose: (method: string) => void;
}
const SHOWN = 3;

/** How it was found: one tap, the last way of this device already chosen. */
export function MethodPick({ name = 'How it was found', offered, method, choose }: MethodPickProps) {
  const [all, setAll] = useState(false);
  const shown = all || !offered.slice(0, SHOWN).includes(method) ? offered : offered.slice(0, SHOWN);
  return (
    <div className="method-pick">
      <Pick name={name} choices={shown} chosen={method} choose={choose} />
      {all ? (
        <TextField name="Another way" value={offered.includes(method) ? '' : method} set={choose} />
      ) : (
        <button type="button" className="button method-more" onClick={() => setAll(true)}>
          Another way
        </button>
      )}
    </div>
  );
}
