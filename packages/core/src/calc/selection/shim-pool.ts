import { done, type Length, type Outcome, refused } from '../../quantity/index.js';
import { cheapestAssignment } from './cheapest-assignment.js';
import { fromNm, toNm } from './nanometres.js';
import { allSizes, clearanceFault, inside, policyAllows, thicknessFault, windowFault } from './shim-sizes.js';
import type {
  ShimAssignment,
  ShimFault,
  ShimOrigin,
  ShimPlace,
  ShimPool,
  ShimPoolInput,
  ShimRounding,
} from './types.js';

/** Keeps every sum of the search below 2^53. */
const MOST_PLACES = 100;

/** One shim that a valve could get; `row` is set for a shim that only this valve may take. */
interface Offer {
  readonly thickness: number;
  readonly origin: ShimOrigin;
  readonly row?: number;
}
const idealOf = (place: ShimPlace) => toNm(place.old) + toNm(place.measured) - toNm(place.wanted);
const clearanceWith = (place: ShimPlace, thickness: number) => toNm(place.measured) + toNm(place.old) - thickness;

function placeFaults(place: ShimPlace): (ShimFault | undefined)[] {
  return [
    clearanceFault(`measured clearance of ${place.id}`, place.measured),
    clearanceFault(`wanted clearance of ${place.id}`, place.wanted),
    thicknessFault(`shim now in ${place.id}`, place.old),
    windowFault(`clearance window of ${place.id}`, place.window),
  ];
}

function inputFaults(input: ShimPoolInput): readonly ShimFault[] {
  const { places, spares } = input;
  const found: (ShimFault | undefined)[] = places.flatMap(placeFaults);
  found.push(...spares.map((spare, i) => thicknessFault(`spare ${i + 1}`, spare)));
  const ids = places.map(({ id }) => id);
  const repeated = [...new Set(ids.filter((id, i) => ids.indexOf(id) !== i))];
  found.push(...repeated.map((place) => ({ code: 'place-repeated', place }) as const));
  if (places.length > MOST_PLACES) found.push({ code: 'too-many-places', given: places.length, most: MOST_PLACES });
  return found.filter((fault) => fault !== undefined);
}

/** The shim a valve would get if one were bought for it: inside its window, nearest to ideal, the thinner of equals. */
function bestBought(place: ShimPlace, sizes: readonly number[], rounding: ShimRounding): number | undefined {
  const ideal = idealOf(place);
  return sizes
    .filter((size) => policyAllows(rounding, size, ideal) && inside(place.window, clearanceWith(place, size)))
    .reduce<number | undefined>(
      (best, size) => (best === undefined || Math.abs(size - ideal) < Math.abs(best - ideal) ? size : best),
      undefined,
    );
}

/** Columns of the table: shims that come out, spares, and for each valve one bought shim where one fits. */
function offersFor(input: ShimPoolInput, sizes: readonly number[]): readonly Offer[] {
  const removed = input.places.map(({ id, old }) => ({
    thickness: toNm(old),
    origin: { kind: 'place', place: id } as const,
  }));
  const spares = input.spares.map((spare, index) => ({
    thickness: toNm(spare),
    origin: { kind: 'spare', index } as const,
  }));
  const bought = input.places.flatMap((place, row) => {
    const thickness = bestBought(place, sizes, input.rounding ?? 'nearest');
    return thickness === undefined ? [] : [{ thickness, origin: { kind: 'bought' } as const, row }];
  });
  return [...removed, ...spares, ...bought];
}

/** The origin as this valve sees it: a shim that stays where it was is its own. */
function originFor(place: ShimPlace, origin: ShimOrigin): ShimOrigin {
  return origin.kind === 'place' && origin.place === place.id ? { kind: 'own' } : origin;
}

/**
 * Whole-number costs that put the wishes in order: no valve left without, then fewest bought, then least deviation in
 * nanometres, then fewest valves that get another shim than their own. Each wish outweighs all that follow it together.
 * One column "left without" for each valve closes the table.
 */
