import { describe, expect, it } from 'vitest';
import type { Command } from '../record/index.js';
import { engineOf, Scribe, SHEETS } from './bench.suite.js';
import { photoPlace, photosAbout, propose, recordView } from './index.js';

const engine = engineOf(SHEETS.v8);
const joint = engine.joints[0]!;
const photo = (about: string, words: string, bytes = 200_000): Command => ({
  kind: 'photo-taken',
  data: { photo: 'ab'.repeat(32), type: 'image/jpeg', bytes, width: 1600, height: 1200, about, words },
});

describe('photos in the record', () => {
  it('stand in a section of their own, with their place and words and with what the picture is', () => {
    const scribe = new Scribe(engine);
    scribe.append(photo(`hole:${joint.id}/1`, 'no chip left'));
    const [row] = recordView(scribe.bench).sections.find(({ key }) => key === 'photos')?.rows ?? [];
    expect(row).toMatchObject({
      what: `Photo: ${joint.name}, hole 1`,
      value: 'no chip left',
      by: 'Ada',
      photo: { photo: 'ab'.repeat(32), width: 1600 },
    });
  });

  it('say plainly that no words were given', () => {
    const scribe = new Scribe(engine);
    scribe.append(photo('the oil pan', ' '));
    expect(recordView(scribe.bench).sections.find(({ key }) => key === 'photos')?.rows[0]?.value).toBe(
      'no words were given',
    );
  });

  it('are found by their place, without those that were struck out', () => {
    const scribe = new Scribe(engine);
    const wrong = scribe.append(photo('act:all-covered', 'wrong stand'));
    scribe.append(photo('act:all-covered', 'covered and dated'));
    scribe.append(photo('the oil pan', 'as found'));
    scribe.append({ kind: 'struck-out', data: { entry: wrong, reason: 'another engine' } });
    expect(photosAbout(scribe.bench, 'act:all-covered').map(({ words }) => words)).toEqual(['covered and dated']);
    expect(photosAbout(scribe.bench)).toHaveLength(2);
  });

  it('name an act, a place or a hole in words, and keep own words as they are', () => {
    expect(photoPlace(engine, 'act:head-marks-seen@left')).toBe('head marks seen, left');
    expect(photoPlace(engine, 'place:main-3')).toBe('main 3');
    expect(photoPlace(engine, 'hole:no-such-joint/4')).toBe('no such joint, hole 4');
    expect(photoPlace(engine, 'oil pan: at the drain')).toBe('oil pan: at the drain');
  });

  it('are refused in one line when they are too large', () => {
    expect(propose(new Scribe(engine).bench, photo('the oil pan', '', 9_000_000))).toEqual({
      ok: false,
      fault: 'This picture has 9 MB; at most 8 MB are kept.',
    });
  });
});
