import { readFileSync } from 'node:fs';
import { loadSheet } from '@gudgeon/core/engine/load';
import { gateQuestion, judgeKeyed, openBench, proposeMeasured } from '@gudgeon/core/workbench';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyBuffer, pressKey, shownNumber, takeText } from './key-buffer.js';
import { barrierFor, type GateRules } from './number-gate.js';

const SLOT = 'cylinder-bore/1/top-thrust';
const sheet = new URL('../../../../sheets/quernside-51-v8.yaml', import.meta.url);

/** Nothing is read yet: the gate judges by the sheet alone. */
function benchOf() {
  const loaded = loadSheet(readFileSync(sheet, 'utf8'));
  if (!loaded.ok) throw new Error(loaded.fault[0]?.message);
  return openBench(loaded.value, []);
}
const bench = benchOf();
const rules: GateRules = { unit: 'mm', check: (shown) => judgeKeyed(bench, SLOT, `${shown} mm`) };

/** A burst: a bore as it should be keyed, with keys that gloves and chatter add, leave out or double. */
const slip = fc.constantFrom('.', ',', '..', '9', '8', 'x', '-', '+', ' ', 'm', 'in', 'mm', 'Backspace', 'Tab', '=');
const burst = fc
  .record({
    digits: fc.integer({ min: 98_000, max: 99_999 }).map((n) => (n / 1000).toFixed(3)),
    slips: fc.array(fc.record({ at: fc.nat({ max: 8 }), keys: slip }), { maxLength: 3 }),
    twice: fc.boolean(),
    enter: fc.boolean(),
  })
  .map(({ digits, slips, twice, enter }) => {
    const keys: string[] = [...digits].flatMap((digit, at) => (twice && at === 4 ? [digit, digit] : [digit]));
    for (const { at, keys: more } of slips)
      keys.splice(Math.min(at, keys.length), 0, ...(more.length > 2 ? [more] : more));
    return enter ? [...keys, 'Enter'] : keys;
  });

/** What was pressed and not complained about, told apart from the buffer: the keys themselves, Backspace taken at its word. */
function keyedSoFar(pressed: readonly string[]): string {
  const kept: string[] = [];
  for (const key of pressed) {
    if (key === 'Backspace') kept.pop();
    else if (!/^[\s+]$/.test(key)) kept.push(key);
  }
  return kept.join('');
}

describe('noise on the keys', () => {
  it('stores nothing that differs from the keys and loses none without a complaint, in 10,000 bursts', () => {
    let [stored, complained, asked] = [0, 0, 0];
    let buffer = emptyBuffer;
    let pressed: string[] = [];
    const press = (key: string) => {
      const before = buffer;
      const keyed = pressKey(buffer, key);
      buffer = keyed.buffer;
      if (keyed.complaint) {
        complained += 1;
        expect(keyed.buffer).toEqual(before);
      } else pressed.push(key);
      // Letters of a unit stand behind the digits, however they were mixed.
      const all = keyedSoFar(pressed);
      expect(buffer.raw + buffer.letters).toBe(all);
    };
    const enter = (agrees: boolean) => {
      const agreed = new Set<string>();
      let barrier = barrierFor(buffer, rules, agreed);
      while (barrier?.kind === 'ask' && agrees) {
        expect(barrier.words).not.toBe('');
        asked += 1;
        agreed.add(barrier.about);
        barrier = barrierFor(buffer, rules, agreed);
      }
      if (barrier !== undefined) {
        // The field still holds the keys; the person has read why and clears it.
        expect(barrier.words).not.toBe('');
        complained += 1;
        [buffer, pressed] = [emptyBuffer, []];
        return;
      }
      const shown = shownNumber(buffer);
      const text = `${shown} mm`;
      const question = gateQuestion(text, judgeKeyed(bench, SLOT, text));
      const proposal = proposeMeasured(bench, {
        slot: SLOT,
        text,
        source: 'keyed',
        ...(question !== undefined && { answered: [question] }),
      });
      if (!proposal.ok) throw new Error(proposal.fault);
      const [entry] = proposal.value;
      if (entry?.kind !== 'measured') throw new Error('nothing was proposed');
      const { reading } = entry.data;
      const digits = keyedSoFar(pressed).replace(/[a-z]+$/, '');
      expect(buffer.raw).toBe(digits);
      expect(reading.text).toBe(`${digits.replace(',', '.').replace(/^\./, '0.')} mm`);
      expect(reading.value).toBeCloseTo(Number(digits.replace(',', '.')) / 1000, 12);
      stored += 1;
      buffer = emptyBuffer;
      pressed = [];
    };
    fc.assert(
      fc.property(burst, fc.boolean(), (keys, agrees) => {
        for (const key of keys) {
          if (key === 'Enter') enter(agrees);
          else if (key !== 'Tab') press(key);
        }
        // A person looks up after a while, sees what stands there, and clears it.
        if (buffer.raw.length >= 12) [buffer, pressed] = [emptyBuffer, []];
      }),
      { numRuns: 10_000, seed: 4711 },
    );
    // The noise was neither all good nor all bad.
    expect(Math.min(stored, complained, asked)).toBeGreaterThan(200);
  });
  it('takes a whole burst at once as it takes key by key', () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(...'0123456789.,-+ mx') }), (text) => {
        const whole = takeText(emptyBuffer, text);
        let one = emptyBuffer;
        for (const key of text) one = pressKey(one, key).buffer;
        expect(whole.buffer).toEqual(one);
      }),
    );
  });
});
