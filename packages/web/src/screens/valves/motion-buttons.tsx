import type { MouseEvent } from 'react';
import { letGo } from '../../keys/index.js';
import type { Motion } from './use-motion.js';

/** Plays the turn, or steps the drawn crank by hand. */
export function MotionButtons({ motion }: { readonly motion: Motion }) {
  const press = (act: (() => void) | undefined) => (event: MouseEvent<HTMLElement>) => {
    act?.();
    letGo(event);
  };
  return (
    <div className="figure-choice not-printed">
      {motion.play && (
        <button type="button" className="button" aria-pressed={motion.playing} onClick={press(motion.play)}>
          {motion.playing ? 'Stop' : 'Show the turn'}
        </button>
      )}
      <button type="button" className="button" onClick={press(() => motion.step(-10))}>
        −10°
      </button>
      <button type="button" className="button" onClick={press(() => motion.step(10))}>
        +10°
      </button>
      {!motion.play && <span className="field-hint">This device asks for no motion: step the drawing by hand.</span>}
    </div>
  );
}
