import { useState } from 'react';
import { ActButton, Armed, EntryModes, NumberEntry, Pick, SILENCE, useEntryMode } from '../../bench/index.js';
import { type Action, useActions } from '../../keys/index.js';
import { actName } from '../work/act-words.js';
import { lastChosen, noteChosen } from '../work/kept.js';
import { MethodPick } from './method-pick.js';
import { methodsFor } from './methods.js';
import { SaidWords } from './said-words.js';
import { type StepProps, usual } from './step.js';

interface Keyed {
  readonly raw: string;
  readonly text: string;
}

/** A figure: keyed, spoken or typed by a gauge, then judged by who took it. Nothing is recorded before that. */
export function ValueStep(props: StepProps) {
  const [keyed, setKeyed] = useState<Keyed>();
  if (keyed !== undefined) return <Judge {...props} keyed={keyed} again={() => setKeyed(undefined)} />;
  return <KeyIt {...props} take={setKeyed} />;
}

/** Units of which this figure may be below nothing: a protrusion may be a recess, a crank may stand before its mark. */
const SIGNED: ReadonlySet<string> = new Set(['length', 'angle', 'temperature']);

function KeyIt({ act, take }: StepProps & { readonly take: (keyed: Keyed) => void }) {
  const memory = `unit.${act.asked ?? 'plain'}`;
  const [mode, setMode] = useEntryMode();
  const [unit, setUnit] = useState(
    () => lastChosen(memory).find((one) => act.units.includes(one)) ?? act.units[0] ?? '',
  );
  const chooseUnit = (next: string) => {
    setUnit(next);
    noteChosen(memory, next);
  };
  return (
    <div className="bench">
      {act.units.length > 1 && <Pick name="Unit" choices={act.units} chosen={unit} choose={chooseUnit} />}
      <Armed again={`${mode} ${unit}`} scroll={mode === 'pad'}>
        <NumberEntry
          // On a phone the field is all that there is room for.
          slot={mode === 'pad' ? actName(act) : 'The figure'}
          about={act.id}
          unit={unit}
          sign={act.asked === undefined || SIGNED.has(act.asked)}
          pad={mode === 'pad'}
          {...(mode === 'gauge' ? { silence: SILENCE } : {})}
          recordLabel="Take this figure"
          spoken
          pedal="PageDown"
          onRecord={(raw, shown) => take({ raw, text: `${shown} ${unit}`.trim() })}
        />
      </Armed>
      <EntryModes mode={mode} setMode={setMode} />
    </div>
  );
}

interface JudgeProps extends StepProps {
  readonly keyed: Keyed;
  readonly again: () => void;
}
function Judge({ act, give, keyed, again }: JudgeProps) {
  const methods = methodsFor(act);
  const [method, setMethod] = useState(methods[0] ?? 'by eye');
  const [beside, setBeside] = useState('');
  const text = beside.trim() === '' ? keyed.text : `${keyed.text}; ${beside.trim()}`;
  const record = (result: 'good' | 'bad') =>
    give({ kind: 'value', text, result }, method, result === 'good' ? text : `${text}, not good`, keyed.raw);
  const good = usual('Good', () => record('good'));
  const bad: Action = { name: 'bad', label: 'Not good', keys: ['n'], available: true, run: () => record('bad') };
  const anew: Action = { name: 'again', label: 'Key it again', keys: ['Escape'], available: true, run: again };
  const run = useActions([good, bad, anew]);
  return (
    <div className="bench">
      <p className="target-number" data-current-number>
        {keyed.text}
      </p>
      <ActButton action={good} run={run} />
      <ActButton action={anew} run={run} second />
      <MethodPick offered={methods} method={method} choose={setMethod} />
      <SaidWords name="A second figure, or words beside it" words={beside} set={setBeside} />
      <div className="apart">
        <ActButton action={bad} run={run} second />
      </div>
    </div>
  );
}
