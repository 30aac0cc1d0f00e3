/** Inputs, outputs and words that the entries of parts and places share. */
import { formatQuantity, type Length, mm, type Outcome } from '../../../quantity/index.js';
import { type Conflict, conflict } from '../../catalogue/index.js';
import { GOALS, type NoPartsPlan, type PartsPlan } from '../parts-to-places.js';
import { fromOne } from './lists.js';

const LARGEST = mm(3000);

export const size = (symbol: string, meaning: string) =>
  ({ kind: 'length', symbol, meaning, unit: 'mm', range: { above: 0, to: LARGEST } }) as const;
export const signedLength = (symbol: string, meaning: string) =>
  ({ kind: 'length', symbol, meaning, unit: 'mm', range: { from: -LARGEST, to: LARGEST } }) as const;
export const count = (symbol: string, meaning: string, from: number, to: number) =>
  ({ kind: 'count', symbol, meaning, range: { from, to } }) as const;

export const lengthOut = (symbol: string, meaning: string, places = 4) =>
  ({ kind: 'length', symbol, meaning, unit: 'mm', places }) as const;
export const line = (symbol: string, meaning: string) => ({ kind: 'text', symbol, meaning }) as const;

export const places = { ...size('A', 'size of each place, such as the bores, in order'), list: true } as const;
export const parts = { ...size('b', 'size of each part on hand, such as the pistons'), list: true } as const;
export const target = signedLength('c', 'fit wanted: place less part; above 0 a clearance, below 0 an interference');
export const goal = {
  kind: 'choice',
  symbol: 'goal',
  meaning:
    'what shall be smallest: the sum of the deviations from the target, the worst single deviation, or the largest less the smallest fit',
  choices: GOALS,
  default: 'least-total',
} as const;

export const partsOutputs = {
  assignments: { ...line('plan', 'part of each place and the fit that it leaves'), list: true },
  partOf: { kind: 'count', symbol: 'j', meaning: 'part of each place, by its number in the list', list: true },
  fits: { ...lengthOut('f', 'fit of each place: place less part'), list: true },
  total: lengthOut('Σ|f−c|', 'sum of the deviations from the target'),
  worst: lengthOut('max|f−c|', 'largest deviation from the target'),
  spread: lengthOut('Δf', 'largest less smallest fit'),
  proof: line('proof', 'why no other way to place the parts is better'),
} as const;

const MOST = 100;

export const shown = (length: Length): string => formatQuantity('length', length, 'mm', 4);
export const numbers = (places: readonly number[]): string => fromOne(places).join(', ');

/** Outputs of a plan, and its proof in words. */
export function partsAnswer(plan: PartsPlan, proof: string) {
  return {
    assignments: plan.partOf.map((part, at) => `place ${at + 1}: part ${part + 1} leaves ${shown(plan.fits[at]!)}`),
    partOf: fromOne(plan.partOf),
    fits: plan.fits,
    total: plan.total,
    worst: plan.worst,
    spread: plan.spread,
    proof,
  };
}

/** Why nothing is better: prices, a set of places that would be short, or all windows refused. */
export function proofOf(plan: PartsPlan, goalName: (typeof GOALS)[number]): string {
  if (plan.short) {
    const { places: short, parts: few } = plan.short;
    const only = few.length === 0 ? 'no part' : `only part ${numbers(few)}`;
    return `for a smaller worst deviation place ${numbers(short)} could take ${only}`;
  }
  return goalName === 'least-total'
    ? 'exact assignment: by order of size with as many parts as places, else by prices that add up to this total'
    : 'for every smallest fit the smallest largest fit was found; none of these pairs is nearer together';
}

export function noParts(
  inputs: readonly string[],
  { places: short, parts: few }: NoPartsPlan,
): Outcome<never, Conflict> {
  const only = few.length === 0 ? 'no part' : `only part ${numbers(few)}`;
  return conflict(inputs, `place ${numbers(short)} can take ${only} inside the window: too few`);
}

/** Refuses lists that would take too long. */
export const tooMany = (lists: Readonly<Record<string, readonly unknown[]>>): Outcome<never, Conflict> | undefined => {
  const long = Object.keys(lists).filter((name) => lists[name]!.length > MOST);
  return long.length > 0 ? conflict(long, `at most ${MOST} values are valid in each`) : undefined;
};

/** A window from its two ends; an end left out is open. */
export const windowOf = (low: Length | undefined, high: Length | undefined) => ({
  ...(low !== undefined && { low }),
  ...(high !== undefined && { high }),
});
