/** D46: shims or seals under wet liners, so that they stand above the block as the maker asks. */
import { distinctStacks, linerSeals, type Stack } from '../../calc/selection/index.js';
import type { ThicknessStock } from '../../engine/index.js';
import type { Length } from '../../quantity/index.js';
import type { Alternative, Assessment, Decision, Place } from '../model.js';
import {
  blocked,
  type Decider,
  decided,
  figure,
  listed,
  notMeasured,
  origin,
  placesOf,
  possible,
  waiting,
} from './decision.js';
import type { LengthWords } from './length-words.js';
import { type Bank, bankOf, HEIGHT, neighbourLimit } from './liner-bank.js';
import { linerAlternative } from './liner-plan.js';
import { MOST_SHIMS } from './shim-stacks.js';
import { piecesOf } from './stock-taken.js';

/** Liners that stand too high without any shim: only a deeper ledge brings them down. */
function deeperLedge({ liners, asked, rules }: Bank, words: LengthWords): readonly Alternative[] {
  const high = liners.filter(({ size }) => size.value > rules.high);
  if (high.length === 0) return [];
  const aim = rules.low === undefined ? rules.high : (rules.low + rules.high) / 2;
  const cuts = high.map(({ place, size }) => ({ place, off: size.value - aim }));
  return [
    possible({
      id: 'deeper-ledge',
      words: `Cut the ledge of ${listed(high.map(({ place }) => place.name))} deeper`,
      figures: cuts.map(({ place, off }) => figure(place.name, `${words.length(off)} deeper`)),
      verdict: 'no data',
      against: ['the liner below the deck must still reach its lower seals'],
      orders: [
        {
          id: `liner-ledge/${liners[0]?.place.bank ?? 'all'}`,
          operation: 'Cut the ledges of the liners deeper',
          part: 'cylinder block',
          property: HEIGHT,
          places: high.map(({ place }) => place.id),
          target: asked.window,
          measured: 'length',
          notes: cuts.map(({ place, off }) => `${place.name}: ${words.length(off)} deeper, square to the deck.`),
        },
      ],
    }),
  ];
}

type Choice = 'one-each' | 'same-for-all';
const CHOICES: readonly { readonly choice: Choice; readonly words: string }[] = [
  { choice: 'one-each', words: 'A shim of its own for each' },
  { choice: 'same-for-all', words: 'The same shim for all' },
];

/** Liners as they stand, with a shim of its own each, and with one shim for all. */
function alternativesOf(bank: Bank, sizes: readonly ThicknessStock[], words: LengthWords): readonly Alternative[] {
  const bare = bank.liners.map((liner) => ({ liner, stack: BARE }));
  const asIs = linerAlternative(bank, { id: 'as-is', words: 'Leave the liners as they stand' }, bare, sizes, words);
  const shimmed = sizes.length === 0 ? [] : CHOICES.flatMap((one) => planned(bank, sizes, one, words));
  const others = [...shimmed, ...deeperLedge(bank, words)];
  return asIs.verdict === 'in' ? [asIs, ...others] : [...others, asIs];
}
const BARE: Stack = { shims: [], height: 0 as Length };

/** The plan from all sizes; where it takes more of some than there are, also the plan without these. */
function planned(
  bank: Bank,
  sizes: readonly ThicknessStock[],
  { choice, words: said }: (typeof CHOICES)[number],
  words: LengthWords,
): readonly Alternative[] {
  const whole = planFrom(bank, sizes, choice, { id: choice, words: said }, words);
  if (whole.short.length === 0) return [whole.alternative];
  const rest = sizes.filter((part) => !whole.short.includes(part));
  const without = listed(whole.short.map(({ thickness }) => words.length(thickness)));
  const named = { id: `${choice}-from-the-rest`, words: `${said}, without ${without}` };
  return [planFrom(bank, rest, choice, named, words).alternative, whole.alternative];
}

function planFrom(
  bank: Bank,
  sizes: readonly ThicknessStock[],
  choice: Choice,
  named: Pick<Alternative, 'id' | 'words'>,
  words: LengthWords,
): { readonly alternative: Alternative; readonly short: readonly ThicknessStock[] } {
  const stacks = distinctStacks(
    sizes.map(({ thickness }) => thickness),
    MOST_SHIMS,
  );
  const input = {
    bare: bank.liners.map(({ size }) => size.value as Length),
    seals: stacks.map(({ height }) => height),
    choice,
  };
  const sure = linerSeals({ ...input, ...bank.sure });
  const found = sure.ok ? sure : linerSeals({ ...input, ...bank.rules });
  if (!found.ok) return { alternative: noShims(bank, named.id, named.words, found.fault.liner), short: [] };
  const shimmed = bank.liners.map((liner, at) => ({ liner, stack: stacks[found.value.sealOf[at] ?? 0] ?? BARE }));
  const used = shimmed.flatMap(({ stack }) => stack.shims);
  return {
    alternative: linerAlternative(bank, named, shimmed, sizes, words),
    short: sizes.filter((part, at) => used.filter((one) => one === at).length > piecesOf(part)),
  };
}
const noShims = ({ liners }: Bank, id: string, words: string, liner: number | undefined): Alternative =>
  blocked({
    id,
    words,
    figures: [],
    verdict: 'out',
    against: [
      liner === undefined
        ? 'no choice keeps all liners inside and neighbours close enough'
        : `no shim in stock brings the liner of ${liners[liner]?.place.name ?? 'a cylinder'} inside`,
    ],
  });

function decisionFor(assessment: Assessment, places: readonly Place[], words: LengthWords): Decision {
  const scope = places[0]?.bank ?? 'all';
  const question = {
    id: 'liner-shims',
    scope,
    title: 'Liner protrusion and shims',
    question: 'Which shims bring the liners to the height that is asked for?',
    area: 'block',
    sources: ['liner-seal'],
  } as const;
  const missing = notMeasured(assessment, 'liner-protrusion', HEIGHT);
  if (missing.length > 0) return waiting(question, missing);
  const bank = bankOf(assessment, places);
  if (bank === undefined) return waiting(question, ['liner protrusion asked for, in the sheet']);
  const neighbours = neighbourLimit(assessment, bank.liners[0]!.place);
  return decided(question, {
    alternatives: alternativesOf(bank, assessment.engine.stock?.linerShims ?? [], words),
    proof:
      'Of all ways to shim the liners the one in which they stand highest while every rule is kept; exact, liner by liner along the bank.',
    working: [
      `stands = without shims + shims; ${words.window(bank.asked.window)} (${origin(bank.asked.limit)})`,
      neighbours === undefined
        ? 'no step between neighbours is printed'
        : `step between neighbours at most ${words.length(neighbours.step)} (${neighbours.from})`,
    ],
    cautions: [
      'Read without shims and seals, liners held down at the clamping torque; shims that were in are added first.',
    ],
  });
}

/** Wet liners, one decision for each bank. */
export const linerShims: Decider = (assessment, words) => {
  const places = placesOf(assessment, 'liner-protrusion');
  const banks = [...new Set(places.map(({ bank }) => bank))];
  return banks.map((bank) =>
    decisionFor(
      assessment,
      places.filter((place) => place.bank === bank),
      words,
    ),
  );
};
