import { type InputView, typedFigure } from '@gudgeon/core/workbench';
import { FigureForm } from '../../bench/index.js';
import type { Hand } from './hand.js';

/** A field that takes a figure to its last digit. */
export function ExactEntry({ input, hand }: { readonly input: InputView; readonly hand: Hand }) {
  return (
    <FigureForm
      name={input.unit === '' ? input.title : `${input.title}, ${input.unit}`}
      button="Try it"
      take={(text) => {
        const typed = typedFigure(input.key, text, hand.shownIn);
        if (!typed.ok) return { fault: typed.fault };
        hand.put(input.key, typed.value.value);
        return 'taken';
      }}
    />
  );
}
