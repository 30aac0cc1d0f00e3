/** Compression and leakage tests of a whole engine. */
import { atMost } from './decision.js';

/** Pairs of places that stand side by side in one bank, from 0. `banks` are the numbers of cylinders of each bank. */
export function neighbours(banks: readonly number[]): readonly (readonly [number, number])[] {
  let first = 0;
  return banks.flatMap((size) => {
    const start = first;
    first += size;
    return Array.from({ length: size - 1 }, (_, at) => [start + at, start + at + 1] as const);
  });
}

export interface CompressionRule {
  /** Least share of the highest. */
  readonly share?: number | undefined;
  /** Least pressure of any cylinder. */
  readonly floor?: number | undefined;
  /** Largest difference from the highest. */
  readonly difference?: number | undefined;
}

/** Least pressure that a test allows by all the rules that are given; undefined without any. */
export function leastAllowed(highest: number, { share, floor, difference }: CompressionRule): number | undefined {
  const asked = [
    ...(share === undefined ? [] : [share * highest]),
    ...(floor === undefined ? [] : [floor]),
    ...(difference === undefined ? [] : [highest - difference]),
  ];
  return asked.length === 0 ? undefined : Math.max(...asked);
}

/** Places, from 0, whose pressure is below what is allowed. */
export const lowPlaces = (pressures: readonly number[], allowed: number): readonly number[] =>
  pressures.flatMap((one, at) => (atMost(allowed, one) ? [] : [at]));

export type WetFinding = 'rings or bore' | 'valve or gasket' | 'gasket between neighbours';

/**
 * What a low cylinder points to after a little oil: a clear rise is rings or bore; none is a valve, or between two low neighbours the
 * gasket. Source: service manuals (read); the size of a clear rise is practice.
 */
export function wetFinding(dry: number, wet: number, clearRise: number, lowNeighbour: boolean): WetFinding {
  if (wet >= dry * (1 + clearRise)) return 'rings or bore';
  return lowNeighbour ? 'gasket between neighbours' : 'valve or gasket';
}

/** Share of the supply that leaks away: (supply − held)/supply, gauge pressures, supply above 0. Source: service manual (read). */
export const leakage = (supply: number, held: number): number => (supply - held) / supply;

export const HEARD_AT = ['nowhere', 'oil-filler', 'intake', 'exhaust', 'coolant', 'neighbour'] as const;
export type HeardAt = (typeof HEARD_AT)[number];

/** Where the air is heard and what that means. Common practice, no source. */
export const LEAK_PATHS: Readonly<Record<HeardAt, string>> = {
  nowhere: 'no path heard',
  'oil-filler': 'rings, piston or bore',
  intake: 'intake valve',
  exhaust: 'exhaust valve',
  coolant: 'head gasket or crack to the coolant',
  neighbour: 'head gasket between the cylinders',
};
