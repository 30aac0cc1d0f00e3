import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { loadSheet, sheetJsonSchema } from './index.js';

const read = (path: string) => readFileSync(new URL(`../../../../../${path}`, import.meta.url), 'utf8');

describe('the page on sheets', () => {
  const example = /```yaml\n([\s\S]*?)```/.exec(read('docs/sheet.md'))?.[1] ?? '';

  it('shows an example that loads without fault and caution', () => {
    const loaded = loadSheet(example);
    expect(loaded.ok ? loaded.value.cautions : loaded.fault).toEqual([]);
    expect(loaded.ok && loaded.value.name).toBe('Sallow Mill 2, marine twin');
  });

  it('reads origins as its table says', () => {
    const loaded = loadSheet(example);
    if (!loaded.ok) throw new Error('the example does not load');
    const { crankTrain, limits, valveGear } = loaded.value;
    expect(crankTrain.bore?.from).toEqual({ standing: 'manual', text: 'manual book2', source: 'book2' });
    expect(crankTrain.stroke?.from).toMatchObject({ standing: 'manual', source: 'book2' });
    expect(valveGear?.lash?.exhaust.hot?.from.standing).toBe('memory');
    expect(limits[2]?.from.standing).toBe('measured');
  });
});

describe('the published JSON Schema', () => {
  const schema = sheetJsonSchema();

  it('is the one that the loader uses (npm run docs writes it anew)', () => {
    expect(JSON.parse(read('docs/schema/sheet.schema.json'))).toEqual(schema);
  });

  it('is draft 2020-12, names every section, and refuses keys that it does not know', () => {
    expect(schema).toMatchObject({
      $schema: 'https://json-schema.org/draft/2020-12/schema',
      type: 'object',
      additionalProperties: false,
    });
    expect(schema).toMatchObject({ required: ['gudgeon', 'name', 'layout'] });
    expect(Object.keys(schema.properties as object).sort()).toEqual(
      [
        'cam',
        'crankTrain',
        'defaultFrom',
        'description',
        'figures',
        'fluids',
        'fuel',
        'gaps',
        'gudgeon',
        'heads',
        'inspection',
        'invented',
        'joints',
        'layout',
        'limits',
        'machining',
        'name',
        'runIn',
        'running',
        'sources',
        'stock',
        'valveGear',
      ].sort(),
    );
  });

  it('describes every key of the first level of a stage, so that an editor can help', () => {
    const text = JSON.stringify(schema);
    for (const phrase of ['Tighten to.', 'Turn on by.', 'Accept within.', 'clockwise seen from the front']) {
      expect(text.toLowerCase()).toContain(phrase.toLowerCase());
    }
  });
});
