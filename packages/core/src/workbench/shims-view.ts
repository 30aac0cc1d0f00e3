/** Shims: what was measured, and the choice for all valves together with the fewest bought. */
import {
  describeShimFault,
  planShims,
  type ShimOrigin,
  type ShimPlace,
  type ShimPool,
} from '../calc/selection/index.js';
import {
  type LashFigures,
  type ShimStock,
  type ValveId,
  valveKey,
  valveName,
  valveOfKey,
  valvesOf,
  type Window,
} from '../engine/index.js';
import { formatQuantity, type Length, parseQuantity } from '../quantity/index.js';
import type { Bench } from './bench.js';
import type { ShimsView } from './views.js';

interface Measured {
  readonly valve: ValveId;
  readonly lash: Length;
  readonly shim: Length;
}

/** The last measurement of each valve that is not struck out. */
function measurements(bench: Bench): ReadonlyMap<string, Measured> {
  const found = new Map<string, Measured>();
  for (const { reading, struck } of bench.state.entries) {
    if (struck !== undefined || !reading.understood || reading.known.kind !== 'shim-measured') continue;
    const { valve, lash, shim } = reading.known.data;
    found.set(valveKey(valve), { valve, lash: lash.value as Length, shim: shim.value as Length });
  }
  return found;
}

/** Wanted gap and accepted window; a single printed figure is accepted within half a shim step. */
function target(
  figures: LashFigures | undefined,
  stock: ShimStock,
): { readonly wanted: Length; readonly window: Window<Length> } | undefined {
  const window = figures?.cold?.window;
  const { low, high } = window ?? {};
  if (low === undefined || high === undefined) return undefined;
  const wanted = ((low + high) / 2) as Length;
  if (high > low) return { wanted, window: { low, high } };
  const half = stock.step.value / 2;
  return { wanted, window: { low: (wanted - half) as Length, high: (wanted + half) as Length } };
}

const mm = (length: number) => formatQuantity('length', length, 'mm', 3);

function originWords(bench: Bench, origin: ShimOrigin): string {
  switch (origin.kind) {
    case 'own':
      return 'its own shim stays';
    case 'place': {
      const valve = valveOfKey(origin.place);
      return `the shim out of ${valve.ok ? valveName(bench.engine, valve.value) : origin.place}`;
    }
    case 'spare':
      return 'a spare from the box';
    case 'bought':
      return 'to buy';
  }
}

/** A shim is named with the places of its row, as it is marked and bought. */
function stockText({ step }: ShimStock): (length: number) => string {
  const typed = parseQuantity('length', step.text);
  const places = typed.ok && typed.value.unit === 'mm' ? typed.value.places : 3;
  return (length) => formatQuantity('length', length, 'mm', places);
}

const proofWords = (bought: number): string =>
  bought === 0
    ? 'Every gap can be brought into its window with the shims that are there.'
    : `No choice with fewer than ${bought} bought ${bought === 1 ? 'shim' : 'shims'} keeps every gap in its window.`;

function poolView(
  bench: Bench,
  pool: ShimPool,
  shimText: (length: number) => string,
): Pick<ShimsView, 'choices' | 'buy' | 'unserved' | 'proof'> {
  const name = (id: string) => {
    const valve = valveOfKey(id);
    return valve.ok ? valveName(bench.engine, valve.value) : id;
  };
  return {
    choices: pool.assignments.map((one) => ({
      key: one.id,
      place: name(one.id),
      shim: shimText(one.thickness),
      gap: mm(one.clearance),
      from: originWords(bench, one.origin),
    })),
    buy: pool.buy.map((one) => `${one.count} × ${shimText(one.thickness)}`),
    unserved: pool.unserved.map((one) => `${name(one.id)}: would need ${mm(one.ideal)}, which is not to be had`),
    proof: proofWords(pool.boughtCount),
  };
}

interface Spare {
  readonly entry: string;
  readonly text: string;
  readonly thickness: Length;
}

/** Loose shims on hand, in the order in which they were noted. */
function sparesOf(bench: Bench): readonly Spare[] {
  return bench.state.entries.flatMap(({ entry, reading, struck }) => {
    if (struck !== undefined || !reading.understood || reading.known.kind !== 'spare-shim') return [];
    const { shim } = reading.known.data;
    return [{ entry: entry.id, text: shim.text, thickness: shim.value as Length }];
  });
}

/** The shim choice; undefined for an engine without shims. */
export function shimsView(bench: Bench): ShimsView | undefined {
  const gear = bench.engine.valveGear;
  const stock = gear?.shims;
  const place = gear?.adjuster.place;
  if (gear === undefined || stock === undefined || (place !== 'shim-over-bucket' && place !== 'shim-under-bucket'))
    return undefined;
  const known = measurements(bench);
  const spares = sparesOf(bench);
  const all = valvesOf(bench.engine);
  const sides = { intake: target(gear.lash?.intake, stock), exhaust: target(gear.lash?.exhaust, stock) };
  const places = all.flatMap((valve): ShimPlace[] => {
    const one = known.get(valveKey(valve));
    const side = sides[valve.kind];
    return one === undefined || side === undefined
      ? []
      : [{ id: valveKey(valve), measured: one.lash, old: one.shim, ...side }];
  });
  const base = {
    spares: spares.map(({ entry, text }) => ({ entry, text })),
    measured: all.map((valve) => {
      const one = known.get(valveKey(valve));
      return {
        valve,
        key: valveKey(valve),
        place: valveName(bench.engine, valve),
        ...(one && { gap: mm(one.lash), shim: mm(one.shim) }),
      };
    }),
    progress: { done: known.size, of: all.length, words: `${known.size} of ${all.length} measured` },
  };
  const nothing = { choices: [], buy: [], unserved: [], proof: '' };
  if (sides.intake === undefined || sides.exhaust === undefined)
    return {
      ...base,
      ...nothing,
      hindrances: ['The sheet gives no cold gap for both valve kinds: the wanted gap is unknown.'],
    };
  if (known.size < all.length)
    return {
      ...base,
      ...nothing,
      hindrances: ['Measure every gap and shim first: one choice over all valves buys the fewest.'],
    };
  const pool = planShims({
    places,
    spares: spares.map((spare) => spare.thickness),
    buyable: { thinnest: stock.thinnest.value, thickest: stock.thickest.value, step: stock.step.value },
    rounding: stock.rounding,
  });
  if (!pool.ok) return { ...base, ...nothing, hindrances: pool.fault.map(describeShimFault) };
  return { ...base, ...poolView(bench, pool.value, stockText(stock)), hindrances: [] };
}
