/** D12: whether the deck of a bank is cut, how much, and what is left. */
import { deckCuts } from '../../calc/cylinder/index.js';
import type { Length } from '../../quantity/index.js';
import type { Alternative, Assessment, Decision, OrderLine, Place, Size, VerdictWord } from '../model.js';
import {
  blocked,
  type Decider,
  decided,
  figure,
  findingAt,
  limitAt,
  origin,
  placesOf,
  possible,
  sizeAt,
  waiting,
  worstVerdict,
} from './decision.js';
import { consequences, cutCautions, heightAfter, TOLERANCE_FROM } from './face-cut.js';
import { closed, middle } from './judged.js';
import type { LengthWords } from './length-words.js';
import { smallest, stationValues } from './measured-at.js';

interface Deck {
  readonly place: Place;
  readonly gap: Size;
  /** Corner heights and the lowest of them, where they are measured. */
  readonly heights: readonly { readonly name: string; readonly value: number }[];
  readonly lowest: number | undefined;
  readonly clearances: readonly { readonly name: string; readonly value: number }[];
}

function deckOf(assessment: Assessment, place: Place): Deck | undefined {
  const gap = sizeAt(assessment, 'deck-flatness.gap', place.id);
  const corners = placesOf(assessment, 'deck-height').find(({ id }) => id === place.id);
  const heights = corners === undefined ? [] : stationValues(assessment, 'deck-height', corners);
  const clearances = placesOf(assessment, 'deck-clearance')
    .filter(({ bank }) => bank === place.bank)
    .flatMap(({ id, name }) => {
      const size = sizeAt(assessment, 'deck-clearance.depth', id);
      return size === undefined ? [] : [{ name, value: size.value }];
    });
  return (
    gap && {
      place,
      gap,
      heights: heights.map(({ station, value }) => ({ name: station.name, value })),
      lowest: smallest(heights)?.value,
      clearances,
    }
  );
}

/** Verdicts on the face as it is: what is not measured is not good. */
function asFound(assessment: Assessment, { place, clearances }: Deck): readonly VerdictWord[] {
  const own = ['deck-flatness.gap', 'deck-height.height', 'deck-height.spread'].flatMap((property) => {
    const finding = findingAt(assessment, property, place.id);
    return finding === undefined || finding.held.length === 0 ? [] : [finding.verdict];
  });
  const cylinders = placesOf(assessment, 'deck-clearance').filter(({ bank }) => bank === place.bank);
  const depths =
    clearances.length === 0
      ? []
      : cylinders.flatMap(({ id }) => {
          const finding = findingAt(assessment, 'deck-clearance.depth', id);
          return finding === undefined || finding.held.length === 0 ? [] : [finding.verdict];
        });
  return [...own, ...depths];
}

function leave(assessment: Assessment, deck: Deck, words: LengthWords): Alternative {
  return possible({
    id: 'leave',
    words: `Leave the ${deck.place.name} as it is`,
    figures: [
      figure('gap under the straight edge', words.sure(deck.gap.value, deck.gap.u)),
      ...deckFigures(deck, words),
    ],
    verdict: worstVerdict(asFound(assessment, deck)),
  });
}
function deckFigures({ heights, clearances }: Deck, words: LengthWords) {
  const range = (name: string, list: Deck['heights']) => {
    if (list.length === 0) return figure(name, 'not measured');
    const values = list.map(({ value }) => value);
    return figure(name, `${words.length(Math.min(...values))} to ${words.length(Math.max(...values))}`);
  };
  return [range('deck height at the corners', heights), range('deck clearance of the cylinders', clearances)];
}

interface Cut {
  readonly id: string;
  readonly words: string;
  /** At the lowest corner, and at the highest. */
  readonly least: number;
  readonly most: number;
  readonly how: string;
}

/** Cut until the straight edge shows nothing, square to the crank: the lowest corner gives its gap, the others more. */
function cleanUp({ place, gap, heights, lowest }: Deck, words: LengthWords): readonly Cut[] {
  if (gap.value <= 0) return [];
  const high = heights.length === 0 ? 0 : Math.max(...heights.map(({ value }) => value)) - (lowest ?? 0);
  const most = gap.value + high;
  const { value } = gap;
  return [
    {
      id: 'clean-up',
      words: `Cut the ${place.name} until it is flat and square to the crankshaft`,
      least: value,
      most,
      how: `${words.length(value)} (gap under the straight edge) at the lowest corner${high > 0 ? `, ${words.length(most)} at the highest` : ''}`,
    },
  ];
}

