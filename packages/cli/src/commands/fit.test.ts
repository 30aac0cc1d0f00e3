import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { gudgeon } from '../memory-io.suite.js';

const v8 = readFileSync(new URL('../../../../sheets/quernside-51-v8.yaml', import.meta.url), 'utf8');
const files = { v8 };
/** A worksheet of the bores, all of one size but for cylinder 7. */
async function bores(size: string, seventh = size): Promise<string> {
  const { out } = await gudgeon(['worksheet', 'v8', 'cylinder-bore'], files);
  return out
    .split('\n')
    .map((line) => line.replace(/,,,mm,/, `,${line.includes(',cylinder 7,') ? seventh : size},,mm,`))
    .join('\n');
}

describe('gudgeon fit', () => {
  it('lists what can be decided, the recommended alternative starred, and what the rest waits for', async () => {
    const csv = await bores('98.630', '98.790');
    const said = await gudgeon(['fit', 'v8', 'csv'], { ...files, csv });
    expect(said).toMatchObject({ code: 0, err: [] });
    expect(said.out).toMatch(/^Quernside 51, pushrod V8: 48 readings$/m);
    // Cylinder 7 is worn past 98.618 + 0.15 = 98.768 mm: as they are is blocked.
    expect(said.out).toMatch(/^ {4}BLOCKED +as-is: /m);
    expect(said.out).toMatch(/^ {2}\* IN +bore-\d+: Bore all to \+0\.\d+ mm$/m);
    expect(said.out).toMatch(/Main bearing shells \(shells\/main\): .*main housing/);
  });
  it('shows one decision in full: figures, what speaks against, order, parts, proof', async () => {
    const csv = await bores('98.630', '98.790');
    const said = await gudgeon(['fit', 'v8', 'csv', '--decision', 'bore-oversize'], { ...files, csv });
    expect(said.code).toBe(0);
    expect(said.out).toMatch(/^Bores \(bore-oversize\/all\)$/m);
    for (const part of ['Left at the worst bore: ', 'but: ', 'order: bore and hone', 'buy: 8 x piston', 'proof:'])
      expect(said.out).toContain(part);
  });
  it('answers with one JSON object, in inches where asked', async () => {
    const csv = await bores('98.630');
    const args = ['fit', 'v8', 'csv', '--decision', 'bore-oversize/all', '--display', 'inch', '--json'];
    const answer = JSON.parse((await gudgeon(args, { ...files, csv })).out);
    expect(answer.readings).toBe(48);
    expect(answer.decisions).toHaveLength(1);
    const [{ alternatives, missing }] = answer.decisions;
    expect(missing).toEqual([]);
    expect(alternatives.map(({ words }: { words: string }) => words).join()).toMatch(/Bore all to \+0\.0\d+ in/);
  });
  it('offers nothing before anything is read', async () => {
    const { out: csv } = await gudgeon(['worksheet', 'v8', 'cylinder-bore'], files);
    const answer = JSON.parse(
      (await gudgeon(['fit', 'v8', 'csv', '--decision', 'bore-oversize', '--json'], { ...files, csv })).out,
    );
    expect(answer.decisions[0].alternatives).toEqual([]);
    expect(answer.decisions[0].missing.join()).toContain('measure all 8 places');
  });
  it('refuses a decision that there is none of, bad rows, and two inputs from one place', async () => {
    const csv = await bores('98.630');
    const wrong = await gudgeon(['fit', 'v8', 'csv', '--decision', 'paint'], { ...files, csv });
    expect(wrong).toMatchObject({ code: 2, out: '' });
    expect(wrong.err).toEqual([expect.stringMatching(/^--decision: "paint" is no decision .*bore-oversize\/all/)]);
    const bad = await gudgeon(['fit', 'v8', 'csv'], { ...files, csv: await bores('98.630', 'x') });
    expect(bad.code).toBe(2);
    expect(bad.err[0]).toMatch(/^csv:\d+: /);
    const both = await gudgeon(['fit', '-', '-'], { '-': v8 });
    expect(both).toMatchObject({ code: 2, err: ['fit: only one of the two can be standard input'] });
  });
});
