/** What looks alike means alike, whatever stands there: good, wrong, one's turn, not known, to come, and what the work adds. */
export type Stand =
  | 'good'
  | 'wrong'
  | 'turn'
  | 'unknown'
  | 'ahead'
  | 'look'
  | 'again'
  | 'shop'
  | 'parts'
  | 'waits'
  | 'left-out';

interface StandMarkProps {
  readonly look: Stand;
  readonly word: string;
  /** Name of the state, for whoever asks the page. */
  readonly name: string;
}
/** How a thing stands: shape first, then the word, then the colour. */
export function StandMark({ look, word, name }: StandMarkProps) {
  return (
    <span className={`stand-mark stand-${look}`} data-state={name}>
      <svg viewBox="0 0 48 48" aria-hidden="true" focusable="false" data-shape={look}>
        {shapes[look]}
      </svg>
      <span>{word}</span>
    </span>
  );
}

const line = {
  fill: 'none',
  stroke: 'currentColor',
  strokeWidth: 4,
  strokeLinecap: 'round',
  strokeLinejoin: 'round',
} as const;
const shapes: Readonly<Record<Stand, React.ReactNode>> = {
  good: (
    <>
      <circle cx="24" cy="24" r="22" fill="currentColor" />
      <path className="stand-cut" d="M13 25l8 8 15-17" fill="none" strokeWidth="5" strokeLinecap="round" />
    </>
  ),
  wrong: (
    <>
      <rect x="3" y="3" width="42" height="42" fill="currentColor" />
      <path className="stand-cut" d="M15 15l18 18M33 15L15 33" strokeWidth="6" strokeLinecap="round" />
    </>
  ),
  turn: <path d="M10 5l32 19-32 19z" fill="currentColor" />,
  unknown: (
    <>
      <circle cx="24" cy="24" r="20" {...line} strokeDasharray="7 7" />
      <path d="M18 19a6 6 0 1 1 8.5 5.5C24.5 25.6 24 27 24 29" {...line} />
      <circle cx="24" cy="35" r="2.6" fill="currentColor" />
    </>
  ),
  ahead: (
    <>
      <circle cx="24" cy="24" r="20" {...line} />
      <path d="M24 12v13l8 6" {...line} />
    </>
  ),
  look: (
    <>
      <path d="M3 24c8-14 34-14 42 0-8 14-34 14-42 0z" {...line} />
      <circle cx="24" cy="24" r="7" fill="currentColor" />
    </>
  ),
  again: <path d="M40 24a16 16 0 1 1-6-12.500M36 3v10H26" {...line} />,
  shop: <path d="M5 43V20l12 8v-8l12 8V5h10v38zM5 43h38" {...line} />,
  parts: <path d="M5 14l19-9 19 9v20l-19 9-19-9zM5 14l19 9 19-9M24 23v20" {...line} />,
  waits: <path d="M10 4h28M10 44h28M13 4c0 12 22 18 22 40M35 4c0 12-22 18-22 40" {...line} />,
  'left-out': (
    <>
      <circle cx="24" cy="24" r="20" {...line} strokeDasharray="7 7" />
      <path d="M12 36L36 12" {...line} />
    </>
  ),
};
