import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compressionTest, leakageTest } from './index.js';
import { BASE, dry, engineOf, leak, sheetText, V8, wet } from './running.suite.js';

const rule = (text: string, base = V8) => engineOf(`${base}running: { compression: { ${text} } }\n`);
/** The set of reference row O-40. */
const SET = [148, 152, 150, 109, 151, 147, 150, 149];
const READ = SET.map((psi, at) => dry(at + 1, `${psi} psi`));

describe('compression by the rule of the sheet (reference O-40)', () => {
  it('109 against 152 psi is 0.717: in at 70 %, out at 75 %, and the verdict names the rule', () => {
    const seventy = compressionTest(rule('share: 70 %'), READ);
    const more = compressionTest(rule('share: 75 %'), READ);
    expect(seventy.ratio).toBeCloseTo(0.717, 3);
    expect([seventy.verdict, more.verdict]).toEqual(['in', 'out']);
    expect(seventy.words).toBe('lowest over highest 0.717: in by the rule "at least 70 % of the highest"');
    expect(more.words).toBe('lowest over highest 0.717: out by the rule "at least 75 % of the highest"');
    expect(more.rule.origin).toBe('manual p. 1');
    expect(more.cylinders.filter((one) => one.verdict === 'out').map((one) => one.cylinder)).toEqual([4]);
  });

  it.each([
    ['70 %', '105 psi', '104 psi'],
    ['75 %', '112.5 psi', '112 psi'],
  ])('with 150 psi the highest, %s allows %s and not %s', (share, least, under) => {
    const engine = rule(`share: ${share}`, BASE);
    const at = (text: string) =>
      compressionTest(engine, [dry(1, '150 psi'), dry(2, '150 psi'), dry(3, '150 psi'), dry(4, text)]).verdict;
    expect([at(least), at(under)]).toEqual(['in', 'out']);
  });

  it('of 1035 kPa 70 % is 725 kPa, and the floor of 690 kPa holds beside it', () => {
    const engine = rule('share: 70 %, floor: 690 kPa', BASE);
    const all = (high: string, low: string) =>
      compressionTest(engine, [dry(1, high), dry(2, high), dry(3, high), dry(4, low)]).verdict;
    expect([all('1035 kPa', '725 kPa'), all('1035 kPa', '724 kPa')]).toEqual(['in', 'out']);
    expect([all('900 kPa', '690 kPa'), all('900 kPa', '685 kPa')]).toEqual(['in', 'out']);
  });

  it('a clear rise with oil is rings, none is a valve or the gasket', () => {
    const engine = rule('share: 75 %');
    const cause = (text: string) => compressionTest(engine, [...READ, wet(4, text)]).findings;
    expect(compressionTest(engine, READ).findings).toEqual([{ cylinders: [4], cause: 'wet test wanted' }]);
    expect(cause('135 psi')).toEqual([{ cylinders: [4], cause: 'rings or bore' }]);
    expect(cause('111 psi')).toEqual([{ cylinders: [4], cause: 'valve or gasket' }]);
  });

  it('two low neighbours of one bank without a rise are the gasket; two low cylinders across the vee are not', () => {
    const engine = rule('share: 75 %');
    const with2 = (a: number, b: number) => {
      const low = READ.map((one, at) => (at + 1 === a || at + 1 === b || at + 1 === 4 ? dry(at + 1, '150 psi') : one));
      return compressionTest(engine, [...low, dry(a, '100 psi'), dry(b, '98 psi'), wet(a, '101 psi'), wet(b, '99 psi')])
        .findings;
    };
    // Left bank 1-3-5-7: 3 and 5 stand side by side, 3 and 4 do not.
    expect(with2(3, 5)).toEqual([{ cylinders: [3, 5], cause: 'gasket between neighbours' }]);
    expect(with2(3, 4).map((one) => one.cause)).toEqual(['valve or gasket', 'valve or gasket']);
  });

  it('a low neighbour that rose with oil leaves the other a case of its own', () => {
    const engine = rule('share: 75 %', BASE);
    const read = [
      dry(1, '150 psi'),
      dry(2, '100 psi'),
      dry(3, '100 psi'),
      dry(4, '150 psi'),
      wet(2, '140 psi'),
      wet(3, '101 psi'),
    ];
    expect(compressionTest(engine, read).findings).toEqual([
      { cylinders: [2], cause: 'rings or bore' },
      { cylinders: [3], cause: 'valve or gasket' },
    ]);
  });

  it('is no data while a cylinder is unread, and out as soon as one is low', () => {
    const engine = rule('share: 75 %', BASE);
    expect(compressionTest(engine, []).verdict).toBe('no data');
    expect(compressionTest(engine, [dry(1, '150 psi'), dry(2, '149 psi')])).toMatchObject({
      verdict: 'no data',
      missing: [3, 4],
    });
    expect(compressionTest(engine, [dry(1, '150 psi'), dry(2, '90 psi')]).verdict).toBe('out');
  });

  it('has no verdict where the sheet gives no rule, and says which shares makers ask for', () => {
    const none = compressionTest(
      engineOf(BASE),
      [1, 2, 3, 4].map((n) => dry(n, '150 psi')),
    );
    expect(none.verdict).toBe('no data');
    expect(none.rule.words).toContain('70 % or 75 %');
  });

  it('653:p43: less than 1.0 kgf/cm2 apart is in, more is out', () => {
    const engine = engineOf(sheetText('transcribed/tm10-3930-653-14p'));
    const with4 = (text: string) =>
      compressionTest(engine, [dry(1, '11.0 kgf/cm2'), dry(2, '11.0 kgf/cm2'), dry(3, '10.6 kgf/cm2'), dry(4, text)]);
    expect(with4('10.1 kgf/cm2').verdict).toBe('in');
    expect(with4('9.9 kgf/cm2').verdict).toBe('out');
    expect(with4('9.9 kgf/cm2').rule.origin).toBe('manual 653:p43');
  });

  it('doubts readings of two gauges, and of other numbers of strokes', () => {
    const doubts = compressionTest(engineOf(BASE), [
      dry(1, '150 psi', { gauge: 'a', strokes: 5 }),
      dry(2, '150 psi', { gauge: 'b', strokes: 8 }),
    ]).doubts;
    expect(doubts).toHaveLength(2);
    expect(doubts[0]).toContain('more than one gauge');
  });

  it('a new dry reading ends the wet one that was held against the old', () => {
    const engine = rule('share: 75 %', BASE);
    const test = compressionTest(engine, [dry(1, '100 psi'), wet(1, '140 psi'), dry(1, '120 psi')]);
    expect(test.cylinders[0]).not.toHaveProperty('wet');
  });

  it('a floor is a floor: no set of pressures under it is ever in', () => {
    const engine = rule('share: 1 %, floor: 7 bar', BASE);
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 2000 }), { minLength: 4, maxLength: 4 }), (kPa) => {
        const { verdict } = compressionTest(
          engine,
          kPa.map((p, at) => dry(at + 1, `${p} kPa`)),
        );
        expect(verdict).toBe(Math.min(...kPa) >= 700 ? 'in' : 'out');
      }),
    );
  });
});

