import {
  type CompressionView,
  type CompressionWish,
  type ShownIn,
  shownWay,
  typedFigure,
} from '@gudgeon/core/workbench';
import { type FormEvent, useId, useState } from 'react';
import { ChoiceField, TextField } from '../../bench/index.js';
import { Answers } from './answers.js';

interface RatioGoalFormProps {
  readonly view: CompressionView;
  readonly shownIn: ShownIn;
  readonly set: (goal: CompressionWish['goal']) => void;
}
type Which = 'ratio' | 'effective';

/** The other way round: a ratio is wanted, and each part alone is solved for it. */
export function RatioGoalForm({ view, shownIn, set }: RatioGoalFormProps) {
  const id = useId();
  const [which, setWhich] = useState<Which>('ratio');
  const [text, setText] = useState('');
  const [quench, setQuench] = useState('');
  const [fault, setFault] = useState('');
  const solve = (event: FormEvent) => {
    event.preventDefault();
    const ratio = typedFigure('ratio-least', text, shownIn);
    const wish = quench.trim() === '' ? undefined : typedFigure('quench-least', quench, shownIn);
    if (!ratio.ok) return setFault(ratio.fault);
    if (ratio.value.value <= 1) return setFault('A ratio above 1 is valid.');
    if (wish && !wish.ok) return setFault(wish.fault);
    setFault('');
    const value = ratio.value.value;
    set({
      ...(which === 'ratio' ? { ratio: value } : { effective: value }),
      ...(wish?.ok && { quench: wish.value.value }),
    });
  };
  return (
    <section className="stack" aria-labelledby={id}>
      <h2 id={id}>Which part gives a wanted ratio?</h2>
      <form className="stack" onSubmit={solve} noValidate>
        <div className="goal-fields">
          <ChoiceField
            name="Which ratio is wanted"
            value={which}
            choices={[
              ['ratio', 'compression ratio'],
              ['effective', 'effective ratio'],
            ]}
            set={setWhich}
          />
          <TextField name="Ratio wanted" value={text} set={setText} figure />
          <TextField
            name={`with a quench of (${shownWay('length', shownIn).unit})`}
            value={quench}
            set={setQuench}
            figure
          />
        </div>
        <span className="field-fault" role="alert">
          {fault}
        </span>
        <button type="submit" className="button">
          Solve for cylinder {view.cylinder}
        </button>
      </form>
      <Answers rows={view.solved} title={`Each part alone, cylinder ${view.cylinder}`} />
      {view.solvedCautions.length > 0 && (
        <ul className="plain fit-list">
          {view.solvedCautions.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
    </section>
  );
}
