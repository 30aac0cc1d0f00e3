/**
 * Piston pins to pistons and rods: a pin runs in the piston and in the small end of its cylinder, so both clearances are judged for each
 * place. Alternatives side by side: as they are tagged, least in all, the worst as small as can be.
 */
import { type CostTable, leastTotal, smallestWorst } from '../../calc/selection/index.js';
import type { Alternative, Assessment, Place, VerdictWord } from '../model.js';
import {
  blocked,
  type Decider,
  decided,
  figure,
  limitAt,
  notMeasured,
  placesOf,
  placesText,
  possible,
  waiting,
  worstVerdict,
} from './decision.js';
import { type Closed, closed, judged, middle } from './judged.js';
import type { LengthWords } from './length-words.js';
import { less, measuredAt, type Sure } from './measured-at.js';

const QUESTION = {
  id: 'pins',
  scope: 'all',
  title: 'Piston pins',
  question: 'Which pin goes into which piston and rod?',
  area: 'pistons',
  sources: ['derived-here'],
} as const;

/** A hole that the pin of a cylinder runs in. */
interface Hole {
  readonly name: 'piston' | 'rod';
  readonly size: Sure;
  readonly asked: Closed;
}
interface PinPlace {
  readonly place: Place;
  readonly holes: readonly Hole[];
}
interface Pin {
  readonly place: Place;
  /** Where it runs in the piston, and where it runs in the rod. */
  readonly size: Readonly<Record<Hole['name'], Sure>>;
}

const HOLES = [
  { feature: 'pin-bore', property: 'pin-bore.diameter', clearance: 'pin.clearance-in-piston', name: 'piston' },
  { feature: 'small-end-bore', property: 'small-end-bore.diameter', clearance: 'pin.clearance-in-rod', name: 'rod' },
] as const;

export const pins: Decider = (assessment, words) => {
  const places = placesOf(assessment, 'piston-pin');
  if (places.length === 0) return [];
  const asked = HOLES.filter((hole) =>
    places.every((place) => askedAt(assessment, hole.clearance, place) !== undefined),
  );
  const missing = [
    ...notMeasured(assessment, 'piston-pin', 'piston-pin.diameter'),
    ...asked.flatMap(({ feature, property }) => notMeasured(assessment, feature, property)),
    ...(asked.length === 0
      ? ['pin clearances: the sheet prints no window with both ends, neither for piston nor for rod']
      : []),
  ];
  if (missing.length > 0) return [waiting(QUESTION, missing)];
  const holes = places.map((place) => ({ place, holes: holesOf(assessment, place, asked) }));
  const own = places.flatMap((place): readonly Pin[] => {
    const piston = measuredAt(assessment, 'piston-pin', place, 'mean', ({ id }) => /^(front|rear)/.test(id));
    const rod = measuredAt(assessment, 'piston-pin', place, 'mean', ({ id }) => id.startsWith('middle'));
    return piston && rod ? [{ place, size: { piston, rod } }] : [];
  });
  const unasked = HOLES.filter((hole) => !asked.includes(hole)).map(
    ({ name }) => `The sheet prints no clearance window of the pin in the ${name}: that side is not judged.`,
  );
  return [decidedPins(holes, own, words, unasked)];
};

function askedAt(assessment: Assessment, clearance: string, place: Place): Closed | undefined {
  const found = limitAt(assessment, clearance, place.id, 'new');
  return found && closed(found.window);
}

function holesOf(assessment: Assessment, place: Place, kinds: readonly (typeof HOLES)[number][]): readonly Hole[] {
  return kinds.flatMap(({ feature, clearance, name }) => {
    const [size, asked] = [measuredAt(assessment, feature, place, 'mean'), askedAt(assessment, clearance, place)];
    return size && asked ? [{ name, size, asked }] : [];
  });
}

