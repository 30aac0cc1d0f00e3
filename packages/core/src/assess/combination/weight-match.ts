/** How alike the parts of one kind weigh, and what would come off the heavy ones. */
import { removals } from '../../calc/balance/index.js';
import { spreadOf } from '../../calc/cylinder/index.js';
import { figureKey, figureKind } from '../../engine/index.js';
import type { Mass } from '../../quantity/index.js';
import { answered, type Naming, type Part, told } from './answering.js';
import { cylinderNumbersOf } from './bobweights.js';
import { RECIPROCATING } from './crank-throws.js';
import { computed, difference } from './look.js';
import type { Makeup } from './model.js';

const PARTS = [...RECIPROCATING, 'rod-big-end-mass'] as const;

/** Spread of each part that was weighed cylinder by cylinder. */
export const weightMatchParts = (makeup: Makeup): readonly Part[] => PARTS.map((part) => matchOf(makeup, part));

function matchOf(makeup: Makeup, part: string): Part {
  const cylinders = cylinderNumbersOf(makeup.engine);
  const weighed = cylinders.filter((cylinder) => {
    const own = makeup.figures.get(figureKey(part, cylinder));
    return own !== undefined && own.origin !== 'sheet';
  });
  if (weighed.length < 2) return { figures: [], computed: [] };
  const found = computed(makeup, undefined, (look) =>
    Object.fromEntries(weighed.map((cylinder) => [`${cylinder}`, look.read(part, cylinder)])),
  );
  const masses = weighed.map((cylinder) => found.values.get(`${cylinder}`)!);
  const values = masses.map(({ value }) => value as Mass);
  const { leastAt, mostAt, least } = spreadOf(values);
  const title = figureKind(part)?.title ?? part;
  const naming: Naming = {
    key: `${part}-spread`,
    name: `${title}, heaviest less lightest`,
    quantity: 'mass',
    high: 'mass-match-most',
  };
  const off = removals(values, least as Mass).map((mass, at) => `cylinder ${weighed[at]} ${told('mass', mass)}`);
  return {
    figures: [answered(makeup, naming, difference(masses[mostAt - 1]!, masses[leastAt - 1]!))],
    computed: [found],
    working: [`${title}, to take off down to the lightest: ${off.join(', ')}`],
  };
}
