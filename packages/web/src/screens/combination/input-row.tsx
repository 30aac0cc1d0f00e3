import type { InputView } from '@gudgeon/core/workbench';
import { memo, useId, useState } from 'react';
import { ExactEntry } from './exact-entry.js';
import type { Hand } from './hand.js';

interface InputRowProps {
  readonly input: InputView;
  readonly hand: Hand;
}
const ORIGINS: Readonly<Record<string, string>> = {
  scratch: 'tried here',
  stated: 'stated',
  measured: 'measured',
  sheet: 'sheet',
  assumed: 'assumed',
};

/** One figure: value and origin at a glance, a slider, and behind a tap its meaning, its source and an exact entry. */
export const InputRow = memo(function InputRow({ input, hand }: InputRowProps) {
  const id = useId();
  const [open, setOpen] = useState(false);
  const { title, value, unit, origin } = input;
  const words = `${value}${unit === '' ? '' : ` ${unit}`}`;
  return (
    <>
      <div className="input-head">
        <label htmlFor={id} className="input-title">
          {title}
        </label>
        <b className="input-value">{words}</b>
        <span className={`input-origin input-origin-${origin}`}>{ORIGINS[origin] ?? origin}</span>
      </div>
      <div className="input-hand">
        <Control id={id} input={input} words={words} hand={hand} />
        <button type="button" className="button" aria-expanded={open} onClick={() => setOpen(!open)}>
          Exact<span className="only-read"> figure and source: {title}</span>
        </button>
      </div>
      {open && <More input={input} hand={hand} />}
      {origin === 'scratch' && (
        <button type="button" className="button input-back" onClick={() => hand.takeBack(input.key)}>
          Take back<span className="only-read">: {title}</span>
        </button>
      )}
    </>
  );
}, sameRow);

interface ControlProps extends InputRowProps {
  readonly id: string;
  readonly words: string;
}
/** A slider; a list where the figure is one of several words; nothing but the label's place where it is moved by typing only. */
function Control({ id, input, words, hand }: ControlProps) {
  const { key, slider, choices, value } = input;
  if (slider)
    return (
      <input
        id={id}
        className="slider"
        type="range"
        min={slider.from}
        max={slider.to}
        step={slider.step}
        value={slider.now}
        aria-valuetext={words}
        data-arrows
        onChange={(event) => hand.slide(key, Number(event.target.value))}
      />
    );
  if (choices)
    return (
      <select
        id={id}
        className="input"
        value={value}
        onChange={(event) => hand.put(key, choices.indexOf(event.target.value))}
      >
        {choices.map((choice) => (
          <option key={choice} value={choice}>
            {choice.replaceAll('-', ' ')}
          </option>
        ))}
      </select>
    );
  return <output id={id} />;
}

function More({ input, hand }: InputRowProps) {
  return (
    <div className="stack input-more">
      <p className="field-hint">
        {input.meaning} {input.from === '' ? '' : `Now: ${input.from}.`}
      </p>
      {!input.choices && <ExactEntry input={input} hand={hand} />}
    </div>
  );
}

/** Views are made anew with each move: only a row that reads otherwise is drawn again. */
function sameRow(a: InputRowProps, b: InputRowProps): boolean {
  if (a.hand === b.hand && a.input === b.input) return true;
  const { slider: one, ...own } = a.input;
  const { slider: other, ...fresh } = b.input;
  return (
    a.hand === b.hand &&
    one?.now === other?.now &&
    one?.from === other?.from &&
    one?.to === other?.to &&
    (Object.keys(own) as (keyof typeof own)[]).every((key) => own[key] === fresh[key])
  );
}
