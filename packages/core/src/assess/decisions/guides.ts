/** Valve guides and stems: what brings the clearance back. */
import type { Alternative, Assessment, Decision, OrderLine, Place, VerdictWord } from '../model.js';
import {
  type Asked,
  type Decider,
  decided,
  figure,
  findingAt,
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
import { clearedBore } from './fitted-size.js';
import { type Closed, closed, judged, middle } from './judged.js';
import type { LengthWords } from './length-words.js';

const CLEARANCE = 'stem.clearance';
type Kind = 'intake' | 'exhaust';

interface Guide {
  readonly place: Place;
  readonly guide: number;
  readonly guideDoubt: number | undefined;
  readonly stem: number;
  readonly stemDoubt: number | undefined;
  readonly verdict: VerdictWord;
  readonly fresh: Asked | undefined;
  readonly worn: Asked | undefined;
}

function guideAt(assessment: Assessment, place: Place): Guide | undefined {
  const guide = sizeAt(assessment, 'valve-guide.diameter', place.id);
  const stem = sizeAt(assessment, 'valve-stem.diameter', place.id);
  const finding = findingAt(assessment, CLEARANCE, place.id);
  if (guide === undefined || stem === undefined || finding === undefined) return undefined;
  return {
    place,
    guide: guide.value,
    guideDoubt: guide.u,
    stem: stem.value,
    stemDoubt: stem.u,
    verdict: finding.verdict,
    fresh: limitAt(assessment, CLEARANCE, place.id, 'new'),
    worn: limitAt(assessment, CLEARANCE, place.id, 'wear'),
  };
}

const printed = (assessment: Assessment, property: string, place: string): Closed | undefined => {
  const asked = limitAt(assessment, property, place, 'new');
  return asked && closed(asked.window);
};

/** Clearance with a part whose printed size is a range: judged at both ends, so that any such part would do. */
function rangeVerdict(low: number, high: number, u: number | undefined, one: Guide): VerdictWord {
  const window = (one.fresh ?? one.worn)?.window;
  if (window === undefined) return 'no data';
  return worstVerdict([judged({ value: low, u }, window), judged({ value: high, u }, window)]);
}

function newValve(
  assessment: Assessment,
  bad: readonly Guide[],
  kind: Kind,
  words: LengthWords,
): readonly Alternative[] {
  const made = bad.flatMap((one) => {
    const stem = printed(assessment, 'valve-stem.diameter', one.place.id);
    return stem === undefined ? [] : [{ one, low: one.guide - stem.high, high: one.guide - stem.low }];
  });
  if (made.length < bad.length) return [];
  return [
    possible({
      id: 'new-valves',
      words: `New valves in the old guides: ${listed(bad.map(({ place }) => place.name))}`,
      figures: made.map(({ one, low, high }) => figure(one.place.name, `clearance ${words.window({ low, high })}`)),
      verdict: worstVerdict(made.map(({ one, low, high }) => rangeVerdict(low, high, one.guideDoubt, one))),
      buys: [
        {
          part: `${kind} valve`,
          size: 'standard stem',
          count: bad.length,
          for: listed(bad.map(({ place }) => place.name)),
        },
      ],
    }),
  ];
}

/** New guides reamed to the stems that are there: the clearance is made, not found. */
function newGuides(bad: readonly Guide[], kind: Kind, words: LengthWords): readonly Alternative[] {
  const made = bad.flatMap((one) => {
    const asked = one.fresh && closed(one.fresh.window);
    const bore = asked && clearedBore({ low: one.stem, high: one.stem }, asked);
    return bore ? [{ one, bore, asked }] : [];
  });
  if (made.length < bad.length || made.length === 0) return [];
  const order: OrderLine = {
    id: `guides/${kind}`,
    operation: 'Renew the valve guides and ream them to their valves',
    part: 'cylinder head',
    property: 'valve-guide.diameter',
    places: bad.map(({ place }) => place.id),
    measured: 'length',
    targets: made.map(({ one, bore }) => ({
      place: one.place.id,
      window: bore,
      fittedTo: `stem of ${one.place.name}, ${words.length(one.stem)}`,
    })),
    notes: [
      'Seats are cut after the guides: the pilot stands in the new guide.',
      `Clearance: ${origin((made[0] as (typeof made)[number]).one.fresh!.limit)}.`,
    ],
  };
  return [
    possible({
      id: 'new-guides',
      words: `New guides for the old valves: ${listed(bad.map(({ place }) => place.name))}`,
      figures: made.map(({ one, bore }) => figure(one.place.name, `guide ${words.window(bore)}`)),
      verdict: worstVerdict(
        made.map(({ one, bore, asked }) => judged({ value: middle(bore) - one.stem, u: one.stemDoubt }, asked)),
      ),
      orders: [order],
      buys: [
        {
          part: `${kind} valve guide`,
          size: 'standard, to be reamed',
          count: bad.length,
          for: listed(bad.map(({ place }) => place.name)),
        },
      ],
    }),
  ];
}

function leave(guides: readonly Guide[]): Alternative {
  return possible({
    id: 'leave',
    words: 'Leave guides and valves as they are',
    figures: guides.map(({ place, verdict }) => figure(place.name, verdict)),
    verdict: worstVerdict(guides.map(({ verdict }) => verdict)),
  });
}

function kindDecision(assessment: Assessment, kind: Kind, words: LengthWords): readonly Decision[] {
  const places = placesOf(assessment, 'valve-guide').filter(({ valve }) => valve?.kind === kind);
  if (places.length === 0) return [];
  const question = {
    id: 'valve-guides',
    scope: kind,
    title: `Guides and stems of the ${kind} valves`,
    question: `What brings the stem clearance of the ${kind} valves back?`,
    area: 'valves',
    sources: ['shop-practice'],
  } as const;
  const guides = places.flatMap((place) => guideAt(assessment, place) ?? []);
  if (guides.length < places.length)
    return [
      waiting(question, [
        ...notMeasured(assessment, 'valve-guide', 'valve-guide.diameter'),
        ...notMeasured(assessment, 'valve-stem', 'valve-stem.diameter'),
      ]),
    ];
  if (guides.every(({ fresh, worn }) => fresh === undefined && worn === undefined))
    return [waiting(question, ['stem clearance asked for, in the sheet'])];
  const bad = guides.filter(({ verdict }) => verdict !== 'in');
  const stays = leave(guides);
  const others = bad.length === 0 ? [] : [...newGuides(bad, kind, words), ...newValve(assessment, bad, kind, words)];
  // A new valve that would do is less work than a guide: of the two the one that is surely in stands first.
  const rank = { in: 0, near: 1, 'no data': 2, 'check again': 2, out: 3 } as const;
  const ranked = others.toSorted((a, b) => rank[a.verdict] - rank[b.verdict]);
  return [
    decided(question, {
      alternatives: bad.some(({ verdict }) => verdict === 'out') ? [...ranked, stays] : [stays, ...ranked],
      proof:
        bad.length === 0
          ? 'Every stem clearance is within its limit.'
          : `Not surely within: ${listed(bad.map(({ place }) => place.name))}.`,
      working: guides.map(
        ({ place, guide, stem }) =>
          `${place.name}: ${words.length(guide)} − ${words.length(stem)} = ${words.length(guide - stem)}`,
      ),
      cautions: [
        'A guide that is worn to a bell mouth is worse than its mean: look at its taper before new valves go into it.',
      ],
    }),
  ];
}

/** Intake and exhaust guides. */
export const guides: Decider = (assessment, words) => [
  ...kindDecision(assessment, 'intake', words),
  ...kindDecision(assessment, 'exhaust', words),
];
