import { describe, expect, it } from 'vitest';
import { engineOf, read, sheetsIn } from '../../engine/load/try-sheets.suite.js';
import { inch, mm } from '../../quantity/index.js';
import { toSourceKey } from '../../sources/index.js';
import { assessed, four } from './bench.suite.js';
import { byText, limitAt, placesText, worstVerdict } from './decision.js';
import { decisionsOf } from './index.js';
import { chanceOfAll, chanceText, common, judged } from './judged.js';
import { lengthWords } from './length-words.js';

/** These cannot be taken before something is read. */
const MEASURED = ['bore-oversize', 'crank-undersize', 'shells', 'pistons-to-bores', 'pins'];

describe('every decision of every sheet', () => {
  const engines = ['sheets/', 'sheets/transcribed/'].flatMap(sheetsIn).map((path) => engineOf(read(path)));

  it('says what is missing and offers nothing while nothing has been measured', () => {
    for (const engine of engines)
      for (const one of decisionsOf(assessed(engine, {}))) {
        if (MEASURED.includes(one.id))
          expect([engine.name, one.id, one.missing.length > 0]).toEqual([engine.name, one.id, true]);
        if (one.missing.length === 0) continue;
        expect([engine.name, one.id, one.alternatives.length, one.recommended]).toEqual([
          engine.name,
          one.id,
          0,
          undefined,
        ]);
      }
  });

  it('names sources that the bibliography has, and keeps its own ids and scopes apart', () => {
    for (const engine of engines) {
      const found = decisionsOf(assessed(engine, {}));
      for (const { sources } of found)
        for (const source of sources) expect([source, toSourceKey(source)]).toEqual([source, source]);
      const keys = found.map(({ id, scope }) => `${id}/${scope}`);
      expect(new Set(keys).size).toBe(keys.length);
    }
  });
});

describe('the words of a decision', () => {
  it('give a length in the unit that was chosen, and say where its doubt is not known', () => {
    expect(lengthWords('in').sure(inch(0.002), inch(0.0002))).toBe('0.00200 ±0.00040 in');
    expect(lengthWords('mm').sure(mm(0.05), undefined)).toBe('0.050 mm, uncertainty not known');
  });
  it('name places by their numbers, and texts that read alike once', () => {
    const place = (name: string) => ({ name });
    expect(placesText(['cylinder 3', 'cylinder 1', 'cylinder 7'].map(place))).toBe('cylinders 1, 3 and 7');
    expect(placesText(['main 2', 'left deck'].map(place))).toBe('main 2 and left deck');
    const texts = [
      { place: place('cylinder 1'), text: 'a' },
      { place: place('cylinder 2'), text: 'b' },
      { place: place('cylinder 3'), text: 'a' },
    ];
    expect(byText(texts)).toBe('a (cylinders 1 and 3); b (cylinder 2)');
  });
});

describe('what a decision rests on', () => {
  it('has no verdict and no chance where an uncertainty is not known', () => {
    expect(judged({ value: 1 }, { low: 0 })).toBe('no data');
    expect(chanceOfAll([{ known: { value: 1 }, window: { low: 0 } }])).toBeUndefined();
    expect(chanceText(undefined)).toContain('not known');
  });
  it('takes independent chances together: half and half is a quarter', () => {
    const half = { known: { value: 0, u: 1 }, window: { low: 0 } };
    expect(chanceOfAll([half, half])).toBeCloseTo(0.25, 6);
    expect(chanceText(0.25)).toBe('25 %');
  });
  it('is never good while one of its parts is out or unknown', () => {
    expect(worstVerdict(['in', 'no data', 'near'])).toBe('no data');
    expect(worstVerdict(['in', 'out', 'no data'])).toBe('out');
    expect(worstVerdict([])).toBe('no data');
  });
  it('finds no common window where two do not meet', () => {
    expect(common([{ low: 1, high: 2 }, { low: 3 }])).toBeUndefined();
    expect(common([{ low: 1 }, { high: 5 }, { low: 2 }])).toEqual({ low: 2, high: 5 });
  });
});

describe('a limit with grades', () => {
  const engine = four(`limits:
  - { part: piston, what: clearance, whenNew: 0.030..0.040 mm, scope: { grade: A } }
  - { part: piston, what: clearance, whenNew: 0.040..0.050 mm, scope: { grade: B } }
`);
  it('asks for any of them before the part is measured, not for the first one', () => {
    const asked = limitAt(assessed(engine, {}), 'piston.clearance', '1', 'new')?.window;
    expect(asked).toEqual({ low: expect.closeTo(mm(0.03), 9), high: expect.closeTo(mm(0.05), 9) });
  });
});
