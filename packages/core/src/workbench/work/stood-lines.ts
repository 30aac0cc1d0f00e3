/** What standing does to an open engine. Common practice, no source. */
import type { WorkStanding } from '../../plan/index.js';

export const STANDS_LONG_DAYS = 30;
const DAY = 24 * 60 * 60 * 1000;

interface StoodLine {
  readonly words: string;
  /** Only once one of these was done; always when left out. */
  readonly after?: readonly string[];
  /** Not any more once one of these was done. */
  readonly until?: readonly string[];
}
const LINES: readonly StoodLine[] = [
  { words: 'The bag: whole, dry inside, nothing crept in. Open it in a clean place.', until: ['started'] },
  {
    words: 'Bare iron: wipe bores, decks and journals with a white cloth. Brown on it is rust: look at the size again.',
    after: ['rust-kept-off', 'mains-honed', 'bore-honed', 'block-washed', 'crank-washed'],
    until: ['started'],
  },
  {
    words: 'The oil film: wet every bare face anew before you go on.',
    after: ['rust-kept-off', 'block-washed'],
    until: ['started'],
  },
  {
    words:
      'Shells and journals: the lube has run down. Before the first start the oil is primed through, however little is left to do.',
    after: ['crank-laid-in'],
    until: ['primed'],
  },
  {
    words: 'Cam lobes and followers: what was put on has drained to the lower side. Reach them and put it on anew.',
    after: ['cam-lubed', 'follower-in'],
    until: ['started'],
  },
  {
    words: 'Gaskets, sealer and locker still in their packs: read the date and see that nothing has gone hard.',
    until: ['intake-tightened'],
  },
  {
    words: 'Rubber seals under a shaft or a rod: look for a lip that has taken a set on one side.',
    after: ['rear-seal-in', 'seal-half-in', 'stem-seal-on', 'cover-tightened'],
  },
  {
    words: 'Sealer that was laid and not closed has skinned: take it off and lay it anew.',
    after: ['pan-sealed', 'intake-sealed', 'rear-corners-sealed'],
    until: ['pan-tightened'],
  },
  {
    words: 'Do not turn it over to free it: first oil at rings and lobes, then slowly, by hand.',
    after: ['piston-in', 'cam-in', 'cam-laid-in'],
  },
  {
    words: 'It was primed, and has drained since: prime it anew before the starter turns it.',
    after: ['primed'],
    until: ['started'],
  },
  {
    words: 'Fuel that stood: smell it, drain what is stale. Oil and coolant: read the levels.',
    after: ['oil-filled', 'coolant-filled'],
  },
];

/** What to look at when nobody wrote anything for more than a month: only what this engine has come to. Empty before. */
export function stoodLines({ stands }: WorkStanding, last: string | undefined, now: string): readonly string[] {
  if (last === undefined || !(Date.parse(now) - Date.parse(last) > STANDS_LONG_DAYS * DAY)) return [];
  const all = [...stands.values()];
  const done = new Set(all.flatMap(({ state, act }) => (state === 'done' ? [act.rule] : [])));
  /** What was left out of the record may have been done all the same. */
  const perhaps = new Set([...done, ...all.flatMap(({ state, act }) => (state === 'skipped' ? [act.rule] : []))]);
  return LINES.filter(
    ({ after, until = [] }) =>
      (after === undefined || after.some((rule) => perhaps.has(rule))) && !until.some((rule) => done.has(rule)),
  ).map(({ words }) => words);
}
/** Rules that the lines name: each is a rule of the plan. */
export const STOOD_RULES: readonly string[] = LINES.flatMap(({ after = [], until = [] }) => [...after, ...until]);
