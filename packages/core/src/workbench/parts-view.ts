/** Lifters, pushrods, rockers and their like: which part goes to which place, the same end up and the same face to the front. */
import { type Marks, registerTray, type Shown } from '../drawing/index.js';
import { valveKey, valveName } from '../engine/index.js';
import { type PartKind, type PartPlace, registerOf } from '../plan/index.js';
import { type Bench, givenBy } from './bench.js';
import { partsCautions } from './cautions.js';
import { NOT_AGAIN } from './part-choices.js';
import type { PartPlaceView, PartsView } from './views.js';

const tagWords = (place: PartPlace): string | undefined => {
  const tag = place.tag?.data;
  if (tag === undefined) return undefined;
  const end = tag.end === undefined ? [] : [`this end up: ${tag.end}`];
  const face = tag.face === undefined ? [] : [`this face to the front: ${tag.face}`];
  return [tag.condition, ...end, ...face].join('; ');
};

const fittedWords = (place: PartPlace): string => {
  const fitted = place.fitted?.data;
  if (fitted === undefined) return '';
  const lube = fitted.lubricant === undefined ? '' : `, ${fitted.lubricant}`;
  return `${fitted.from === 'new' ? 'new part' : 'its own part'}${lube}`;
};

function ruleWords(place: PartPlace): string {
  if (place.tag === undefined)
    return 'Nothing tagged for this place: a new part, or the one that you know came from here.';
  if (place.tag.data.condition === NOT_AGAIN) return 'A new part goes here: the old one is not to be used again.';
  return 'Its own part goes back here, or a new one.';
}

/** "cylinder 4 exhaust 2" as the tray writes it: "4 E2". */
const shortName = (name: string): string =>
  name
    .replace(/^cylinder /, '')
    .replace(/ intake ?/, ' I')
    .replace(/ exhaust ?/, ' E');

function placeView(bench: Bench, place: PartPlace): PartPlaceView {
  const given = givenBy(bench, place.fitted?.entry);
  const tag = tagWords(place);
  const { end, face, condition } = place.tag?.data ?? {};
  return {
    part: place.part,
    valve: place.valve,
    place: valveName(bench.engine, place.valve),
    short: shortName(valveName(bench.engine, place.valve)),
    ...(tag !== undefined && { tag }),
    ...(end !== undefined && { end }),
    ...(face !== undefined && { face }),
    ...(condition !== undefined && { condition }),
    mayReturn: condition !== NOT_AGAIN,
    rule: ruleWords(place),
    state: place.state === 'wrong' ? 'hindered' : place.state,
    ...(given && { fitted: { ...given, words: fittedWords(place) } }),
  };
}

function marksOf(places: readonly PartPlace[], part: PartKind): Marks {
  const own = places.filter((place) => place.part === part);
  const first = own.find((place) => place.state === 'open');
  const state = (place: PartPlace) => {
    if (place.state === 'fitted') return 'done';
    if (place.state === 'wrong') return 'wrong';
    return place === first ? 'lit' : 'idle';
  };
  return Object.fromEntries(own.map((place) => [valveKey(place.valve), state(place)]));
}

function tagMarks(places: readonly PartPlace[], part: PartKind): Marks {
  const own = places.filter((place) => place.part === part);
  const first = own.find((place) => place.tag === undefined);
  const state = (place: PartPlace) => (place.tag !== undefined ? 'done' : place === first ? 'lit' : 'idle');
  return Object.fromEntries(own.map((place) => [valveKey(place.valve), state(place)]));
}

/** The register of parts that return to their places. */
export function partsView(bench: Bench, shown: Shown = {}): PartsView {
  const register = registerOf(bench.engine, bench.facts);
  const done = register.places.filter((place) => place.state === 'fitted').length;
  const trays = (marks: typeof marksOf) =>
    Object.fromEntries(
      register.parts.map(
        (part) => [part, registerTray(bench.engine, part, marks(register.places, part), shown)] as const,
      ),
    );
  return {
    parts: register.parts,
    places: register.places.map((place) => placeView(bench, place)),
    notes: register.notes,
    progress: { done, of: register.places.length, words: `${done} of ${register.places.length} fitted` },
    finished: register.finished && register.parts.length > 0,
    cautions: partsCautions(),
    figures: trays(marksOf),
    tagFigures: trays(tagMarks),
  };
}
