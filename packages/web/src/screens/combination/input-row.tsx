import type { InputView } from '@gudgeon/core/workbench';
import { memo, useId } from 'react';
import { ExactFigure } from './exact-figure.js';
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
  const { key, title, value, unit, origin, slider, choices } = input;
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
      {slider && (
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
      )}
      {choices && (
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
      )}
      {!slider && !choices && <output id={id} hidden />}
      <ExactFigure input={input} hand={hand} />
      {origin === 'scratch' && (
        <button type="button" className="button input-back" onClick={() => hand.takeBack(key)}>
          Take back<span className="only-read">: {title}</span>
        </button>
      )}
    </>
  );
}, sameRow);

/** Views are made anew with each move: only a row that reads otherwise is drawn again. */
function sameRow(a: InputRowProps, b: InputRowProps): boolean {
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
