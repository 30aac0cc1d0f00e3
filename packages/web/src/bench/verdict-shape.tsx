export type VerdictState = 'in' | 'near' | 'out' | 'no-data' | 'again';

/** The shape comes before the word and the colour: it must hold alone, in grey and on paper. */
export function VerdictShape({
  state,
  nearEnd = 'high',
}: {
  readonly state: VerdictState;
  readonly nearEnd?: 'low' | 'high';
}) {
  return (
    <svg viewBox="0 0 48 48" aria-hidden="true" focusable="false" data-shape={state}>
      {shapes[state](nearEnd)}
    </svg>
  );
}

const bold = {
  fill: 'none',
  stroke: 'currentColor',
  strokeWidth: 4,
  strokeLinecap: 'round',
  strokeLinejoin: 'round',
} as const;

const shapes: Record<VerdictState, (nearEnd: 'low' | 'high') => React.ReactNode> = {
  in: () => (
    <>
      <circle cx="24" cy="24" r="22" fill="currentColor" />
      <path
        className="verdict-cut"
        d="M13 25l8 8 15-17"
        fill="none"
        strokeWidth="5"
        strokeLinecap="round"
        strokeLinejoin="round"
      />
    </>
  ),
  near: (end) => (
    <>
      <path d="M24 3l21 21-21 21L3 24z" {...bold} />
      <path d={end === 'high' ? 'M24 34V15M16 22l8-8 8 8' : 'M24 14v19M16 26l8 8 8-8'} {...bold} />
    </>
  ),
  out: () => (
    <>
      <rect x="3" y="3" width="42" height="42" fill="currentColor" />
      <path className="verdict-cut" d="M15 15l18 18M33 15L15 33" strokeWidth="6" strokeLinecap="round" />
    </>
  ),
  'no-data': () => (
    <>
      <circle cx="24" cy="24" r="20" {...bold} strokeDasharray="7 7" />
      <path d="M18 19a6 6 0 1 1 8.5 5.5C24.5 25.6 24 27 24 29" {...bold} />
      <circle cx="24" cy="35" r="2.6" fill="currentColor" />
    </>
  ),
  again: () => <path d="M20 24H5m7-8l-8 8 8 8M28 24h15m-7-8l8 8-8 8" {...bold} />,
};
