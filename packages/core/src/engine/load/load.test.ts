import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { loadSheet } from './index.js';

const read = (name: string) => readFileSync(new URL(`../../../../../sheets/${name}.yaml`, import.meta.url), 'utf8');

describe('the invented sheets', () => {
  it('load without a fault', () => {
    const engine = loadSheet(read('quernside-51-v8'));
    expect(engine.ok ? [] : engine.fault).toEqual([]);
  });

  it('survive being written as JSON and read again', () => {
    const engine = loadSheet(read('quernside-51-v8'));
    expect(JSON.parse(JSON.stringify(engine))).toEqual(engine);
  });
});
