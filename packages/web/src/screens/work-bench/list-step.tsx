import { useRef, useState } from 'react';
import { ActButton, Armed, Pick } from '../../bench/index.js';
import { type Action, notABounce, useActions } from '../../keys/index.js';
import { MethodPick } from './method-pick.js';
import { methodsFor } from './methods.js';
import { SaidWords } from './said-words.js';
import { type StepProps, usual } from './step.js';

const STARTERS = ['all there', 'nothing missing', 'nothing found'] as const;
const OFFERED = 4;

/** Several things, a line each. Enter adds a line; Enter on an empty line records them. */
export function ListStep({ act, desk, earlier, give }: StepProps) {
  const methods = methodsFor(act);
  const field = useRef<HTMLInputElement>(null);
  const [lines, setLines] = useState<readonly string[]>([]);
  const [now, setNow] = useState('');
  const [method, setMethod] = useState(methods[0] ?? 'by eye');
  const [fault, setFault] = useState('');
  const add = (line: string) => {
    if (line.trim() !== '' && !lines.includes(line.trim())) setLines([...lines, line.trim()]);
    setNow('');
    setFault('');
  };
  const record = (result: 'good' | 'bad') => {
    const all = [...lines, now.trim()].filter((line) => line !== '');
    const words = all.join('; ');
    if (all.length > 0)
      return give({ kind: 'list', words, result }, method, result === 'good' ? words : `not good, ${words}`);
    setFault('Nothing is on the list yet: write a line, or pick one.');
    desk.recorder.complain('Nothing is on the list yet.');
    field.current?.focus();
  };
  const good = usual('Record this list', () => record('good'));
  const bad: Action = {
    name: 'bad',
    label: 'Record it: not good',
    keys: ['n'],
    available: true,
    run: () => record('bad'),
  };
  const own: Action = { name: 'own', label: 'Write', keys: ['w'], available: true, run: () => field.current?.focus() };
  const run = useActions([good, bad, own]);
  const enter = () => {
    if (now.trim() !== '') add(now);
    else if (notABounce('record')) record('good');
  };
  return (
    <div className="bench">
      {lines.length > 0 && (
        <ol className="plain list-lines">
          {lines.map((line) => (
            <li key={line}>
              <span>{line}</span>
              <button
                type="button"
                className="button"
                aria-label={`Take off the list: ${line}`}
                onClick={() => setLines(lines.filter((one) => one !== line))}
              >
                ✕
              </button>
            </li>
          ))}
        </ol>
      )}
      <Armed again={lines.join('|')} scroll={false}>
        <SaidWords
          name={`Line ${lines.length + 1}`}
          words={now}
          set={setNow}
          field={field}
          fault={fault}
          enter={enter}
          armed
        />
      </Armed>
      <ActButton action={good} run={run} />
      <Pick
        name="Lines used before"
        choices={[...new Set([...earlier, ...STARTERS])].slice(0, OFFERED)}
        chosen=""
        choose={add}
      />
      <MethodPick offered={methods} method={method} choose={setMethod} />
      <div className="apart">
        <ActButton action={bad} run={run} second />
      </div>
    </div>
  );
}
