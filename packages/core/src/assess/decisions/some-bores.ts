/** Where only some bores are worn out: cut these alone, or sleeve them back to the size of the rest. */
import type { Alternative } from '../model.js';
import { type Boring, cutOf } from './bore-cut.js';
import { boreOrder } from './bore-orders.js';
import { boreTarget } from './bore-targets.js';
import { blocked, placesText, possible } from './decision.js';
import { nearestOversize, oversizeText, pistonsInHand } from './piston-sets.js';
import { pistonsTaken, ringsTaken } from './pistons-taken.js';
import { buysOf } from './stock-taken.js';
import type { WornBore } from './worn-bore.js';

const MIXED =
  'Pistons of two sizes in one engine: makers ask for one size in all bores (common practice). Weigh the larger ones against the rest, mark the block, and keep the list of sizes with the engine.';

/** Alternatives for the worn bores alone; none where no bore or every bore is worn out. */
export function someBores(
  boring: Boring,
  bores: readonly WornBore[],
  worn: ReadonlySet<string>,
): readonly Alternative[] {
  const some = bores.filter(({ place }) => worn.has(place.id));
  if (some.length === 0 || some.length === bores.length) return [];
  return [sleeved(boring, some), ...mixed(boring, some)];
}

const names = (bores: readonly WornBore[]): string => placesText(bores.map(({ place }) => place));

function mixed(boring: Boring, some: readonly WornBore[]): readonly Alternative[] {
  const { assessment, words, sets } = boring;
  for (const set of sets.filter(({ oversize }) => oversize > 0)) {
    const cut = cutOf(boring, set, some);
    if (cut === undefined || cut.against.length > 0) continue;
    const size = oversizeText(set.oversize, words);
    const work = { id: 'bore/some', operation: `bore and hone to ${size}`, targets: cut.targets, notes: [] };
    const places = some.map(({ place }) => place);
    return [
      possible({
        id: `some-${Math.round(set.oversize * 1e6)}`,
        words: `Bore only ${names(some)} to ${size}`,
        figures: cut.figures,
        verdict: cut.verdict,
        against: [MIXED],
        orders: [boreOrder(assessment, work, words)],
        buys: buysOf([...pistonsTaken(set, cut.targets, words), ...ringsTaken(assessment, set, places, words)]),
      }),
    ];
  }
  return [];
}

/** A sleeve, or a new wet liner, brings a bore back to the size at which the others run. */
function sleeved(boring: Boring, some: readonly WornBore[]): Alternative {
  const { assessment, words, sets, standard } = boring;
  const wet = assessment.engine.crankTrain.wetLiners === true;
  const named = {
    id: wet ? 'renew-liners' : 'sleeve',
    words: wet ? `Renew the liner of ${names(some)}` : `Sleeve ${names(some)} back to size`,
    verdict: 'in',
    figures: [],
  } as const;
  const targets = some.flatMap((bore) => presentTarget(boring, bore) ?? []);
  if (targets.length < some.length) {
    const against = ['The finished size is not known: measure the piston that goes back, or state the clearance.'];
    return blocked({ ...named, verdict: 'no data', against });
  }
  const work = {
    id: 'bore/some',
    operation: wet ? 'fit a new liner and finish its bore' : 'bore for a sleeve, press it in, bore and hone it',
    targets,
    notes: wet ? [] : ['Interference, flange or step of the sleeve as its maker says; bore and hone after it is in.'],
  };
  const oversizes = sets.map(({ oversize }) => oversize);
  const fresh = sets.find(
    ({ oversize }) => oversize === nearestOversize(oversizes, standard, some[0]?.unworn ?? standard),
  );
  return possible({
    ...named,
    against: wet
      ? []
      : ['Each sleeve takes wall from the block and must hold in its seat: the shop judges the casting.'],
    orders: [boreOrder(assessment, work, words)],
    buys: fresh === undefined ? [] : buysOf(pistonsTaken(fresh, targets, words)),
  });
}

function presentTarget({ assessment, words, sets, standard }: Boring, { place, unworn }: WornBore) {
  const oversizes = sets.map(({ oversize }) => oversize);
  const present = nearestOversize(oversizes, standard, unworn);
  const set = sets.find(({ oversize }) => oversize === present);
  const piston = pistonsInHand(assessment, oversizes, standard, present).get(place.id);
  const bare = { oversize: present, grades: [], pieces: 0 };
  return boreTarget(assessment, place, set ?? bare, piston, words);
}
