import type { Cell } from '@gudgeon/core/workbench';
import { ActButton, StrikeReading } from '../../bench/index.js';
import { type Action, useActions } from '../../keys/index.js';
import type { SheetDesk } from './use-sheet-desk.js';
import { nextEmpty } from './walk.js';

/** A slot that has its reading: look at it, take it again, strike it out, or go on. */
export function SlotRead({ desk, cell }: { readonly desk: SheetDesk; readonly cell: Cell }) {
  const next = nextEmpty(desk.view, cell.slot);
  const actions: readonly Action[] = [
    {
      name: 'on',
      label: 'On to the next empty place',
      keys: ['Enter', ' '],
      available: next !== undefined,
      run: () => desk.choose(next),
    },
    {
      name: 'again',
      label: 'Read it again, the first hidden',
      keys: ['a'],
      available: true,
      run: () => desk.again(cell.slot),
    },
  ];
  const run = useActions(actions);
  return (
    <section className="bench" data-read={cell.slot} aria-live="polite">
      <h2 className="step-lead">{cell.name}</h2>
      <p className="sheet-number">{cell.text}</p>
      <p className="field-hint">
        {cell.readings > 1 ? `${cell.readings} readings; the last by` : 'Read by'} {cell.given?.by}, {cell.given?.at}
      </p>
      {actions
        .filter((action) => action.available)
        .map((action, index) => (
          <ActButton key={action.name} action={action} run={run} second={index > 0} />
        ))}
      {cell.given && (
        <div className="apart">
          <StrikeReading
            words={`${cell.name}, ${cell.text}`}
            strike={(reason) => desk.strike(cell.slot, cell.given?.entry ?? '', reason)}
          />
        </div>
      )}
    </section>
  );
}
