import { useState } from 'react';
import { NumberEntry } from '../../bench/index.js';

/** An angle read off the damper or a degree wheel. */
export function KeyAngle({ take }: { readonly take: (degrees: number) => void }) {
  const [open, setOpen] = useState(false);
  return (
    <details className="fold" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>Key the angle</summary>
      {open && (
        <NumberEntry
          slot="Crank, degrees after firing dead centre"
          unit="°"
          ghost="0 to 720: the second turn begins at 360"
          recordLabel="The crank is here"
          check={(text) =>
            Number(text) <= 720
              ? { level: 'fine' }
              : { level: 'impossible', reason: `${text}° is more than the 720° of a whole cycle.` }
          }
          onRecord={(_, shown) => take(Number(shown) % 720)}
        />
      )}
    </details>
  );
}
