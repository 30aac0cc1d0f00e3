export type SignalWord = 'DANGER' | 'WARNING' | 'CAUTION' | 'NOTICE';

export interface Hazard {
  readonly word: SignalWord;
  /** What can happen. */
  readonly can: string;
  readonly because: string;
  readonly act: string;
}

/** A hazard before the step that needs it. NOTICE is about parts and data, hurts no one and has no triangle. */
export function SignalPanel({ word, can, because, act }: Hazard) {
  return (
    <div role="note" aria-label={word} className={`signal signal-${word.toLowerCase()}`}>
      <div className="signal-word">
        {word !== 'NOTICE' && <Triangle />}
        <span>{word}</span>
      </div>
      <p className="signal-body">
        <strong>{can}</strong> {because} {act}
      </p>
    </div>
  );
}

function Triangle() {
  return (
    <svg viewBox="0 0 40 36" aria-hidden="true" focusable="false">
      <path d="M20 2L38 34H2z" fill="#ffd100" stroke="#000" strokeWidth="3" strokeLinejoin="round" />
      <path d="M20 12v12" stroke="#000" strokeWidth="4" strokeLinecap="round" />
      <circle cx="20" cy="29" r="2.4" fill="#000" />
    </svg>
  );
}
