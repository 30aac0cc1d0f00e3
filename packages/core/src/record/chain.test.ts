import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { headCode, verifyChain } from './chain.js';
import type { Envelope } from './entry.js';
import { chainOf } from './samples.suite.js';
import { entryHash } from './seal.js';

const notes = (count: number) =>
  Array.from({ length: count }, (_, k) => ({ kind: 'note', data: { about: 'head', text: `${k}` } }));
const phone = chainOf(notes(5));
const laptop = chainOf(notes(3), 'laptop', 100);
const both = [...phone, ...laptop];
const firstBreak = (entries: readonly Envelope[]) => {
  const checked = verifyChain(entries);
  return checked.ok ? undefined : checked.fault[0];
};

describe('chain of a device', () => {
  it('holds for what was sealed, in any order, and counts an entry given twice once', () => {
    expect(verifyChain(both)).toEqual({ ok: true, value: { devices: 2, entries: 8 } });
    expect(verifyChain([...both].reverse())).toMatchObject({ ok: true });
    expect(verifyChain([...both, phone[2]!])).toEqual({ ok: true, value: { devices: 2, entries: 8 } });
    expect(verifyChain([])).toEqual({ ok: true, value: { devices: 0, entries: 0 } });
  });

  it('breaks at an altered entry, whatever field was altered', () => {
    const altered = (over: Partial<Envelope>) => both.map((one) => (one === phone[2] ? { ...one, ...over } : one));
    for (const over of [{ person: 'B. Other' }, { at: '2026-03-02T00:00:00Z' }, { data: { about: 'x', text: 'y' } }]) {
      expect(firstBreak(altered(over))).toMatchObject({ code: 'altered', device: 'bench-phone', counter: 3 });
    }
  });

  it('breaks at the entry after an altered one that was sealed again', () => {
    const forged = { ...phone[2]!, person: 'B. Other' };
    const sealed = { ...forged, hash: entryHash(forged) };
    expect(firstBreak(phone.map((one) => (one === phone[2] ? sealed : one)))).toMatchObject({
      code: 'link',
      counter: 4,
    });
  });

  it('breaks at a gap in the counter, and at a missing beginning', () => {
    expect(firstBreak(phone.filter((one) => one.counter !== 3))).toMatchObject({ code: 'gap', counter: 4 });
    expect(firstBreak(phone.slice(1))).toMatchObject({ code: 'gap', counter: 2 });
  });

  it('breaks where two different entries have one place', () => {
    const [, , third] = chainOf([...notes(2), { kind: 'note', data: { about: 'head', text: 'other' } }]);
    expect(firstBreak([...phone, { ...third!, id: 'another' }])).toMatchObject({ code: 'twice', counter: 3 });
  });

  it('names the first break of every device', () => {
    const broken = [...phone.slice(1), ...laptop.filter((one) => one.counter !== 2)];
    expect(verifyChain(broken)).toMatchObject({ fault: [{ device: 'bench-phone' }, { device: 'laptop' }] });
  });

  it('is broken by data that could not have been sealed here, and does not throw', () => {
    const odd = { ...phone[0]!, data: Number.NaN };
    expect(firstBreak([odd])).toMatchObject({ code: 'altered', counter: 1 });
  });

  it('notices any change of any sign of any hash', () => {
    fc.assert(
      fc.property(fc.nat(4), fc.nat(63), fc.constantFrom(...'0123456789abcdef'), (index, place, sign) => {
        const { hash } = phone[index]!;
        fc.pre(hash[place] !== sign);
        const wrong = hash.slice(0, place) + sign + hash.slice(place + 1);
        expect(verifyChain(phone.map((one, k) => (k === index ? { ...one, hash: wrong } : one))).ok).toBe(false);
      }),
    );
  });
});

describe('head code', () => {
  it('is four groups of four signs that cannot be misread', () => {
    expect(headCode(both)).toMatch(/^[0-9A-HJKMNP-TV-Z]{4}(-[0-9A-HJKMNP-TV-Z]{4}){3}$/);
    expect(headCode([])).toBe('');
  });

  it('does not depend on the order of arrival, and changes with every further entry of any device', () => {
    expect(headCode([...both].reverse())).toBe(headCode(both));
    const codes = new Set([headCode(both), headCode(both.slice(0, -1)), headCode(phone), headCode(phone.slice(0, 4))]);
    expect(codes.size).toBe(4);
  });

  // Second route: the first 80 bits of the digest, written in base 32 by the runtime's own big integers.
  it('is the first eighty bits of the digest', async () => {
    const last = phone.at(-1)!;
    const text = JSON.stringify([[last.job, last.device, last.counter, last.hash]]);
    const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text))).slice(0, 10);
    let bits = '';
    for (const byte of digest) bits += byte.toString(2).padStart(8, '0');
    const signs = bits.match(/.{5}/g)!.map((five) => '0123456789ABCDEFGHJKMNPQRSTVWXYZ'[Number.parseInt(five, 2)]);
    expect(headCode(phone).replaceAll('-', '')).toBe(signs.join(''));
  });
});