describe('leakage by the limit of the sheet (reference O-41)', () => {
  const limited = engineOf(`${BASE}running: { leakageMost: 25 % }\n`);

  it('80 psi with 60 held leaks 25 %, which is still in; with 68 held 15 %', () => {
    const test = leakageTest(limited, [leak(1, '80 psi', '60 psi'), leak(2, '80 psi', '68 psi')]);
    expect(test.cylinders.map((one) => one.leak).slice(0, 2)).toEqual([
      expect.closeTo(0.25, 9),
      expect.closeTo(0.15, 9),
    ]);
    expect(test.cylinders.map((one) => one.verdict)).toEqual(['in', 'in', 'no data', 'no data']);
    expect(test.words).toBe('worst is cylinder 1 with 25 %; not read yet: 3, 4');
    expect(test.verdict).toBe('no data');
  });

  it('552 kPa with 414 kPa held is in, with 413 kPa out', () => {
    const at = (held: string) => leakageTest(limited, [leak(1, '552 kPa', held)]).cylinders[0]?.verdict;
    expect([at('414 kPa'), at('413 kPa')]).toEqual(['in', 'out']);
  });

  it('air in the exhaust is the exhaust valve; air at the adapter tells nothing of the engine', () => {
    const test = leakageTest(limited, [
      leak(1, '80 psi', '40 psi', { heard: 'exhaust' }),
      leak(2, '80 psi', '40 psi', { heard: 'plug' }),
    ]);
    expect(test.cylinders[0]).toMatchObject({ verdict: 'out', means: 'exhaust valve' });
    expect(test.cylinders[1]?.verdict).toBe('no data');
  });

  it('two testers are not comparable, nor two supplies', () => {
    const { doubts } = leakageTest(limited, [
      leak(1, '80 psi', '70 psi', { tester: 'a' }),
      leak(2, '60 psi', '55 psi', { tester: 'b' }),
    ]);
    expect(doubts).toHaveLength(2);
    expect(doubts[0]).toContain('cannot be compared');
    const close = leakageTest(limited, [leak(1, '80 psi', '70 psi'), leak(2, '79 psi', '70 psi')]);
    expect(close.doubts).toEqual([]);
  });

  it('has no verdict without a limit', () => {
    expect(leakageTest(engineOf(BASE), [leak(1, '80 psi', '10 psi')]).cylinders[0]?.verdict).toBe('no data');
  });
});
