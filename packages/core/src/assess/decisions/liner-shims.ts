/** D46: shims or seals under wet liners, so that they stand above the block as the maker asks. */
import { distinctStacks, type LinerRules, linerSeals, linersKeep, type Stack } from '../../calc/selection/index.js';
import type { ThicknessStock } from '../../engine/index.js';
import type { Length } from '../../quantity/index.js';
import { limitsOf, newWindow, wearWindow } from '../limits/index.js';
import type { Alternative, Assessment, BuyLine, Decision, OrderLine, Place, Size } from '../model.js';
import {
  type Asked,
  blocked,
  type Decider,
  decided,
  figure,
  limitAt,
  listed,
  notMeasured,
  origin,
  placesOf,
  possible,
  sizeAt,
  waiting,
  worstVerdict,
} from './decision.js';
import { judged } from './judged.js';
import type { LengthWords } from './length-words.js';
import { counted } from './other-words.js';

const HEIGHT = 'liner-protrusion.height';
const NEIGHBOURS = 'liner-protrusion.neighbours';
/** More shims than this under one liner lie on each other badly. Common practice, no source. */
const MOST_SHIMS = 2;

interface Liner {
  readonly place: Place;
  readonly size: Size;
}
interface Bank {
  readonly liners: readonly Liner[];
  readonly asked: Asked;
  readonly rules: LinerRules;
  /** Narrower by the uncertainty of a reading, so that what is chosen is surely inside. */
  readonly sure: LinerRules;
}

/** Largest difference between neighbours that the sheet prints for the bank; undefined where it prints none. */
function neighbourLimit(
  { engine }: Assessment,
  { bank }: Place,
): { readonly step: Length; readonly from: string } | undefined {
  for (const row of limitsOf(engine, NEIGHBOURS, bank === undefined ? {} : { bank })) {
    const step = (newWindow(row) ?? wearWindow(row, 'hole'))?.high;
    if (step !== undefined) return { step: step as Length, from: origin(row) };
  }
  return undefined;
}

function bankOf(assessment: Assessment, places: readonly Place[]): Bank | undefined {
  const liners = places.flatMap((place) => {
    const size = sizeAt(assessment, HEIGHT, place.id);
    return size === undefined ? [] : [{ place, size }];
  });
  const [first] = places;
  if (first === undefined) return undefined;
  const asked = limitAt(assessment, HEIGHT, first.id, 'new');
  const high = asked?.window.high as Length | undefined;
  if (asked === undefined || high === undefined || liners.length < places.length) return undefined;
  const low = asked.window.low as Length | undefined;
  const step = neighbourLimit(assessment, first)?.step;
  const rules = {
    high,
    ...(low === undefined ? {} : { low }),
    ...(step === undefined ? {} : { stepLimit: step }),
    oneWay: false,
  };
  const doubt = 2 * Math.max(...liners.map(({ size }) => size.u ?? 0));
  const narrow = {
    ...rules,
    high: (high - doubt) as Length,
    ...(low === undefined ? {} : { low: (low + doubt) as Length }),
  };
  return { liners, asked, rules, sure: narrow.low !== undefined && narrow.low > narrow.high ? rules : narrow };
}

interface Shimmed {
  readonly liner: Liner;
  readonly stack: Stack;
}

function judgedBank({ asked, rules }: Bank, shimmed: readonly Shimmed[]) {
  const heights = shimmed.map(({ liner, stack }) => liner.size.value + stack.height);
  const kept = linersKeep(heights as Length[], rules);
  const verdicts = shimmed.map(({ liner }, at) => judged({ value: heights[at] ?? 0, u: liner.size.u }, asked.window));
  return { heights, kept, verdict: worstVerdict([...verdicts, ...(kept.stepKept ? [] : (['out'] as const))]) };
}