function costTable(places: readonly ShimPlace[], offers: readonly Offer[]): number[][] {
  const n = places.length;
  const fits = (place: ShimPlace, row: number, offer: Offer) =>
    (offer.row === undefined || offer.row === row) && inside(place.window, clearanceWith(place, offer.thickness));
  const fine = (place: ShimPlace, offer: Offer) => {
    const moved = originFor(place, offer.origin).kind === 'own' ? 0 : 1;
    return Math.abs(offer.thickness - idealOf(place)) * (n + 1) + moved;
  };
  const greatest = Math.max(
    0,
    ...places.flatMap((place, row) =>
      offers.filter((offer) => fits(place, row, offer)).map((offer) => fine(place, offer)),
    ),
  );
  const bought = n * greatest + 1;
  const without = n * (bought + greatest) + 1;
  return places.map((place, row) => [
    ...offers.map((offer) =>
      fits(place, row, offer) ? fine(place, offer) + (offer.origin.kind === 'bought' ? bought : 0) : 2 * without,
    ),
    ...places.map(() => without),
  ]);
}

function shoppingList(assignments: readonly ShimAssignment[]): ShimPool['buy'] {
  const counts = new Map<Length, number>();
  for (const { origin, thickness } of assignments) {
    if (origin.kind === 'bought') counts.set(thickness, (counts.get(thickness) ?? 0) + 1);
  }
  return [...counts].map(([thickness, count]) => ({ thickness, count })).sort((a, b) => a.thickness - b.thickness);
}

/** Reads the answer of the search back into valves and shims. */
function poolFrom(
  places: readonly ShimPlace[],
  offers: readonly Offer[],
  costs: readonly (readonly number[])[],
): ShimPool {
  const { columnOf, rowPrices, columnPrices } = cheapestAssignment(costs);
  const taken = places.map((place, row) => ({ place, offer: offers[columnOf[row]!] }));
  const assignments = taken.flatMap(({ place, offer }) => {
    if (!offer) return [];
    const { thickness } = offer;
    return {
      id: place.id,
      origin: originFor(place, offer.origin),
      thickness: fromNm(thickness),
      clearance: fromNm(clearanceWith(place, thickness)),
      deviation: fromNm(idealOf(place) - thickness),
    };
  });
  const deviations = taken.map(({ place, offer }) => (offer ? Math.abs(idealOf(place) - offer.thickness) : 0));
  return {
    assignments,
    buy: shoppingList(assignments),
    boughtCount: assignments.filter(({ origin }) => origin.kind === 'bought').length,
    totalDeviation: fromNm(deviations.reduce((sum, nm) => sum + nm, 0)),
    unserved: taken.filter(({ offer }) => !offer).map(({ place }) => ({ id: place.id, ideal: fromNm(idealOf(place)) })),
    proof: { costs, columnOf, rowPrices, columnPrices },
  };
}

/**
 * Gives every valve a shim: those that come out of the engine, those in the box, and as few bought ones as possible.
 *
 * Order of wishes: every valve inside its window (ends included) as far as that can be; the fewest bought; the smallest
 * sum of absolute deviations from the wanted clearances; the most valves that keep their own shim. The answer is exact and
 * carries its proof (`provesOptimal`). Deviations are counted in whole nanometres.
 *
 *   clearance of valve i with shim t = measured(i) + old(i) - t
 *
 * Lengths in metres; thickness above 0 to 20 mm, up to 100 valves. Assumes the shim carries the clearance one to one, and
 * that the thickness given is measured: a worn shim is not what its mark says.
 * Refuses with every fault found. A valve that nothing fits is listed in `unserved`; the rest is still planned.
 * Source: new = old + (measured - wanted) and the reuse of removed shims are printed rules, reference engine-cases-shims.json;
 * the search is an assignment problem (`cheapest-assignment.ts`).
 */
export function planShims(input: ShimPoolInput): Outcome<ShimPool, readonly ShimFault[]> {
  const sizes = checkedSizes(input);
  return sizes.ok ? done(planWith(input, sizes.value)) : sizes;
}

/** The sizes that can be bought, once everything else was found right. */
export function checkedSizes(input: ShimPoolInput): Outcome<readonly number[], readonly ShimFault[]> {
  const faults = inputFaults(input);
  const sizes = input.buyable ? allSizes(input.buyable) : done([]);
  if (!sizes.ok) return refused([...faults, sizes.fault]);
  return faults.length > 0 ? refused(faults) : sizes;
}

/** The plan for an input that was checked. */
export function planWith(input: ShimPoolInput, sizes: readonly number[]): ShimPool {
  const offers = offersFor(input, sizes);
  return poolFrom(input.places, offers, costTable(input.places, offers));
}
