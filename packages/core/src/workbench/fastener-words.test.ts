import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { jointById } from '../engine/index.js';
import { loadSheet } from '../engine/load/index.js';
import { judgeFastener } from '../plan/index.js';
import { mm } from '../quantity/index.js';
import { judgementWords } from './fastener-words.js';

const loaded = loadSheet(readFileSync(new URL('../../../../sheets/quernside-51-v8.yaml', import.meta.url), 'utf8'));
if (!loaded.ok) throw new Error('the invented V8 does not load');
const head = jointById(loaded.value, 'head-left');
if (head === undefined) throw new Error('the invented V8 has no head joint');

describe('what the bench says about a bolt that bottoms', () => {
  it('says how far it reaches, and that it clamps nothing', () => {
    // Long bolt of the invented V8: 118.5 mm, 84 mm clamped, hole 48 mm deep; 133 mm reach 49 mm.
    expect(judgementWords(judgeFastener(head, '1', { length: mm(133) }))).toMatch(
      /^Hole 1: too long by 14\.5 mm; it reaches 49\.0 mm into the hole and bottoms before it clamps\. This hole takes long head bolt/,
    );
  });

  it('says only that it is too long where the hole has no bottom', () => {
    expect(judgementWords(judgeFastener(head, '2', { fastener: 'long' }))).toMatch(/^Hole 2: too long by 26\.0 mm\. /);
  });
});
