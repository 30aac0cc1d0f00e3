import { useState } from 'react';
import { ActButton, Pick } from '../../bench/index.js';
import { useActions } from '../../keys/index.js';
import { noteChosen, offeredWords } from '../work/kept.js';
import { MethodPick } from './method-pick.js';
import { methodsFor } from './methods.js';
import { SaidWords } from './said-words.js';
import { type StepProps, usual } from './step.js';

const PARTS = ['position', 'end', 'face', 'condition'] as const;
type Part = (typeof PARTS)[number];
type Marks = Readonly<Record<Part, string>>;
const names: Readonly<Record<Part, string>> = {
  position: 'Position: where it sat',
  end: 'End: which end is up, or in front',
  face: 'Face: what looks to the front',
  condition: 'Condition',
};
/** Common practice, no source. */
const usualWords: Readonly<Record<Part, readonly string[]>> = {
  position: [],
  end: ['marked end up', 'marked end in front'],
  face: ['mark to the front', 'number to the front'],
  condition: ['used, good', 'worn', 'not to be used again'],
};
const OFFERED = 3;

/** How a part sat that must return: four short answers, the last ones offered again. */
export function RegisterStep({ act, desk, give }: StepProps) {
  const methods = methodsFor(act);
  const [method, setMethod] = useState(methods[0] ?? 'by eye');
  const [marks, setMarks] = useState<Marks>({ position: act.place, end: '', face: '', condition: '' });
  const set = (part: Part) => (words: string) => setMarks((before) => ({ ...before, [part]: words }));
  const toggle = (part: Part) => (words: string) => set(part)(marks[part] === words ? '' : words);
  const record = () => {
    if (marks.position.trim() === '' || marks.condition.trim() === '')
      return desk.recorder.complain('Say at least where it sat and in what condition it is.');
    for (const part of PARTS) noteChosen(`register.${part}`, marks[part]);
    const told = PARTS.map((part) => marks[part].trim()).filter((words) => words !== '');
    give({ kind: 'register', ...marks, result: 'good' }, method, told.join(', '));
  };
  const action = usual('Record', record);
  const run = useActions([action]);
  return (
    <div className="bench">
      {PARTS.map((part) => (
        <div key={part} className="stack">
          <SaidWords name={names[part]} words={marks[part]} set={set(part)} />
          <Pick
            name={`Said before: ${part}`}
            choices={offeredWords(`register.${part}`, usualWords[part], OFFERED)}
            chosen={marks[part]}
            choose={toggle(part)}
          />
        </div>
      ))}
      <MethodPick offered={methods} method={method} choose={setMethod} />
      <ActButton action={action} run={run} />
    </div>
  );
}
