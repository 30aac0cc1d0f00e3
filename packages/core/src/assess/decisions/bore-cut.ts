/** How some bores come out when they are cut for one set of pistons. */
import { smallestOversize, wallLeft } from '../../calc/cylinder/index.js';
import type { Length } from '../../quantity/index.js';
import type { Alternative, Assessment } from '../model.js';
import { cleanUpAllowance } from './bore-orders.js';
import { type BoreTarget, boreTarget } from './bore-targets.js';
import { byText, figure } from './decision.js';
import { chanceOfAll, chanceText, judged, type Known, middle, SURE } from './judged.js';
import type { LengthWords } from './length-words.js';
import { type PistonSet, pistonsInHand } from './piston-sets.js';
import { lackingFor } from './pistons-taken.js';
import type { WornBore } from './worn-bore.js';

/** All that the alternatives are computed from. */
export interface Boring {
  readonly assessment: Assessment;
  readonly words: LengthWords;
  readonly sets: readonly PistonSet[];
  readonly standard: number;
}

export interface CutOf {
  readonly targets: readonly BoreTarget[];
  readonly figures: Alternative['figures'];
  readonly against: readonly string[];
  readonly verdict: Alternative['verdict'];
  readonly tightest: { readonly bore: WornBore; readonly spare: number };
}

/** How some bores come out when they are cut for a set of pistons; undefined where a target is not known. */
export function cutOf(
  { assessment, words, sets, standard }: Boring,
  set: PistonSet,
  bores: readonly WornBore[],
): CutOf | undefined {
  const inHand = pistonsInHand(
    assessment,
    sets.map(({ oversize }) => oversize),
    standard,
    set.oversize,
  );
  const targets = bores.flatMap(
    (bore) => boreTarget(assessment, bore.place, set, inHand.get(bore.place.id), words) ?? [],
  );
  const allowance = cleanUpAllowance(assessment).value;
  const rooms = bores.flatMap((bore, at) => {
    const target = targets[at];
    return target === undefined ? [] : [roomOf(bore, middle(target.window), allowance)];
  });
  const tightest = rooms.toSorted((a, b) => a.free.value - b.free.value)[0];
  if (targets.length < bores.length || tightest === undefined) return undefined;
  const held = rooms.toSorted((a, b) => a.held.value - b.held.value)[0] ?? tightest;
  const chance = chanceOfAll(rooms.map(({ free }) => ({ known: free, window: { low: 0 } })));
  const walls = rooms.flatMap((room) => room.wall ?? []).toSorted((a, b) => a.value - b.value);
  const least = assessment.engine.machining?.leastBoreWall;
  const thin = least !== undefined && walls[0] !== undefined && judged(walls[0], { low: least.value }) === 'out';
  return {
    targets,
    tightest: { bore: tightest.bore, spare: tightest.free.value },
    verdict: chance === undefined ? 'no data' : chance >= SURE ? 'in' : 'near',
    figures: [
      figure('Left at the worst bore', `${spareText(tightest.free, words)}, ${tightest.bore.place.name}`),
      figure('Chance that all clean up', chanceText(chance)),
      figure('Bar on the old axis', heldText(held, words)),
      figure('Finished size', finishedText(targets, words)),
      figure('From', [...new Set(targets.map(({ how }) => how))].join('; ')),
      figure(
        'Thinnest wall left',
        walls[0] === undefined ? 'not known: walls were not measured' : words.sure(walls[0].value, walls[0].u),
      ),
    ],
    against: [
      ...(tightest.free.value < -ROUNDING
        ? [`${tightest.bore.place.name} does not clean up: ${words.length(-tightest.free.value)} short.`]
        : []),
      ...lackingFor(assessment, set, targets),
      ...(thin ? [`The wall would become thinner than ${words.length(least.value)} (${least.from.text}).`] : []),
    ],
  };
}

/** Arithmetic in thous must not make an exact fit fail. */
const ROUNDING = 1e-10;

/** What is left over the need of a bore on either axis, with the doubt of its largest reading, and the wall that is left. */
function roomOf(bore: WornBore, finished: number, allowance: number) {
  const left = ({ value, u }: Known): Known => ({ value: spareOf(finished, value + allowance), u });
  const wall =
    bore.wall &&
    ({
      value: wallLeft(bore.wall.value as Length, bore.mean as Length, finished as Length, bore.shift as Length),
      u: bore.wall.u,
    } as Known);
  return { bore, free: left(bore.free), held: left(bore.held), ...(wall && { wall }) };
}

function spareOf(finished: number, needed: number): number {
  const found = smallestOversize(finished as Length, needed as Length, [0 as Length]);
  return found.ok ? found.value.spare : -found.fault.needed;
}

const spareText = ({ value, u }: Known, words: LengthWords): string =>
  value < -ROUNDING ? `${words.length(-value)} short` : words.sure(value, u);

function heldText({ bore, held }: { readonly bore: WornBore; readonly held: Known }, words: LengthWords): string {
  if (held.value >= -ROUNDING) return `cleans up too, ${words.length(held.value)} left`;
  return `${words.length(-held.value)} short at ${bore.place.name}: centre the bar on the worn bore`;
}

const finishedText = (targets: readonly BoreTarget[], words: LengthWords): string =>
  byText(targets.map(({ place, window }) => ({ place, text: words.window(window) })));
