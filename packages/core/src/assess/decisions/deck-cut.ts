/** D12: whether the deck of a bank is cut, how much, and what is left. */
import type { Alternative, Assessment, Decision, OrderLine, Place } from '../model.js';
import {
  blocked,
  type Decider,
  decided,
  figure,
  limitAt,
  origin,
  placesOf,
  possible,
  waiting,
  worstVerdict,
} from './decision.js';
import { asFound, type Cut, cleanUp, type Deck, deckOf, toClearance } from './deck-seen.js';
import { consequences, cutCautions, heightAfter, TOLERANCE_FROM } from './face-cut.js';
import type { LengthWords } from './length-words.js';

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