function alternativeOf(
  bank: Bank,
  draft: Pick<Alternative, 'id' | 'words'>,
  shimmed: readonly Shimmed[],
  sizes: readonly ThicknessStock[],
  words: LengthWords,
): Alternative {
  const { heights, kept, verdict } = judgedBank(bank, shimmed);
  const buys = buysOf(shimmed, sizes, words);
  const short = buys.flatMap(({ size, count }) => {
    const part = sizes.find(({ thickness }) => words.length(thickness) === size);
    return part?.count !== undefined && count > part.count
      ? [`takes ${counted(count, 'shim')} of ${size}, there are ${part.count}`]
      : [];
  });
  const alternative = possible({
    ...draft,
    figures: [
      ...shimmed.map(({ liner, stack }, at) =>
        figure(
          liner.place.name,
          `${shimText(stack, sizes, words)}: stands ${words.sure(heights[at] ?? 0, liner.size.u)}`,
        ),
      ),
      figure('largest step between neighbours', words.length(kept.step)),
    ],
    verdict,
    against: kept.stepKept ? [] : ['neighbours stand further apart than the sheet allows'],
    orders: buys.length === 0 ? [] : [shimOrder(bank, shimmed, sizes, words)],
    buys,
  });
  return short.length === 0 ? alternative : blocked({ ...alternative, against: short });
}
const shimText = ({ shims }: Stack, sizes: readonly ThicknessStock[], words: LengthWords): string =>
  shims.length === 0 ? 'no shim' : shims.map((one) => words.length(sizes[one]?.thickness ?? 0)).join(' + ');

function buysOf(shimmed: readonly Shimmed[], sizes: readonly ThicknessStock[], words: LengthWords): readonly BuyLine[] {
  return sizes.flatMap((part, at) => {
    const count = shimmed.flatMap(({ stack }) => stack.shims).filter((one) => one === at).length;
    if (count === 0) return [];
    const number = part.partNumber === undefined ? {} : { partNumber: part.partNumber };
    return [{ part: part.name, ...number, size: words.length(part.thickness), count, for: 'liners' }];
  });
}

function shimOrder(
  { liners, asked }: Bank,
  shimmed: readonly Shimmed[],
  sizes: readonly ThicknessStock[],
  words: LengthWords,
): OrderLine {
  return {
    id: `liner-shims/${liners[0]?.place.bank ?? 'all'}`,
    operation: 'Shim the liners',
    part: 'liners',
    property: HEIGHT,
    places: liners.map(({ place }) => place.id),
    target: asked.window,
    measured: 'length',
    with: 'liners held down at the maker’s clamping torque, seals out',
    notes: shimmed.map(({ liner, stack }) => `${liner.place.name}: ${shimText(stack, sizes, words)} under the flange.`),
  };
}

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

/** Liners as they stand, with one shim for all, and with a shim of its own each. */
function alternativesOf(bank: Bank, sizes: readonly ThicknessStock[], words: LengthWords): readonly Alternative[] {
  const stacks = distinctStacks(
    sizes.map(({ thickness }) => thickness),
    MOST_SHIMS,
  );
  const none = stacks[0] as Stack;
  const as = (id: string, said: string, list: readonly Stack[]) =>
    alternativeOf(
      bank,
      { id, words: said },
      bank.liners.map((liner, at) => ({ liner, stack: list[at] ?? none })),
      sizes,
      words,
    );
  const plan = (id: string, said: string, choice: 'same-for-all' | 'one-each'): readonly Alternative[] => {
    const input = {
      bare: bank.liners.map(({ size }) => size.value as Length),
      seals: stacks.map(({ height }) => height),
      choice,
    };
    const sure = linerSeals({ ...input, ...bank.sure });
    const found = sure.ok ? sure : linerSeals({ ...input, ...bank.rules });
    return found.ok
      ? [
          as(
            id,
            said,
            found.value.sealOf.map((at) => stacks[at] as Stack),
          ),
        ]
      : [noShims(bank, id, said, found.fault.liner)];
  };
  const asIs = as('as-is', 'Leave the liners as they stand', []);
  const shimmed =
    sizes.length === 0
      ? []
      : [
          ...plan('one-each', 'A shim of its own for each', 'one-each'),
          ...plan('same-for-all', 'The same shim for all', 'same-for-all'),
        ];
  const others = [...shimmed, ...deeperLedge(bank, words)];
  return asIs.verdict === 'in' ? [asIs, ...others] : [...others, asIs];
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