function decidedPins(
  places: readonly PinPlace[],
  own: readonly Pin[],
  words: LengthWords,
  cautions: readonly string[],
) {
  const table = (of: (deviations: readonly number[]) => number): CostTable =>
    places.map(({ holes }) => own.map((pin) => costOf(holes, pin, of)));
  const sum = (list: readonly number[]) => list.reduce((total, one) => total + one, 0);
  const total = leastTotal(table(sum));
  const worst = smallestWorst(table((list) => Math.max(...list)));
  const tagged = arranged(
    'as-tagged',
    'Each pin in the piston that it is tagged with',
    places,
    own,
    own.map((_, at) => at),
    words,
  );
  const better = (a: Alternative, b: Alternative) =>
    worstVerdict([a.verdict, b.verdict]) === b.verdict && a.verdict !== b.verdict;
  const alternatives = [
    total.ok
      ? arranged('least-total', 'Nearest to the middle of the windows in all', places, own, total.value.columnOf, words)
      : noneFits(places, total.fault.rows, 'least-total'),
    ...(worst.ok
      ? [
          arranged(
            'smallest-worst',
            'The worst one as near to the middle as can be',
            places,
            own,
            worst.value.columnOf,
            words,
          ),
        ]
      : []),
  ];
  const [first] = alternatives;
  const kept = first === undefined || !better(first, tagged);
  return decided(QUESTION, {
    alternatives: kept ? [tagged, ...alternatives] : [...alternatives, tagged],
    proof: total.ok
      ? `Of all ways to share out ${own.length} pins with every clearance in its window, none lies nearer in all than ${words.length(total.value.total / 1e9)} (assignment, proven by prices that sum to ${words.length(total.value.bound / 1e9)}).`
      : 'No way of sharing out these pins keeps every clearance in its window.',
    working: places.map(
      ({ place, holes }) =>
        `${place.name}: ${holes.map(({ name, size, asked }) => `${name} ${words.sure(size.value, size.u)}, clearance asked ${words.window(asked)}`).join('; ')}.`,
    ),
    cautions: [
      ...cautions,
      'A pin and a piston that have run together stay together unless a clearance says otherwise (common practice).',
    ],
  });
}

/** Distances from the middle of the windows in whole nanometres; infinite where one clearance is outside. */
function costOf(holes: readonly Hole[], pin: Pin, of: (deviations: readonly number[]) => number): number {
  const fits = holes.map((hole) => ({ fit: nanometres(clearanceOf(hole, pin).value), asked: hole.asked }));
  const inside = fits.every(({ fit, asked }) => nanometres(asked.low) <= fit && fit <= nanometres(asked.high));
  return inside
    ? of(fits.map(({ fit, asked }) => Math.abs(fit - nanometres(middle(asked)))))
    : Number.POSITIVE_INFINITY;
}
const nanometres = (length: number): number => Math.round(length * 1e9);

const clearanceOf = (hole: Hole, pin: Pin): Sure => less(hole.size, pin.size[hole.name]);

function arranged(
  id: string,
  title: string,
  places: readonly PinPlace[],
  own: readonly Pin[],
  pinOf: readonly number[],
  words: LengthWords,
): Alternative {
  const verdicts: VerdictWord[] = [];
  const against: string[] = [];
  const figures = places.map(({ place, holes }, at) => {
    const pin = own[pinOf[at] ?? -1] as Pin;
    const texts = holes.map((hole) => {
      const clearance = clearanceOf(hole, pin);
      verdicts.push(judged(clearance, hole.asked));
      if (costOf([hole], pin, () => 0) > 0)
        against.push(
          `${place.name}: clearance in the ${hole.name} ${words.length(clearance.value)} is outside ${words.window(hole.asked)}.`,
        );
      return `in the ${hole.name} ${words.sure(clearance.value, clearance.u)}`;
    });
    return figure(place.name, `pin ${pin.place.id}: ${texts.join(', ')}`);
  });
  const drawn = { id, words: title, figures, verdict: worstVerdict(verdicts) };
  return against.length > 0 ? blocked({ ...drawn, against }) : possible(drawn);
}

const noneFits = (places: readonly PinPlace[], rows: readonly number[], id: string): Alternative =>
  blocked({
    id,
    words: 'Nearest to the middle of the windows in all',
    figures: [],
    verdict: 'out',
    against: [
      `${placesText(rows.flatMap((at) => places[at]?.place ?? []))} find too few pins that fit: ream or bush, or get other pins.`,
    ],
  });
