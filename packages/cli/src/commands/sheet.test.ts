import { describe, expect, it } from 'vitest';
import { gudgeon } from '../memory-io.suite.js';

const GOOD = `gudgeon: 1
name: Invented four
invented: true
layout: { form: inline, cylinders: [1, 2, 3, 4], firingOrder: 1-3-4-2 }
limits:
  - { part: valve spring, what: installed height, whenNew: 1.80 in (46.0 mm) }
`;

describe('gudgeon sheet check', () => {
  it('passes a sheet with a caution, prints its line and ends with 0', async () => {
    const said = await gudgeon(['sheet', 'check', 'four.yaml'], { 'four.yaml': GOOD });
    expect(said).toMatchObject({ code: 0, err: [] });
    expect(said.out).toMatch(/^four\.yaml:6: caution: limits\[0\]\.whenNew: 1\.80 in and \(46\.0 mm\)/);
    expect(said.out).toMatch(/Invented four: no fault, 1 caution; no joints, 1 limit, no gaps$/);
  });

  it('prints each fault with line and column on standard error and ends with 2', async () => {
    const bad = GOOD.replace('1-3-4-2', '1-3-3-2').replace('1.80 in', '1.80');
    const said = await gudgeon(['sheet', 'check', '-'], { '-': bad });
    expect(said.code).toBe(2);
    expect(said.out).toBe('');
    expect(said.err).toEqual([expect.stringMatching(/^standard input:6:\d+: limits\[0\]\.whenNew: .*unit/)]);
  });

  it('names the cylinder that fires twice and the one that never does', async () => {
    const said = await gudgeon(['sheet', 'check', '-'], { '-': GOOD.replace('1-3-4-2', '1-3-3-2') });
    expect(said.code).toBe(2);
    expect(said.err).toEqual([
      'standard input:4:50: layout.firingOrder: cylinder 3 stands twice, cylinder 4 is missing; each of the 4 cylinders fires once',
    ]);
  });

  it('answers with one JSON object, good or bad', async () => {
    const good = await gudgeon(['sheet', 'check', 'f', '--json'], { f: GOOD });
    expect(good.code).toBe(0);
    expect(JSON.parse(good.out)).toMatchObject({
      ok: true,
      faults: [],
      cautions: [{ code: 'units-disagree', line: 6 }],
    });
    const bad = await gudgeon(['sheet', 'check', 'f', '--json'], { f: 'just a sentence' });
    expect(bad).toMatchObject({ code: 2, err: [] });
    expect(JSON.parse(bad.out)).toMatchObject({ ok: false, faults: [{ code: 'not-a-mapping', line: 1 }] });
  });
});
