/** D10: pistons, pins and rods of one mass: leave, pair them well, or take metal off. */
import { removals } from '../../calc/balance/index.js';
import { massPairs } from '../../calc/selection/index.js';
import { grams, type Mass } from '../../quantity/index.js';
import { limitsOf, newWindow } from '../limits/index.js';
import type { Alternative, Assessment, Decision, Place, Size } from '../model.js';
import {
  type Decider,
  decided,
  featureOf,
  figure,
  notMeasured,
  origin,
  placesOf,
  possible,
  sizeAt,
  waiting,
} from './decision.js';
import { judged } from './judged.js';
import { massWords } from './other-words.js';

const FEATURES = ['piston-mass', 'pin-mass', 'rod-big-end-mass', 'rod-small-end-mass'] as const;
type Part = (typeof FEATURES)[number];
/** What the trade balances to without a figure from the maker. Common practice, no source. */
const USUAL_MATCH = grams(2);

interface Piece {
  readonly place: Place;
  readonly size: Size;
}
interface Allowed {
  readonly value: number;
  readonly from: string;
}

/** Spreads that bind a part: its own, and of a rod's end that of the whole rod. */
const spreadsOf = (part: Part): readonly string[] =>
  part.startsWith('rod-') ? [`${part}.between`, 'rod-mass.between'] : [`${part}.between`];

/** Spread that one set may have: the narrowest of the sheet's limits and its machining note, else the usual one. */
function allowedOf({ engine }: Assessment, part: Part): Allowed {
  const rows = spreadsOf(part).flatMap((property) => limitsOf(engine, property, {}));
  const printed = rows.flatMap((row) => {
    const high = newWindow(row)?.high;
    return high === undefined ? [] : [{ value: high, from: origin(row) }];
  });
  const stated = engine.machining?.massMatch;
  const options = [...printed, ...(stated ? [{ value: stated.value, from: stated.from.text }] : [])];
  return (
    options.toSorted((one, other) => one.value - other.value)[0] ?? {
      value: USUAL_MATCH,
      from: 'common practice, no source',
    }
  );
}

const spread = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);
/** Difference of two weighings: the doubt of both. */
const doubtOf = (pieces: readonly Piece[]): number | undefined =>
  pieces.some(({ size }) => size.u === undefined)
    ? undefined
    : Math.SQRT2 * Math.max(...pieces.map(({ size }) => size.u ?? 0));

function leave(pieces: readonly Piece[], allowed: Allowed): Alternative {
  const values = pieces.map(({ size }) => size.value);
  const difference = spread(values);
  return possible({
    id: 'leave',
    words: `Leave them as they are: ${massWords(difference)} apart`,
    figures: [
      figure('heaviest less lightest', massWords(difference)),
      figure('allowed', `${massWords(allowed.value)} (${allowed.from})`),
    ],
    verdict: judged({ value: difference, u: doubtOf(pieces) }, { high: allowed.value }),
  });
}

/** Everything heavier than the lightest loses the difference. */
function lighten(part: Part, pieces: readonly Piece[], allowed: Allowed, title: string): Alternative {
  const values = pieces.map(({ size }) => size.value as Mass);
  const lightest = Math.min(...values) as Mass;
  const off = removals(values, lightest);
  const heavy = pieces.flatMap(({ place }, at) =>
    (off[at] ?? 0) > allowed.value / 2 ? [{ place, off: off[at] ?? 0 }] : [],
  );
  return possible({
    id: 'lighten',
    words: `Bring all to the lightest, ${massWords(lightest)}`,
    figures: heavy.map(({ place, off: grams }) => figure(place.name, `take off ${massWords(grams)}`)),
    verdict: 'in',
    against: ['metal only from where its maker allows it: thick bosses, never ribs, lands or bolt seats'],
    orders: [
      {
        id: `${part}/all`,
        operation: `Match the weights: ${title.toLowerCase()}`,
        part: title.toLowerCase(),
        property: `${part}.mass`,
        places: pieces.map(({ place }) => place.id),
        target: { low: lightest - allowed.value / 2, high: lightest + allowed.value / 2 },
        measured: 'mass',
        notes: heavy.map(({ place, off: grams }) => `${place.name}: take off ${massWords(grams)}.`),
      },
    ],
  });
}

/** Pistons with the pins that make the joint masses most alike: no metal is taken. */
function paired(assessment: Assessment, pieces: readonly Piece[], allowed: Allowed): readonly Alternative[] {
  const pins = placesOf(assessment, 'pin-mass').flatMap((place) => {
    const size = sizeAt(assessment, 'pin-mass.mass', place.id);
    return size === undefined ? [] : [{ place, size }];
  });
  const found = massPairs(
    pieces.map(({ size }) => size.value as Mass),
    pins.map(({ size }) => size.value as Mass),
  );
  if (pins.length < pieces.length || !found.ok) return [];
  const u = doubtOf([...pieces, ...pins]);
  return [
    possible({
      id: 'pair',
      words: `Exchange pins between the pistons: ${massWords(found.value.spread)} apart`,
      figures: pieces.map(({ place }, at) => {
        const pin = pins[found.value.partnerOf[at] ?? at] as Piece;
        return figure(place.name, `pin of ${pin.place.name}: together ${massWords(found.value.sums[at] ?? 0)}`);
      }),
      verdict: judged(
        { value: found.value.spread, u: u === undefined ? undefined : Math.SQRT2 * u },
        { high: allowed.value },
      ),
      against: ['used pins stay with the piston and bush in which they ran: for new parts only'],
    }),
  ];
}

function partDecision(assessment: Assessment, part: Part): readonly Decision[] {
  const feature = featureOf(assessment, part);
  if (feature === undefined || feature.places.length < 2) return [];
  const { title, area } = feature.kind;
  const question = {
    id: 'mass-match',
    scope: part,
    title,
    question: 'Do they weigh alike, and what comes off where?',
    area,
    sources: ['shop-practice'],
  } as const;
  const missing = notMeasured(assessment, part, `${part}.mass`);
  if (missing.length > 0) return [waiting(question, missing)];
  const pieces = feature.places.flatMap((place) => {
    const size = sizeAt(assessment, `${part}.mass`, place.id);
    return size === undefined ? [] : [{ place, size }];
  });
  const allowed = allowedOf(assessment, part);
  const stays = leave(pieces, allowed);
  const others = [
    ...(part === 'piston-mass' ? paired(assessment, pieces, allowed) : []),
    lighten(part, pieces, allowed, title),
  ];
  const surely = others.filter(({ verdict }) => verdict === 'in');
  return [
    decided(question, {
      alternatives:
        stays.verdict === 'in'
          ? [stays, ...others]
          : [...surely, stays, ...others.filter((one) => !surely.includes(one))],
      proof: `Allowed in one set: ${massWords(allowed.value)} (${allowed.from}).`,
      working: pieces.map(({ place, size }) => `${place.name}: ${massWords(size.value)}`),
      cautions:
        part === 'piston-mass'
          ? [
              'What counts on the crankshaft is piston, pin, rings and rod together: the bobweight is computed from all of them.',
            ]
          : [],
    }),
  ];
}

/** Masses that an engine has more than one of. */
export const masses: Decider = (assessment) => FEATURES.flatMap((part) => partDecision(assessment, part));
