export type StateName =
  | 'ready'
  | 'open'
  | 'not-ready'
  | 'overdue'
  | 'due'
  | 'coming'
  | 'done'
  | 'no data'
  | 'now'
  | 'later';

const WORDS: Readonly<Record<StateName, string>> = {
  ready: 'READY',
  open: 'OPEN',
  'not-ready': 'NOT READY',
  overdue: 'OVERDUE',
  due: 'DUE',
  coming: 'COMING',
  done: 'DONE',
  'no data': 'NO DATA',
  now: 'NOW',
  later: 'LATER',
};
/** What looks alike means alike: good, wrong, soon, not known, to come. */
const LOOKS: Readonly<Record<StateName, keyof typeof shapes>> = {
  ready: 'good',
  done: 'good',
  'not-ready': 'wrong',
  overdue: 'wrong',
  due: 'soon',
  now: 'soon',
  open: 'unknown',
  'no data': 'unknown',
  coming: 'ahead',
  later: 'ahead',
};

/** How a thing stands: shape first, then the word, then the colour. */
export function StateMark({ state }: { readonly state: StateName }) {
  const look = LOOKS[state];
  return (
    <span className={`state-mark state-${look}`} data-state={state}>
      <svg viewBox="0 0 48 48" aria-hidden="true" focusable="false" data-shape={look}>
        {shapes[look]}
      </svg>
      <span>{WORDS[state]}</span>
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
const shapes = {
  good: (
    <>
      <circle cx="24" cy="24" r="22" fill="currentColor" />
      <path className="state-cut" d="M13 25l8 8 15-17" fill="none" strokeWidth="5" strokeLinecap="round" />
    </>
  ),
  wrong: (
    <>
      <rect x="3" y="3" width="42" height="42" fill="currentColor" />
      <path className="state-cut" d="M15 15l18 18M33 15L15 33" strokeWidth="6" strokeLinecap="round" />
    </>
  ),
  soon: <path d="M10 5l32 19-32 19z" fill="currentColor" />,
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
};
