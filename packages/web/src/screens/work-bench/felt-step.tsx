import { useRef, useState } from 'react';
import { ActButton, Pick } from '../../bench/index.js';
import { type Action, notABounce, useActions } from '../../keys/index.js';
import { MethodPick } from './method-pick.js';
import { methodsFor } from './methods.js';
import { NotGood } from './not-good.js';
import { SaidWords } from './said-words.js';
import { type StepProps, usual } from './step.js';

/** Where nothing was said yet of the same act elsewhere. Common practice, no source. */
const STARTERS = ['clean, nothing found', 'free all the way', 'seated all round', 'as the sheet says'] as const;
const OFFERED = 4;

/** Felt or seen: words, and good or not good. The words said at the place before are one press away. */
export function FeltStep({ act, desk, earlier, give }: StepProps) {
  const offered = [...new Set([...earlier, ...STARTERS])].slice(0, OFFERED);
  const methods = methodsFor(act);
  const field = useRef<HTMLInputElement>(null);
  const [words, setWords] = useState(earlier[0] ?? '');
  const [method, setMethod] = useState(methods[0] ?? 'by eye');
  const [fault, setFault] = useState('');
  const [bad, setBad] = useState(false);
  const choose = (next: string) => {
    setWords(next);
    setFault('');
  };
  const good = () => {
    const told = words.trim();
    if (told !== '') return give({ kind: 'felt-or-seen', words: told, result: 'good' }, method, told);
    setFault('Say what you felt or saw: pick words, or type them here.');
    desk.recorder.complain('Say what you felt or saw.');
    field.current?.focus();
  };
  const goodAction = usual('Good', good);
  const badAction: Action = { name: 'bad', label: 'Not good', keys: ['n'], available: true, run: () => setBad(true) };
  const own: Action = {
    name: 'own',
    label: 'Own words',
    keys: ['w'],
    available: true,
    run: () => field.current?.focus(),
  };
  const picks = offered.map(
    (each, index): Action => ({
      name: `pick ${index}`,
      label: each,
      keys: [String(index + 1)],
      available: true,
      run: () => choose(each),
    }),
  );
  const run = useActions(bad ? [] : [goodAction, badAction, own, ...picks]);
  if (bad)
    return (
      <NotGood
        back={() => setBad(false)}
        record={(found) => give({ kind: 'felt-or-seen', words: found, result: 'bad' }, method, `not good, ${found}`)}
      />
    );
  return (
    <div className="bench">
      <ActButton action={goodAction} run={run}>
        {words.trim() === '' ? 'Good' : `Good: ${words.trim()}`}
      </ActButton>
      <Pick name="What you felt or saw" choices={offered} chosen={words} choose={choose} numbered />
      <SaidWords
        name="Own words (W)"
        words={words}
        set={choose}
        field={field}
        fault={fault}
        enter={() => notABounce('record') && good()}
      />
      <MethodPick offered={methods} method={method} choose={setMethod} />
      <div className="apart">
        <ActButton action={badAction} run={run} second />
      </div>
    </div>
  );
}
