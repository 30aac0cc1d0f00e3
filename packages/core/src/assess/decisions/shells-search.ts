/** Shells to bearings: the exact best pairing of halves for one way of choosing, and the one half that would help most. */
import { type ShellsPlan, shellsToJournals } from '../../calc/selection/index.js';
import type { ShellStock } from '../../engine/index.js';
import { fromHalfWidth, type Length, quadrature } from '../../quantity/index.js';
import type { VerdictWord } from '../model.js';
import type { Group } from './bearings-of.js';
import { judged, type Known, middle, moved } from './judged.js';
import type { ShellPlace } from './shell-positions.js';
import { wallOf } from './shell-walls.js';
import { canBeBought } from './stock-taken.js';

export interface ShellTask {
  readonly places: readonly ShellPlace[];
  readonly shells: readonly ShellStock[];
  readonly widestMix: number;
  readonly thicker: Group['thicker'];
  /** Whether halves may be bought of the shells that have no count; else only what lies on the bench is used. */
  readonly mayBuy: boolean;
}
export interface ChosenPair {
  readonly place: ShellPlace;
  readonly upper: ShellStock;
  readonly lower: ShellStock;
  readonly clearance: Known;
  readonly verdict: VerdictWord;
}
export interface ShellChoice {
  readonly plan: ShellsPlan;
  readonly pairs: readonly ChosenPair[];
  /** Bearings for which nothing fits or is left. */
  readonly without: readonly ShellPlace[];
  readonly buys: readonly { readonly shell: ShellStock; readonly count: number }[];
}

/** Partial plans looked at before the search ends with its bound; a dozen bearings with a dozen grades need far fewer. */
const MOST_STEPS = 20_000;

/**
 * Halves for every bearing: fewest left without, then fewest bought, then least total distance from the middle of each window.
 *
 * Each bearing keeps its own window: housings are moved so that every middle lies at zero, which leaves all distances as they are.
 * Walls are taken at the middle of their printed range. Source: `shellsToJournals`.
 */
export function chooseShells(task: ShellTask): ShellChoice {
  const plan = planOf(
    task,
    task.shells.map((shell) => stockOf(shell)),
  );
  const chosen = task.places.map((place, at) => {
    const pair = plan.pairs[at];
    const [upper, lower] = [pair && task.shells[pair.upper], pair && task.shells[pair.lower]];
    return { place, pair: upper && lower && fitted(place, upper, lower) };
  });
  return {
    plan,
    pairs: chosen.flatMap(({ pair }) => pair ?? []),
    without: chosen.filter(({ pair }) => pair === undefined).map(({ place }) => place),
    buys: task.shells.flatMap((shell, at) => (plan.buy[at] ? [{ shell, count: plan.buy[at] }] : [])),
  };
}

/** Halves on hand; a shell that is bought has none there. */
const stockOf = ({ count }: ShellStock): number => count ?? 0;

function planOf(task: ShellTask, stock: readonly number[]): ShellsPlan {
  const [first] = task.places;
  const target = (place: ShellPlace) => middle(place.asked);
  const window = (place: ShellPlace) => moved(place.asked, -target(place)) as ShellsWindow;
  return shellsToJournals(
    {
      positions: task.places.map((place) => ({
        housing: (place.housing.value - target(place)) as Length,
        journal: place.journal.value as Length,
        window: window(place),
      })),
      classes: task.shells.map((shell, at) => ({
        wall: middle(wallOf(shell)) as Length,
        stock: stock[at] ?? 0,
        forSale: canBeBought(shell),
      })),
      target: 0 as Length,
      window: first ? window(first) : NO_WINDOW,
      widestMix: task.widestMix as Length,
      thicker: task.thicker,
      mayBuy: task.mayBuy,
    },
    MOST_STEPS,
  );
}
type ShellsWindow = { readonly low: Length; readonly high: Length };
const NO_WINDOW = { low: 0 as Length, high: 0 as Length };

/** Clearance of two halves at the middle of their printed walls; the range of each is part of the doubt. */
export function fitted(place: ShellPlace, upper: ShellStock, lower: ShellStock): ChosenPair {
  const clearance = clearanceOf(place, wall(upper), wall(lower));
  return { place, upper, lower, clearance, verdict: judged(clearance, place.asked) };
}

function wall(shell: ShellStock): Known {
  const range = wallOf(shell);
  return { value: middle(range), u: fromHalfWidth((range.high - range.low) / 2) };
}

/** Room less two walls; the doubts of housing and journal are in the room already, less what they share. */
const clearanceOf = ({ room }: ShellPlace, upper: Known, lower: Known): Known => ({
  value: room.value - upper.value - lower.value,
  u: upper.u === undefined || lower.u === undefined ? undefined : quadrature(room.u, upper.u, lower.u),
});

export interface HelpfulHalf {
  readonly shell: ShellStock;
  readonly fewerWithout: number;
  readonly fewerBought: number;
  readonly nearer: number;
}

/** The one half that would help most if it lay on the bench; undefined where none would. Solves the task again for each grade. */
export function helpfulHalf(task: ShellTask): HelpfulHalf | undefined {
  const stock = task.shells.map((shell) => stockOf(shell));
  const before = planOf(task, stock);
  const bought = ({ buy }: ShellsPlan) => buy.reduce((sum, one) => sum + one, 0);
  const gains = task.shells.map((shell, at): HelpfulHalf => {
    const after = planOf(
      task,
      stock.map((count, other) => (other === at ? count + 1 : count)),
    );
    return {
      shell,
      fewerWithout: before.unserved - after.unserved,
      fewerBought: after.unserved < before.unserved ? 0 : bought(before) - bought(after),
      nearer: after.unserved < before.unserved ? 0 : Math.round((before.total - after.total) * 1e9) / 1e9,
    };
  });
  return gains
    .filter((one) => one.fewerWithout > 0 || one.fewerBought > 0 || one.nearer > 0)
    .toSorted((a, b) => b.fewerWithout - a.fewerWithout || b.fewerBought - a.fewerBought || b.nearer - a.nearer)[0];
}
