import { useState } from 'react';
import { ActButton, Armed, Pick } from '../../bench/index.js';
import { type Action, notABounce, useActions } from '../../keys/index.js';
import { noteChosen, offeredWords } from '../work/kept.js';
import { SaidWords } from './said-words.js';

const USUAL = ['tight', 'damaged', 'dirty', 'does not fit', 'worn'] as const;

interface NotGoodProps {
  readonly record: (found: string) => void;
  readonly back: () => void;
}

/** What is not good, in words; the act stays open until it is good, or is left out with a reason. */
export function NotGood({ record, back }: NotGoodProps) {
  const [found, setFound] = useState('');
  const [fault, setFault] = useState('');
  const take = () => {
    const told = found.trim();
    if (told === '') return setFault('Say what is not good.');
    noteChosen('not-good', told);
    record(told);
  };
  const action: Action = { name: 'record', label: 'Record: not good', keys: [], available: true, run: take };
  const leave: Action = { name: 'back', label: 'Go back', keys: ['Escape'], available: true, run: back };
  const run = useActions([action, leave]);
  const choose = (words: string) => {
    setFound(words);
    setFault('');
  };
  return (
    <div className="bench">
      <Armed>
        <SaidWords
          name="What is not good?"
          words={found}
          set={choose}
          fault={fault}
          enter={() => notABounce('record') && take()}
          armed
        />
      </Armed>
      <Pick name="Words used before" choices={offeredWords('not-good', USUAL)} chosen={found} choose={choose} />
      <ActButton action={action} run={run} />
      <div className="apart">
        <ActButton action={leave} run={run} second />
      </div>
    </div>
  );
}
