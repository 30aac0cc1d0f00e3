import { type Stand, StandMark } from '../../bench/index.js';

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
/** What looks alike means alike: good, wrong, one's turn, not known, to come. */
const LOOKS: Readonly<Record<StateName, Stand>> = {
  ready: 'good',
  done: 'good',
  'not-ready': 'wrong',
  overdue: 'wrong',
  due: 'turn',
  now: 'turn',
  open: 'unknown',
  'no data': 'unknown',
  coming: 'ahead',
  later: 'ahead',
};

/** How a thing of the running engine stands. */
export const StateMark = ({ state }: { readonly state: StateName }) => (
  <StandMark look={LOOKS[state]} word={WORDS[state]} name={state} />
);
