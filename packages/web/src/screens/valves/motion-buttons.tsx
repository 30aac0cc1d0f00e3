import type { Motion } from './use-motion.js';

/** Plays the turn, or steps the drawn crank by hand. */
export function MotionButtons({ motion, turns }: { readonly motion: Motion; readonly turns: boolean }) {
  return (
    <div className="figure-choice not-printed">
      {motion.play && (
        <button type="button" className="button" aria-pressed={motion.playing} onClick={motion.play}>
          {motion.playing ? 'Stop' : 'Show the turn'}
        </button>
      )}
      <button type="button" className="button" onClick={() => motion.step(-10)}>
        −10°
      </button>
      <button type="button" className="button" onClick={() => motion.step(10)}>
        +10°
      </button>
      {!motion.play && turns && (
        <span className="field-hint">This device asks for no motion: step the drawing by hand.</span>
      )}
    </div>
  );
}
