import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalText } from './canonical.js';
import { draftOf, SAMPLES_V1 } from './samples.suite.js';
import { entryHash, hashOfBytes, hashOfText, NO_PREVIOUS, sealEntry } from './seal.js';

describe('canonical text', () => {
  // RFC 8785, section 3.2.2, sample input and output (recalled, not re-read).
  it('writes the sample of the canonicalization standard as printed there', () => {
    const sample = {
      numbers: [333333333.3333333, 1e30, 4.5, 2e-3, 1e-27],
      string: '\u20ac$\u000f\u000aA\'\u0042\u0022\u005c\\"/',
      literals: [null, true, false],
    };
    expect(canonicalText(sample)).toBe(
      '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}',
    );
  });

  // RFC 8785, section 3.2.3, sorting example (recalled): order by UTF-16 code units, so the emoji sorts before U+FB33.
  it('sorts fields by UTF-16 code units, not by code points', () => {
    const sample = { '\u20ac': 1, '\r': 2, '\ufb33': 3, '1': 4, '\u{1f600}': 5, '\u0080': 6, '\u00f6': 7 };
    expect(Object.keys(JSON.parse(canonicalText(sample)))).toHaveLength(7);
    expect(canonicalText(sample)).toBe('{"\\r":2,"1":4,"\u0080":6,"\u00f6":7,"\u20ac":1,"\u{1f600}":5,"\ufb33":3}');
  });

  it('is the same whatever order the fields were written in, and reads back as the same value', () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 4 }), (value) => {
        const text = canonicalText(value);
        expect(canonicalText(JSON.parse(text))).toBe(text);
        const turned = (one: unknown): unknown => {
          if (Array.isArray(one)) return one.map(turned);
          if (typeof one !== 'object' || one === null) return one;
          return Object.fromEntries(
            Object.entries(one)
              .reverse()
              .map(([name, inner]) => [name, turned(inner)]),
          );
        };
        expect(canonicalText(turned(value))).toBe(text);
      }),
    );
  });

  it('does not write what JSON cannot hold', () => {
    expect(() => canonicalText(Number.NaN)).toThrow(TypeError);
    expect(() => canonicalText({ reading: Number.POSITIVE_INFINITY })).toThrow(TypeError);
    let deep: unknown = 1;
    for (let level = 0; level < 100_000; level += 1) deep = [deep];
    expect(() => canonicalText(deep)).toThrow(TypeError);
  });
});

describe('hash', () => {
  it('of bytes is that of the text they write', () => {
    expect(hashOfBytes(new TextEncoder().encode('Ø 11 mm'))).toBe(hashOfText('Ø 11 mm'));
  });

  // FIPS 180-4 example values published with the standard (recalled): "abc" and the empty message.
  it('is SHA-256', () => {
    expect(hashOfText('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
    expect(hashOfText('')).toBe('e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855');
  });

  it('is that of the same bytes by the runtime’s own implementation', async () => {
    const text = 'hole 7: 84 N·m, Ø 11 mm';
    const bytes = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text));
    expect(hashOfText(text)).toBe(Buffer.from(bytes).toString('hex'));
  });

  const draft = draftOf({ kind: 'note', data: SAMPLES_V1.note }, 1);

  it('covers every field of the entry', () => {
    const sealed = sealEntry({ ...draft, instrument: 'wrench 3', raw: 'dowel' }, NO_PREVIOUS);
    const changes = {
      id: 'other',
      job: 'other',
      device: 'other',
      counter: 9,
      at: 'other',
      person: 'other',
      instrument: 'other',
      kind: 'other',
      version: 9,
      raw: 'other',
      data: { about: 'head', text: 'other' },
      previous: 'other',
    };
    for (const [field, value] of Object.entries(changes)) {
      expect(entryHash({ ...sealed, [field]: value }), field).not.toBe(sealed.hash);
    }
    expect(
      Object.keys(sealed)
        .filter((field) => field !== 'hash')
        .toSorted(),
    ).toEqual(Object.keys(changes).toSorted());
  });

  it('does not depend on what a store adds to the entry', () => {
    const sealed = sealEntry(draft, NO_PREVIOUS);
    expect(entryHash({ ...sealed, sequence: 7, receivedAt: 'now' } as never)).toBe(sealed.hash);
    expect(sealed.previous).toBe('0'.repeat(64));
  });
});
