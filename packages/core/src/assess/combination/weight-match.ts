/** How alike the parts of one kind weigh, and what would come off the heavy ones. */
import { removals } from '../../calc/balance/index.js';
import { spreadOf } from '../../calc/cylinder/index.js';
import { figureKey, figureKind } from '../../engine/index.js';
import type { Mass } from '../../quantity/index.js';
import { answered, type Naming, type Part, told } from './answering.js';
import { cylinderNumbersOf } from './bobweights.js';
import { RECIPROCATING } from './crank-throws.js';
import { computed, difference } from './look.js';
import { figure } from './makeup.js';
import type { GivenFigure, Makeup } from './model.js';

const PARTS = [...RECIPROCATING, 'rod-big-end-mass'] as const;

/** Spread of each part that was weighed cylinder by cylinder. */
export const weightMatchParts = (makeup: Makeup): readonly Part[] => PARTS.map((part) => matchOf(makeup, part));

interface Match {
  /** What it follows from: each mass weighed, the mass that counts in its stead, and the limit if there is one. */
  readonly on: readonly (GivenFigure | undefined)[];
  readonly match: Part;
}
/** By the first mass: while a slider moves something else, the weights match as before. */
const MATCHES = new WeakMap<GivenFigure, Match>();
const LIMIT = 'mass-match-most';

function matchOf(makeup: Makeup, part: string): Part {
  const weighed = cylinderNumbersOf(makeup.engine).flatMap((cylinder): readonly Weighed[] => {
    const own = makeup.figures.get(figureKey(part, cylinder));
    return own === undefined || own.origin === 'sheet' ? [] : [{ cylinder, own }];
  });
  const [first] = weighed;
  if (first === undefined || weighed.length < 2) return { figures: [], computed: [] };
  // A mass tried for all cylinders counts before those that were weighed, so the weighed ones alone do not tell.
  const counted = weighed.map(({ cylinder }) => figure(makeup, part, cylinder));
  const on = [...weighed.map(({ own }) => own), ...counted, figure(makeup, LIMIT)];
  const known = MATCHES.get(first.own);
  if (known?.on.length === on.length && known.on.every((one, at) => one === on[at])) return known.match;
  const match = newMatch(makeup, part, weighed);
  MATCHES.set(first.own, { on, match });
  return match;
}

interface Weighed {
  readonly cylinder: number;
  readonly own: GivenFigure;
}
function newMatch(makeup: Makeup, part: string, weighed: readonly Weighed[]): Part {
  const found = computed(makeup, undefined, (look) =>
    Object.fromEntries(weighed.map(({ cylinder }) => [`${cylinder}`, look.read(part, cylinder)])),
  );
  const masses = weighed.map(({ cylinder }) => found.values.get(`${cylinder}`)!);
  const values = masses.map(({ value }) => value as Mass);
  const { leastAt, mostAt, least } = spreadOf(values);
  const title = figureKind(part)?.title ?? part;
  const naming: Naming = {
    key: `${part}-spread`,
    name: `${title}, heaviest less lightest`,
    quantity: 'mass',
    high: LIMIT,
  };
  const off = removals(values, least as Mass).map(
    (mass, at) => `cylinder ${weighed[at]!.cylinder} ${told('mass', mass)}`,
  );
  return {
    figures: [answered(makeup, naming, difference(masses[mostAt - 1]!, masses[leastAt - 1]!))],
    computed: [found],
    working: [`${title}, to take off down to the lightest: ${off.join(', ')}`],
  };
}
