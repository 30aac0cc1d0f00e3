import type { WorkActView } from '@gudgeon/core/workbench';

/** How an act stands, as a person reads it: shape first, then the word, then the colour. */
export type Mark = 'done' | 'look' | 'bad' | 'again' | 'ready' | 'shop' | 'parts' | 'waits' | 'left-out';

const words: Readonly<Record<Mark, string>> = {
  done: 'DONE',
  look: 'LOOK OWED',
  bad: 'NOT GOOD',
  again: 'OPEN AGAIN',
  ready: 'CAN BEGIN',
  shop: 'AT THE SHOP',
  parts: 'PARTS TO COME',
  waits: 'WAITS',
  'left-out': 'LEFT OUT',
};

export function markOf({ state, given, again, look, awaits }: WorkActView): Mark {
  if (state === 'skipped') return 'left-out';
  if (state === 'done') return look === 'owed' ? 'look' : 'done';
  if (given?.result === 'bad') return 'bad';
  if (again !== undefined) return 'again';
  if (state === 'away') return awaits === 'parts' ? 'parts' : 'shop';
  return state === 'ready' ? 'ready' : 'waits';
}

export function ActMark({ mark }: { readonly mark: Mark }) {
  return (
    <span className={`work-mark work-mark-${mark}`} data-mark={mark}>
      <svg viewBox="0 0 48 48" aria-hidden="true" focusable="false" data-shape={mark}>
        {shapes[mark]}
      </svg>
      <span>{words[mark]}</span>
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
const shapes: Readonly<Record<Mark, React.ReactNode>> = {
  done: (
    <>
      <circle cx="24" cy="24" r="22" fill="currentColor" />
      <path className="work-cut" d="M13 25l8 8 15-17" fill="none" strokeWidth="5" strokeLinecap="round" />
    </>
  ),
  look: (
    <>
      <path d="M3 24c8-14 34-14 42 0-8 14-34 14-42 0z" {...line} />
      <circle cx="24" cy="24" r="7" fill="currentColor" />
    </>
  ),
  bad: (
    <>
      <rect x="3" y="3" width="42" height="42" fill="currentColor" />
      <path className="work-cut" d="M15 15l18 18M33 15L15 33" strokeWidth="6" strokeLinecap="round" />
    </>
  ),
  again: <path d="M40 24a16 16 0 1 1-6-12.500M36 3v10H26" {...line} />,
  ready: <path d="M10 5l32 19-32 19z" fill="currentColor" />,
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
