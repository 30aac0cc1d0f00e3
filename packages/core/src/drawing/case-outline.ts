import type { Point } from './figure.js';
import { arcPoints, at, heading, plus, times, within } from './geometry.js';

/**
 * Outline of a round case with one straight-sided cylinder barrel for each bank, seen along the crank. Barrels that run into each
 * other meet in a corner; where they never part below the deck, each bank gets an outline of its own.
 *
 * @param banks degrees clockwise from straight up. @param half half width of a barrel. @param radius of the round case.
 * @param reach crank centre to the end of the barrel. All in mm, crank centre at the origin.
 */
export function caseOutline(
  banks: readonly number[],
  half: number,
  radius: number,
  reach: number,
): readonly (readonly Point[])[] {
  const sorted = [...banks].sort((a, b) => a - b);
  const corners = sorted.map((bank, i) =>
    cornerAfter(bank, sorted[(i + 1) % sorted.length] ?? bank, half, sorted.length),
  );
  if (corners.some((corner) => corner !== undefined && corner.away >= reach)) {
    return sorted.map((bank) => around([bank], [undefined], half, radius, reach));
  }
  return [around(sorted, corners, half, radius, reach)];
}
interface Corner {
  readonly away: number;
  readonly turn: number;
}
/** Where the sides of two neighbouring barrels cross; undefined for a single bank. */
function cornerAfter(bank: number, next: number, half: number, count: number): Corner | undefined {
  if (count < 2) return undefined;
  const gap = within(next - bank);
  if (gap >= 179.9) return undefined;
  return { away: half / Math.sin((gap * Math.PI) / 360), turn: bank + gap / 2 };
}
function around(
  banks: readonly number[],
  corners: readonly (Corner | undefined)[],
  half: number,
  radius: number,
  reach: number,
): readonly Point[] {
  const spread = (Math.asin(Math.min(1, half / radius)) * 180) / Math.PI;
  return banks.flatMap((bank, i) => {
    const corner = corners[i];
    const next = (banks[i + 1] ?? (banks[0] ?? 0) + 360) - spread;
    const barrel = [side(bank, reach, -half), side(bank, reach, half)];
    if (corner !== undefined && corner.away > radius) return [...barrel, times(heading(corner.turn), corner.away)];
    return [...barrel, ...arcPoints(at(0, 0), radius, bank + spread, next, 24)];
  });
}
const side = (bank: number, up: number, across: number): Point =>
  plus(times(heading(bank), up), times(heading(bank + 90), across));
