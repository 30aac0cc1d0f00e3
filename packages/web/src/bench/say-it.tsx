import { memo, useEffect, useRef, useState } from 'react';
import { useSettings } from './device-settings.js';
import { listen, listeningPossible } from './listen.js';

interface SayItProps {
  /** What is to be said: "Say the figure, digit by digit". */
  readonly words: string;
  readonly heard: (words: string) => void;
}

/** A button that listens once; nothing is shown where this browser cannot, or where nobody wants speech. */
export const SayIt = memo(function SayIt({ words, heard }: SayItProps) {
  const { speech } = useSettings();
  const [state, setState] = useState<'still' | 'listening'>('still');
  const [trouble, setTrouble] = useState('');
  const stop = useRef<() => void>(undefined);
  useEffect(() => () => stop.current?.(), []);
  if (!speech || !listeningPossible()) return null;
  const begin = () => {
    setTrouble('');
    setState('listening');
    stop.current = listen({ heard, failed: setTrouble, ended: () => setState('still') });
  };
  return (
    <div className="stack">
      <button
        type="button"
        className="button say-it"
        aria-pressed={state === 'listening'}
        onMouseDown={(event) => event.preventDefault()}
        onClick={() => (state === 'listening' ? stop.current?.() : begin())}
      >
        {state === 'listening' ? 'Listening… tap to stop' : words}
      </button>
      {trouble && (
        <span className="field-hint" role="status">
          {trouble}
        </span>
      )}
    </div>
  );
});
