/** Lines of the record for photos, and the place that a photo shows, in words. */
import { type Engine, jointById } from '../engine/index.js';
import type { PhotoTaken } from '../record/index.js';
import type { Bench } from './bench.js';
import type { Writer } from './row-words.js';

const plain = (id: string): string => id.replaceAll('-', ' ').replace('@', ', ');

function holeWords(engine: Engine, rest: string): string {
  const [joint = '', hole = ''] = rest.split('/');
  return `${jointById(engine, joint)?.name ?? plain(joint)}, hole ${hole}`;
}

/** What a photo shows, for a person: `hole:head-left/7` is "left head, hole 7"; own words stay as they are. */
export function photoPlace(engine: Engine, about: string): string {
  const [, kind, rest = ''] = /^(act|place|hole):(.+)$/.exec(about) ?? [];
  if (kind === undefined) return about;
  return kind === 'hole' ? holeWords(engine, rest) : plain(rest);
}

export interface PlacedPhoto extends PhotoTaken {
  readonly entry: string;
}

/** Photos about a place that are not struck out, in the order in which they were taken; of the whole engine without a place. */
export function photosAbout({ state }: Bench, about?: string): readonly PlacedPhoto[] {
  return state.entries.flatMap(({ entry, reading, struck }) => {
    if (struck !== undefined || !reading.understood || reading.known.kind !== 'photo-taken') return [];
    const { data } = reading.known;
    return about === undefined || data.about === about ? [{ ...data, entry: entry.id }] : [];
  });
}

export const photoRows: { readonly [K in 'photo-taken']: Writer<K> } = {
  'photo-taken': (bench, data) => ({
    what: `Photo: ${photoPlace(bench.engine, data.about)}`,
    value: data.words.trim() === '' ? 'no words were given' : data.words,
    photo: data,
  }),
};
