/** The answer in plain words. */
import { displayUnit, formatQuantity, type QuantityKind } from '../../../quantity/index.js';
import type { FinderAnswer, FoundAddition, FoundLoosening, FoundRelaxation } from './model.js';

const UNITS: Partial<Readonly<Record<QuantityKind, string>>> = { volume: 'cm3' };
const PLACES: Partial<Readonly<Record<QuantityKind, number>>> = { length: 2, ratio: 2, volume: 1, angle: 1 };
const told = (quantity: QuantityKind, value: number, more = 0): string =>
  formatQuantity(quantity, value, UNITS[quantity] ?? displayUnit(quantity, 'metric'), (PLACES[quantity] ?? 3) + more);

const SIZES: Readonly<Record<string, string>> = {
  bore: 'bore',
  thickness: 'thickness',
  compressionHeight: 'compression height',
  crownVolume: 'crown volume',
  pocketDeeper: 'pockets deeper',
};
const QUANTITIES: Readonly<Record<string, QuantityKind>> = { crownVolume: 'volume' };

const percent = (share: number): string => `${Math.max(1, Math.round(share * 100))} %`;
const givenWay = ({ name, quantity, end, from, to, share, shareOf }: FoundLoosening): string =>
  `${name} ${end === 'low' ? 'down' : 'up'} to ${told(quantity, to, 1)} in place of ${told(quantity, from, 1)} (${percent(share)} of ${shareOf})`;

const isRelaxation = (one: FinderAnswer['alone'][number]): one is FoundRelaxation => !('helps' in one);

/** Why nothing fits and what would help; one line when something does. */
export function words(answer: Omit<FinderAnswer, 'words'>, finished: boolean): readonly string[] {
  return [...found(answer, finished), ...leftOut(answer)];
}

const leftOut = ({ missing }: Pick<FinderAnswer, 'missing'>): readonly string[] =>
  [...new Set(missing.map((one) => one.for))].map((name) => {
    const needed = missing.filter((one) => one.for === name).map(({ what }) => what);
    return `Not checked: ${name}; not known: ${needed.join(', ')}.`;
  });

function found(answer: Omit<FinderAnswer, 'words'>, finished: boolean): readonly string[] {
  const { raw, feasible, together, alone, additions } = answer;
  if (feasible > 0)
    return [`${feasible} of ${raw} combinations keep everything${finished ? '' : ' so far; the search goes on'}.`];
  if (!finished) return ['Nothing that keeps everything so far; the search goes on.'];
  return [
    `None of ${raw} combinations keeps everything.`,
    ...(together === undefined
      ? ['No loosening within reason lets one through: change what is fixed.']
      : blocked(together)),
    ...ease(alone, together),
    ...shortfalls(additions),
    ...additions.map(added),
    ...(additions.length === 0 ? ['No single other size of one part helps by itself.'] : []),
  ];
}

function blocked({ loosened }: FoundRelaxation): readonly string[] {
  const ways = loosened.map(givenWay).join(', and ');
  const several = new Set(loosened.map(({ key }) => key)).size > 1;
  return [several ? `Only together: let ${ways}.` : `It is enough to let ${ways}.`];
}

/** Other requirements that would do alone, the least first. */
function ease(alone: FinderAnswer['alone'], together: FoundRelaxation | undefined): readonly string[] {
  const best = together?.loosened[0]?.key;
  return alone
    .filter(isRelaxation)
    .filter(({ loosened }) => loosened[0]?.key !== best)
    .toSorted((a, b) => a.share - b.share)
    .map(({ loosened }) => `Or let ${loosened.map(givenWay).join(', and ')}.`);
}

const WANTING: Readonly<Record<string, Readonly<Record<'above' | 'below', string>>>> = {
  thickness: { above: 'is thin', below: 'is thick' },
  compressionHeight: { above: 'is low', below: 'is high' },
  crownVolume: { above: 'has a crown volume small', below: 'has a crown volume large' },
};

/** "No piston on offer is low enough: the nearest is dished (35.10 mm)." Said of a size once, and only where it is so of every stretch. */
function shortfalls(additions: readonly FoundAddition[]): readonly string[] {
  const sizes = new Map<string, readonly FoundAddition[]>();
  for (const one of additions) sizes.set(one.choice + one.size, [...(sizes.get(one.choice + one.size) ?? []), one]);
  return [...sizes.values()].flatMap(([first, ...others]) => {
    const { title, size, quantity, nearest } = first!;
    if (nearest === undefined || WANTING[size] === undefined) return [];
    if (others.some((one) => one.nearest?.lies !== nearest.lies)) return [];
    const named =
      nearest.name === '' ? told(quantity, nearest.value) : `${nearest.name} (${told(quantity, nearest.value)})`;
    return [`No ${title} on offer ${WANTING[size][nearest.lies]} enough: the nearest is ${named}.`];
  });
}

function added({ title, size, quantity, from, to, beside }: FoundAddition): string {
  const range = from === to ? told(quantity, from) : `${told(quantity, from)} to ${told(quantity, to)}`;
  const what = SIZES[size] === undefined ? `A ${title} of ${range}` : `A ${title} with a ${SIZES[size]} of ${range}`;
  const rest = Object.entries(beside)
    .filter(([name]) => name !== 'pocketDeeper')
    .map(([name, value]) => `${SIZES[name] ?? name} ${told(QUANTITIES[name] ?? 'length', value)}`);
  return `${what}${rest.length === 0 ? '' : ` (${rest.join(', ')})`} would do.`;
}
