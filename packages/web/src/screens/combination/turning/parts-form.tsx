import {
  PART_MARKINGS,
  type PartMarking,
  type PartsAtHand,
  type ShownIn,
  shownWay,
  timingPart,
  USUAL_PARTS,
} from '@gudgeon/core/workbench';
import { type FormEvent, useState } from 'react';
import { ChoiceField, TextField } from '../../../bench/index.js';

interface PartsFormProps {
  readonly atHand: PartsAtHand;
  /** Those of the sheet, in words. */
  readonly stock: readonly string[];
  readonly shownIn: ShownIn;
  readonly set: (next: PartsAtHand) => void;
}

/** Keys and bushings at hand, and the sprocket whose teeth may be moved. */
export function PartsForm({ atHand, stock, shownIn, set }: PartsFormProps) {
  const { parts } = atHand;
  const add = (more: PartsAtHand['parts']) => {
    const fresh = more.filter(({ id }) => parts.every((one) => one.id !== id));
    set({ ...atHand, parts: [...parts, ...fresh] });
  };
  return (
    <details className="fit-fold">
      <summary>
        <h2>Keys, bushings and teeth at hand ({parts.length})</h2>
      </summary>
      <div className="stack fit-opened">
        {stock.length > 0 && (
          <ul className="plain" aria-label="Of the sheet's stock">
            {stock.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        )}
        <ul className="plain row" aria-label="At hand">
          {parts.map(({ id, name }) => (
            <li key={id}>
              <button
                type="button"
                className="button"
                onClick={() => set({ ...atHand, parts: parts.filter((one) => one.id !== id) })}
              >
                <span className="only-read">Take away </span>
                {name} ✕
              </button>
            </li>
          ))}
        </ul>
        <AddPart shownIn={shownIn} add={(part) => add([part])} />
        <button type="button" className="button" onClick={() => add(USUAL_PARTS)}>
          Add a usual set: 1, 2, 3, 4, 6 and 8 degrees at the crank
        </button>
        <Teeth atHand={atHand} set={set} />
      </div>
    </details>
  );
}

interface AddPartProps {
  readonly shownIn: ShownIn;
  readonly add: (part: PartsAtHand['parts'][number]) => void;
}
function AddPart({ shownIn, add }: AddPartProps) {
  const [marking, setMarking] = useState<PartMarking>('crank');
  const [amount, setAmount] = useState('');
  const [radius, setRadius] = useState('');
  const [fault, setFault] = useState('');
  const byAngle = marking === 'crank' || marking === 'cam';
  const { unit } = shownWay('length', shownIn);
  const take = (event: FormEvent) => {
    event.preventDefault();
    const part = timingPart({ marking, amount, radius }, shownIn);
    if (!part.ok) return setFault(part.fault);
    setFault('');
    setAmount('');
    add(part.value);
  };
  return (
    <form className="stack" onSubmit={take} noValidate>
      <ChoiceField name="Key or bushing" value={marking} choices={PART_MARKINGS} set={setMarking} />
      <TextField name={byAngle ? 'Degrees' : `Offset, ${unit}`} value={amount} set={setAmount} figure />
      {!byAngle && <TextField name={`From the centre of the shaft, ${unit}`} value={radius} set={setRadius} figure />}
      <span className="field-fault" role="alert">
        {fault}
      </span>
      <button type="submit" className="button button-main">
        Add it
      </button>
    </form>
  );
}

const TEETH = { least: 8, most: 80 };
function Teeth({ atHand, set }: Pick<PartsFormProps, 'atHand' | 'set'>) {
  const [text, setText] = useState(`${atHand.crankTeeth ?? ''}`);
  const change = (next: string) => {
    setText(next);
    const teeth = Number(next);
    const valid = Number.isInteger(teeth) && teeth >= TEETH.least && teeth <= TEETH.most;
    const { parts } = atHand;
    set(valid ? { parts, crankTeeth: teeth } : { parts });
  };
  return (
    <TextField
      name="Teeth of the crank sprocket, where chain or belt may be moved by one"
      hint={`${TEETH.least} to ${TEETH.most}; empty where it may not.`}
      value={text}
      set={change}
      figure
    />
  );
}
