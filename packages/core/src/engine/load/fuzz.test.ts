import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadSheet } from './index.js';

const SHEETS = [
  'sheets/quernside-51-v8',
  'sheets/pellgarth-t4-twin-cam',
  'sheets/tollbarrow-6w-diesel-six',
  'cases/recipes/04-interleaved-groups',
].map((name) => readFileSync(new URL(`../../../../../${name}.yaml`, import.meta.url), 'utf8'));

/** Whatever the text: an engine that survives JSON, or faults of one line each that say something. */
function answersClearly(text: string): void {
  const loaded = loadSheet(text);
  if (loaded.ok) {
    expect(JSON.parse(JSON.stringify(loaded.value))).toEqual(loaded.value);
    return;
  }
  expect(loaded.fault.length).toBeGreaterThan(0);
  for (const fault of loaded.fault) {
    expect(fault.message.length).toBeGreaterThan(10);
    expect(fault.message).not.toMatch(/[\n\r]|undefined|\[object|NaN/);
    if (fault.line !== undefined) expect(fault.line).toBeLessThanOrEqual(text.split('\n').length);
  }
}

const mutation = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  length: fc.nat(60),
  put: fc.oneof(
    fc.string({ maxLength: 12 }),
    fc.constantFrom(
      '\n',
      '  ',
      '{',
      '}',
      '[',
      ']',
      ': ',
      '- ',
      '~',
      '-1',
      '1e9',
      'null',
      '*a',
      '&a ',
      '"',
      '\t',
      'no deg',
      '0 mm',
      '__proto__: 1',
      'constructor',
    ),
  ),
});
function mutated(text: string, changes: readonly { at: number; length: number; put: string }[]): string {
  return changes.reduce((now, { at, length, put }) => {
    const start = Math.floor(at * now.length);
    return now.slice(0, start) + put + now.slice(start + length);
  }, text);
}

describe('loadSheet never throws', () => {
  it('on random text', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 200 }), answersClearly), { numRuns: 100 });
  });

  it('on random trees written as YAML would be', () => {
    const tree = fc.jsonValue({ maxDepth: 5 }).map((value) => JSON.stringify(value));
    fc.assert(fc.property(tree, answersClearly), { numRuns: 100 });
  });

  it('on trees with the keys of a sheet and values of any shape', () => {
    const anything = fc.jsonValue({ maxDepth: 3 });
    const sheet = fc.record(
      {
        gudgeon: fc.constant(1),
        name: fc.constant('x'),
        layout: anything,
        cam: anything,
        heads: anything,
        joints: anything,
        limits: anything,
        inspection: anything,
        stock: anything,
        machining: anything,
        figures: anything,
        sources: anything,
      },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(sheet, (value) => answersClearly(JSON.stringify(value))),
      { numRuns: 100 },
    );
  });

  it('on good sheets with a few places changed', () => {
    fc.assert(
      fc.property(fc.constantFrom(...SHEETS), fc.array(mutation, { minLength: 1, maxLength: 4 }), (text, changes) => {
        answersClearly(mutated(text, changes));
      }),
      { numRuns: 40 },
    );
  });

  it('on good sheets with lines lost or changing places', () => {
    fc.assert(
      fc.property(fc.constantFrom(...SHEETS), fc.nat(200), fc.nat(200), fc.boolean(), (text, from, to, drop) => {
        const lines = text.split('\n');
        const [line = ''] = lines.splice(from % lines.length, 1);
        if (!drop) lines.splice(to % lines.length, 0, line);
        answersClearly(lines.join('\n'));
      }),
      { numRuns: 40 },
    );
  });
});

const deep = `gaps:\n${Array.from({ length: 1200 }, (_, depth) => `${' '.repeat(depth + 1)}-`).join('\n')}`;
const bomb = [
  'a: &a [x, x, x, x, x, x, x, x, x]',
  ...'bcdefghi'.split('').map((name, at) => `${name}: &${name} [${Array(9).fill(`*${'abcdefgh'[at]}`).join(', ')}]`),
].join('\n');
const HOSTILE: readonly (readonly [string, string, string])[] = [
  ['fifty million characters', 'x'.repeat(50_000_000), 'too-long'],
  ['a line of half a million list marks', '- '.repeat(400_000), 'line-too-long'],
  ['half a million open brackets', '[\n'.repeat(400_000), 'too-deep'],
  ['half a million open braces with keys', '{a:\n'.repeat(200_000), 'too-deep'],
  ['a list in a list, twelve hundred deep', deep, 'too-deep'],
  ['a list in a list, a thousand deep in one line', `gaps:\n  ${'- '.repeat(950)}x`, 'too-deep'],
  [
    'keys in keys, forty deep',
    Array.from({ length: 40 }, (_, depth) => `${' '.repeat(depth)}a:`).join('\n'),
    'too-deep',
  ],
  ['twenty-five thousand keys', Array.from({ length: 25_000 }, (_, at) => `k${at}: 1`).join('\n'), 'too-many'],
  ['twenty-five thousand entries', `limits:\n${'  - {}\n'.repeat(25_000)}`, 'too-many'],
  ['aliases that multiply to thousands of millions', bomb, 'alias'],
];

describe('a hostile file is refused in one line and in good time', () => {
  it.each(HOSTILE)('%s', (_, text, code) => {
    const started = performance.now();
    const loaded = loadSheet(text);
    expect(performance.now() - started).toBeLessThan(5000);
    expect(loaded.ok ? [] : [...new Set(loaded.fault.map((each) => each.code))]).toEqual([code]);
  });
});

it('hundreds of rows that could all be parts of each other, with a thousand digits before a word, are checked in good time', () => {
  const rows = [
    'cylinder bore, what: diameter',
    'piston, what: diameter',
    'piston, what: clearance',
    `piston, what: diameter ${'1'.repeat(1200)} oversized`,
    `valve spring, what: load at ${'1'.repeat(1200)} inches`,
    `valve, what: "${'stem guide ring '.repeat(90)}"`,
  ].flatMap((row) => Array(130).fill(`  - { part: ${row}, whenNew: 80.00..80.02 mm }`));
  const text = `gudgeon: 1\nname: x\nlayout: { form: inline, cylinders: [1] }\nlimits:\n${rows.join('\n')}\n`;
  const started = performance.now();
  const loaded = loadSheet(text);
  expect(performance.now() - started).toBeLessThan(10_000);
  expect(loaded.ok && loaded.value.limits.length).toBe(780);
});
