/** Valve seats: leave, cut again, or renew the insert. */
import type { Alternative, Assessment, Decision, OrderLine, Place } from '../model.js';
import {
  blocked,
  type Decider,
  decided,
  featureOf,
  figure,
  findingAt,
  limitAt,
  listed,
  notMeasured,
  origin,
  placesOf,
  possible,
  waiting,
  worstVerdict,
} from './decision.js';
import type { LengthWords } from './length-words.js';

type Kind = 'intake' | 'exhaust';
/** What a seat is judged by; the depth of the valve only where its maker limits it. */
const JUDGED = ['seat-width', 'seat-runout', 'valve-recess', 'valve-margin'] as const;
type Judged = (typeof JUDGED)[number];
/** A cut makes the seat sit deeper: what is out of these is not cured by it. */
const DEEPER: readonly Judged[] = ['valve-recess'];

const propertyOf = (assessment: Assessment, feature: Judged): string | undefined =>
  featureOf(assessment, feature)?.kind.sizes[0]?.property;

function findingsAt(assessment: Assessment, place: Place) {
  return JUDGED.flatMap((feature) => {
    const property = propertyOf(assessment, feature);
    const finding = property === undefined ? undefined : findingAt(assessment, property, place.id);
    return finding === undefined || finding.held.length + finding.missing.length === 0 ? [] : [{ feature, finding }];
  });
}

interface Seat {
  readonly place: Place;
  readonly found: ReturnType<typeof findingsAt>;
}
const isOut = (seat: Seat, features: readonly Judged[]): boolean =>
  seat.found.some(({ feature, finding }) => features.includes(feature) && finding.verdict === 'out');

function leave(seats: readonly Seat[]): Alternative {
  return possible({
    id: 'leave',
    words: 'Leave the seats as they are, lap at most to see the mark',
    figures: seats.map(({ place, found }) =>
      figure(
        place.name,
        found.map(({ finding }) => `${finding.title} ${finding.verdict}`).join(', ') || 'nothing read',
      ),
    ),
    verdict: worstVerdict(seats.flatMap(({ found }) => found.map(({ finding }) => finding.verdict))),
  });
}

function orders(
  assessment: Assessment,
  bad: readonly Seat[],
  kind: Kind,
  how: 'cut' | 'renewed',
): readonly OrderLine[] {
  const names = { cut: 'Cut the valve seats', renewed: 'Renew the seat inserts and cut them' } as const;
  return (['seat-width', 'seat-runout'] as const).flatMap((feature): readonly OrderLine[] => {
    const property = propertyOf(assessment, feature);
    const targets = bad.flatMap(({ place }) => {
      const asked =
        property === undefined
          ? undefined
          : (limitAt(assessment, property, place.id, 'new') ?? limitAt(assessment, property, place.id, 'wear'));
      return asked === undefined ? [] : [{ place: place.id, window: asked.window, from: origin(asked.limit) }];
    });
    if (property === undefined || targets.length === 0) return [];
    return [
      {
        id: `${feature}/${kind}`,
        operation: `${names[how]}: ${feature === 'seat-width' ? 'width' : 'run-out'}`,
        part: 'cylinder head',
        property,
        places: targets.map(({ place }) => place),
        measured: 'length',
        targets: targets.map(({ place, window }) => ({ place, window })),
        with: 'guides finished first: the pilot stands in its own guide',
        notes: [
          `Each seat to its own valve, marked with its cylinder. Limits: ${[...new Set(targets.map(({ from }) => from))].join('; ')}.`,
        ],
      },
    ];
  });
}

function cut(assessment: Assessment, bad: readonly Seat[], kind: Kind): Alternative {
  const deep = bad.filter((seat) => isOut(seat, DEEPER));
  const draft = {
    id: 'cut',
    words: `Cut the seats of ${listed(bad.map(({ place }) => place.name))}`,
    figures: bad.map(({ place, found }) =>
      figure(
        place.name,
        found
          .filter(({ finding }) => finding.verdict !== 'in')
          .map(({ finding }) => `${finding.title}: ${finding.words}`)
          .join('; '),
      ),
    ),
    verdict: 'no data' as const,
  };
  if (deep.length > 0)
    return blocked({
      ...draft,
      verdict: 'out',
      against: [
        `the valve of ${listed(deep.map(({ place }) => place.name))} lies too deep already, and a cut sinks it further`,
      ],
    });
  const thin = bad.filter((seat) => isOut(seat, ['valve-margin']));
  return possible({
    ...draft,
    against: ['how deep the cut goes is known only when it is made: measure stem height and installed height again'],
    orders: orders(assessment, bad, kind, 'cut'),
    buys:
      thin.length === 0
        ? []
        : [
            {
              part: `${kind} valve`,
              size: 'standard',
              count: thin.length,
              for: listed(thin.map(({ place }) => place.name)),
            },
          ],
  });
}

function insert(assessment: Assessment, bad: readonly Seat[], kind: Kind): Alternative {
  return possible({
    id: 'insert',
    words: `New seat inserts for ${listed(bad.map(({ place }) => place.name))}`,
    figures: [figure('inserts', `${bad.length}`)],
    verdict: 'no data',
    against: ['the interference of the insert is its maker’s'],
    orders: orders(assessment, bad, kind, 'renewed'),
    buys: [
      {
        part: `${kind} seat insert`,
        size: 'oversize of the pocket, to be measured',
        count: bad.length,
        for: listed(bad.map(({ place }) => place.name)),
      },
    ],
  });
}

function kindDecision(assessment: Assessment, kind: Kind, words: LengthWords): readonly Decision[] {
  const places = placesOf(assessment, 'seat-width').filter(({ valve }) => valve?.kind === kind);
  if (places.length === 0) return [];
  const question = {
    id: 'valve-seats',
    scope: kind,
    title: `Seats of the ${kind} valves`,
    question: `Are the seats of the ${kind} valves cut or renewed?`,
    area: 'valves',
    sources: ['shop-practice'],
  } as const;
  const missing = JUDGED.flatMap((feature) => {
    const property = propertyOf(assessment, feature);
    return property === undefined || feature === 'valve-margin' ? [] : notMeasured(assessment, feature, property);
  });
  if (missing.length > 0) return [waiting(question, missing)];
  const seats = places.map((place) => ({ place, found: findingsAt(assessment, place) }));
  const bad = seats.filter(({ found }) =>
    found.some(
      ({ finding }) => finding.verdict === 'out' || finding.verdict === 'near' || finding.verdict === 'check again',
    ),
  );
  const stays = leave(seats);
  const work = bad.length === 0 ? [] : [cut(assessment, bad, kind), insert(assessment, bad, kind)];
  return [
    decided(question, {
      alternatives: stays.verdict === 'out' ? [...work, stays] : [stays, ...work],
      proof:
        bad.length === 0
          ? 'Every seat is within its limits.'
          : `Not surely within its limits: ${listed(bad.map(({ place }) => place.name))}. The least work that cures it stands first.`,
      working: seats.flatMap(({ place, found }) =>
        found.map(
          ({ finding }) =>
            `${place.name}, ${finding.title}: ${finding.size === undefined ? 'not measured' : words.length(finding.size.value)}, ${finding.verdict}`,
        ),
      ),
      cautions: [
        'Guides come before seats; installed height, stem height and valve recess are measured again after either.',
      ],
    }),
  ];
}

/** Intake and exhaust seats. */
export const seats: Decider = (assessment, words) => [
  ...kindDecision(assessment, 'intake', words),
  ...kindDecision(assessment, 'exhaust', words),
];
