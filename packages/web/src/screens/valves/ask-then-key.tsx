import type { ValveAsk } from '@gudgeon/core/workbench';
import { type ReactNode, useState } from 'react';
import { ActButton, sayAgain } from '../../bench/index.js';
import { type Action, useActions } from '../../keys/index.js';
import type { Desk } from './desk.js';
import { LargeAsk } from './large-ask.js';
import { LastGap } from './last-gap.js';

interface AskThenKeyProps {
  readonly desk: Desk;
  readonly ask: ValveAsk;
  /** What the first press says, e.g. "Set. Key the gap". */
  readonly label: string;
  /** Engine cold or hot and the unit: beside the figure that depends on them. */
  readonly choice: ReactNode;
  readonly children: ReactNode;
}
const roomForBoth = () => window.innerWidth >= 900;

/**
 * First what is asked, to be read from the far side; then the number keys. A phone shows one after the other, because the
 * figure and the keys together are taller than it; a wide screen shows both.
 */
export function AskThenKey({ desk, ask, label, choice, children }: AskThenKeyProps) {
  const [keying, setKeying] = useState(roomForBoth);
  const key: Action = {
    name: 'key-gap',
    label,
    keys: ['Enter', ' '],
    available: true,
    run: () => setKeying(true),
  };
  const run = useActions(
    keying ? [] : [key, { name: 'again', label: 'Say it again', keys: ['r'], available: true, run: sayAgain }],
  );
  const small = keying && !roomForBoth();
  return (
    <>
      {small ? (
        <p className="step-lead">
          {ask.lead}: {ask.number === '' ? 'no figure' : `${ask.number} ${ask.unit}`}
        </p>
      ) : (
        <LargeAsk lead={ask.lead} number={ask.number} unit={ask.unit} />
      )}
      {choice}
      {keying ? children : <ActButton action={key} run={run} />}
      {!small && <LastGap desk={desk} />}
    </>
  );
}
