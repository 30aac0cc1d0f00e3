/** Position, end, face and state of every part that must return: valve gear by its tags, caps, rods and sets by their acts. */
import { valveName } from '../../engine/index.js';
import { type ActStand, type PartPlace, registerOf } from '../../plan/index.js';
import { givenBy } from '../bench.js';
import { NOT_AGAIN } from '../part-choices.js';
import type { RegistersView } from '../work-views.js';
import { answeredBy } from './finished-elsewhere.js';
import { type Ground, givenOf } from './work-ground.js';

type Row = RegistersView['parts'][number];

/** Acts that tell a part apart, what they tell, and the act that puts it back where there is one. */
const TOLD: Readonly<Record<string, { readonly part: string; readonly back?: string }>> = {
  'main-cap-marked': { part: 'main cap', back: 'main-cap-on' },
  'rod-marked': { part: 'rod, cap and piston', back: 'rod-cap-on' },
  'valve-gear-tagged': { part: 'follower, pushrod, rocker', back: 'follower-in' },
  'shells-placed': { part: 'bearing shells' },
  'cam-bearings-sorted': { part: 'cam bearings', back: 'cam-bearings-in' },
  'rings-laid-to-bore': { part: 'ring set', back: 'rings-on' },
};
/** Rules that the register of parts names: each is a rule of the plan. */
export const REGISTER_RULES: readonly string[] = Object.entries(TOLD).flatMap(([rule, { back }]) =>
  back === undefined ? [rule] : [rule, back],
);

export function partRows(ground: Ground): readonly Row[] {
  const { bench, standing } = ground;
  const tagged = registerOf(bench.engine, bench.facts).places.map((place) => taggedRow(ground, place));
  const told = [...standing.stands.values()].filter(
    ({ act }) => TOLD[act.rule] !== undefined && answeredBy(bench, act) === undefined,
  );
  return [...told.map((stand) => toldRow(ground, stand)), ...tagged];
}

function taggedRow({ bench }: Ground, place: PartPlace): Row {
  const {
    position = '',
    end = '',
    face = '',
    condition = '',
  } = { position: valveName(bench.engine, place.valve), ...place.tag?.data };
  const given = givenBy(bench, place.fitted?.entry ?? place.tag?.entry);
  return {
    part: place.part,
    place: position,
    position,
    end,
    face,
    condition,
    state: tagState(place),
    ...(given && { given }),
  };
}

function tagState({ state, tag }: PartPlace): Row['state'] {
  if (state === 'fitted') return 'back';
  if (tag === undefined) return 'open';
  return tag.data.condition === NOT_AGAIN ? 'left-out' : 'tagged';
}

function toldRow(ground: Ground, { act, held, state }: ActStand): Row {
  const { part = '', back } = TOLD[act.rule] ?? {};
  const answer = held.done?.data.answer;
  const marks = answer?.kind === 'register' ? answer.marks : undefined;
  /** Told in words alone, by a record that kept no marks apart. */
  const words = answer !== undefined && 'words' in answer ? (answer.words ?? '') : '';
  const given = held.done ?? held.skipped;
  return {
    part,
    place: act.place.name,
    position: marks?.position ?? words,
    end: marks?.end ?? '',
    face: marks?.face ?? '',
    condition: marks?.condition ?? '',
    state:
      state === 'skipped'
        ? 'not-told'
        : toldState(ground, held.done !== undefined, marks?.condition, backAct(act.place.id, back)),
    ...(held.skipped && { why: held.skipped.data.reason }),
    ...(given && { given: givenOf(given) }),
    act: act.id,
  };
}

const backAct = (place: string, back: string | undefined): string | undefined =>
  back === undefined ? undefined : place === 'engine' ? back : `${back}@${place}`;

function toldState(
  { standing }: Ground,
  told: boolean,
  condition: string | undefined,
  back: string | undefined,
): Row['state'] {
  if (!told) return 'open';
  if (condition === NOT_AGAIN) return 'left-out';
  return back !== undefined && standing.stands.get(back)?.state === 'done' ? 'back' : 'tagged';
}
