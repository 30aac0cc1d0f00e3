/** What must hold in a search, as rows that can be left out this time. */
import { type Wanted, wantedFrom } from '../../assess/combination/finder/index.js';
import type { QuantityKind } from '../../quantity/index.js';
import type { ShownIn } from '../measure-views.js';
import { shownEnds } from './shown.js';
import type { Tried } from './tried.js';

export interface WantedRow {
  /** The finder's word: `ratio`. */
  readonly name: keyof Wanted;
  readonly title: string;
  readonly words: string;
}
const TITLES: Readonly<Record<keyof Wanted, readonly [title: string, quantity: QuantityKind]>> = {
  ratio: ['compression ratio', 'ratio'],
  quench: ['quench', 'length'],
  preload: ['lifter preload', 'length'],
  valveRoom: ['valve to piston', 'length'],
  bindRoom: ['room to coil bind', 'length'],
  retainerRoom: ['room under the retainer', 'length'],
  deckHeight: ['deck height', 'length'],
  headThickness: ['head thickness', 'length'],
  intakeShift: ['intake face off its fit', 'length'],
};
/** Figures of the limits, for the screen to offer. */
export const LIMIT_KEYS: readonly string[] = [
  'ratio-least',
  'ratio-most',
  'quench-least',
  'quench-most',
  'valve-room-least@intake',
  'valve-room-least@exhaust',
  'bind-margin-least@intake',
  'bind-margin-least@exhaust',
  'retainer-room-least@intake',
  'retainer-room-least@exhaust',
  'deck-height-least',
  'head-thickness-least',
  'lifter-preload-least@intake',
  'lifter-preload-most@intake',
];

export function wantedRows(tried: Tried, shownIn: ShownIn): readonly WantedRow[] {
  return (Object.entries(wantedFrom(tried)) as readonly [keyof Wanted, Wanted[keyof Wanted]][]).map(([name, want]) => {
    const [title, quantity] = TITLES[name];
    return { name, title, words: wantWords(quantity, want, shownIn) };
  });
}

function wantWords(quantity: QuantityKind, want: Wanted[keyof Wanted], shownIn: ShownIn): string {
  if (typeof want === 'number') return shownEnds(quantity, { low: want }, shownIn);
  const { low, high, intake, exhaust } = (want ?? {}) as Readonly<Record<string, number | undefined>>;
  if (intake === undefined && exhaust === undefined)
    return shownEnds(quantity, { ...(low !== undefined && { low }), ...(high !== undefined && { high }) }, shownIn);
  return [
    ...(intake === undefined ? [] : [`intake ${shownEnds(quantity, { low: intake }, shownIn)}`]),
    ...(exhaust === undefined ? [] : [`exhaust ${shownEnds(quantity, { low: exhaust }, shownIn)}`]),
  ].join(', ');
}