/** Cut to the middle of the printed deck clearance; each cylinder says how much that is. */
function toClearance(assessment: Assessment, { place, clearances }: Deck, words: LengthWords): readonly Cut[] {
  const cylinders = placesOf(assessment, 'deck-clearance').filter(({ bank }) => bank === place.bank);
  const [first] = cylinders;
  const asked = first && limitAt(assessment, 'deck-clearance.depth', first.id, 'new');
  const window = asked && closed(asked.window);
  if (!window || clearances.length < cylinders.length || clearances.length === 0) return [];
  const cuts = deckCuts(
    clearances.map(({ value }) => value as Length),
    middle(window) as Length,
  );
  const [least, most] = [Math.min(...cuts), Math.max(...cuts)];
  return least <= 0
    ? []
    : [
        {
          id: 'to-clearance',
          words: `Cut the ${place.name} to a deck clearance of ${words.length(middle(window))}`,
          least,
          most,
          how: `${clearances.map(({ name }, at) => `${name} ${words.length(cuts[at] ?? 0)}`).join('; ')} (${origin(asked.limit)})`,
        },
      ];
}

function cutAlternative(assessment: Assessment, deck: Deck, cut: Cut, words: LengthWords): Alternative {
  const { place, lowest } = deck;
  const leastLeft = assessment.engine.machining?.leastDeckHeight;
  const figures = [
    figure('cut', cut.how),
    figure(
      'deck height left',
      lowest === undefined ? 'not known: deck height is not measured' : words.length(lowest - cut.least),
    ),
    ...consequences(assessment, place.bank ?? place.id, cut.least, words),
  ];
  const draft = {
    id: cut.id,
    words: cut.words,
    figures,
    verdict: lowest === undefined ? ('no data' as const) : ('in' as const),
  };
  if (lowest !== undefined && leastLeft !== undefined && lowest - cut.least < leastLeft.value)
    return blocked({
      ...draft,
      verdict: 'out',
      against: [`leaves less than ${leastLeft.text} (${leastLeft.from.text})`],
    });
  return possible({
    ...draft,
    against: lowest === undefined ? ['what is left is not known before the deck height is measured'] : [],
    orders: deckOrders(assessment, deck, cut),
  });
}

function deckOrders(assessment: Assessment, { place, lowest }: Deck, cut: Cut): readonly OrderLine[] {
  const { machining } = assessment.engine;
  const flat =
    limitAt(assessment, 'deck-flatness.gap', place.id, 'new') ??
    limitAt(assessment, 'deck-flatness.gap', place.id, 'wear');
  const shared = { part: 'cylinder block', places: [place.id], measured: 'length' as const };
  return [
    {
      ...shared,
      id: `deck-height/${place.id}`,
      operation: `Mill the ${place.name}, square to the crankshaft`,
      property: 'deck-height.height',
      ...(lowest === undefined ? {} : { target: heightAfter(lowest - cut.least, machining?.leastDeckHeight?.value) }),
      ...(machining?.deckFinish === undefined ? {} : { finish: machining.deckFinish }),
      notes: [
        `Take off: ${cut.how}.`,
        `${TOLERANCE_FROM}, the same at all corners.`,
        ...(machining?.leastDeckHeight
          ? [`Never below ${machining.leastDeckHeight.text} (${machining.leastDeckHeight.from.text}); stop and ask.`]
          : []),
        'Break the edges of bores and bolt holes; write down what came off.',
      ],
    },
    ...(flat === undefined
      ? []
      : [
          {
            ...shared,
            id: `deck-flatness/${place.id}`,
            operation: `The ${place.name} is flat afterwards`,
            property: 'deck-flatness.gap',
            target: flat.window,
            notes: [`Flatness: ${origin(flat.limit)}.`],
          },
        ]),
  ];
}

function deckDecision(assessment: Assessment, place: Place, words: LengthWords): Decision {
  const question = {
    id: 'deck-cut',
    scope: place.id,
    title: `Cut of the ${place.name}`,
    question: `Is the ${place.name} cut, and how much?`,
    area: 'block',
    sources: ['intake-face-table', 'derived-here'],
  } as const;
  const deck = deckOf(assessment, place);
  if (deck === undefined) return waiting(question, [`flatness of the ${place.name}: measure it`]);
  const stays = leave(assessment, deck, words);
  const cuts = [...cleanUp(deck, words), ...toClearance(assessment, deck, words)].map((cut) =>
    cutAlternative(assessment, deck, cut, words),
  );
  const good = stays.verdict === 'in' || stays.verdict === 'near';
  return decided(question, {
    alternatives: good ? [stays, ...cuts] : [...cuts, stays],
    proof: good
      ? 'Nothing that is measured asks for a cut: metal that is left on can still be cut later.'
      : 'The least cut that brings the face within its limits stands first.',
    working: [
      'deck height left = lowest corner − cut there',
      ...deck.heights.map(({ name, value }) => `${name}: ${words.length(value)}`),
      ...deck.clearances.map(({ name, value }) => `deck clearance of ${name}: ${words.length(value)}`),
    ],
    cautions: cutCautions(assessment),
  });
}

/** A decision for each deck. */
export const deckCut: Decider = (assessment, words) =>
  placesOf(assessment, 'deck-flatness').map((place) => deckDecision(assessment, place, words));
