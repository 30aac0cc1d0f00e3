import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BASE, engineOf } from '../try-sheets.suite.js';
import { fitVerdict, leftOver, pointSlip, type Range } from './ranges.js';

const cautions = (rows: string, more = '') => engineOf(`${BASE}limits:\n${rows}\n${more}`).cautions;
const codes = (rows: string, more = '') => cautions(rows, more).map((each) => each.code);
const row = (part: string, what: string, whenNew: string, more = '') =>
  `  - { part: ${part}, what: "${what}", whenNew: "${whenNew}"${more} }`;
const rows = (...each: readonly string[]) => each.join('\n');

describe('what parts give against what is printed', () => {
  const range = fc
    .tuple(fc.integer({ min: -5000, max: 5000 }), fc.integer({ min: 0, max: 500 }))
    .map(([low, wide]): Range => ({ low, high: low + wide }));

  it('any part from its range leaves something between the two ends (property)', () => {
    const at = ({ low, high }: Range, share: number) => low + (high - low) * share;
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(range, range, range, share, share, share, (whole, wall, shaft, a, b, c) => {
        const found = leftOver(whole, [
          { range: wall, times: 2 },
          { range: shaft, times: 1 },
        ]);
        const one = at(whole, a) - 2 * at(wall, b) - at(shaft, c);
        expect(one).toBeGreaterThanOrEqual(found.low - 1e-6);
        expect(one).toBeLessThanOrEqual(found.high + 1e-6);
      }),
    );
  });

  it('agrees when the print is kept whatever is taken, is selective when the print lies within, else disagrees (property)', () => {
    fc.assert(
      fc.property(range, range, (found, printed) => {
        const kept = found.low >= printed.low && found.high <= printed.high;
        const within = printed.low >= found.low && printed.high <= found.high;
        expect(fitVerdict(found, printed, 0)).toBe(kept ? 'agrees' : within ? 'selective' : 'disagrees');
      }),
    );
  });

  it('finds the decimal point that slipped by one place, in both ends or in one (property)', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 20, max: 90 }),
        fc.integer({ min: 100, max: 900 }),
        fc.constantFrom(0.1, 10),
        (low, high, factor) => {
          const found = { low, high };
          expect(pointSlip(found, { low: low * factor, high: high * factor }, 1e-6)).toEqual({
            low: 1 / factor,
            high: 1 / factor,
          });
          expect(pointSlip(found, found, 1e-6)).toBeUndefined();
        },
      ),
    );
    // 0.0018 to 0.0030 in, the upper end printed as 0.030 in.
    expect(pointSlip({ low: 18, high: 30 }, { low: 18, high: 300 }, 0.5)).toEqual({ low: 1, high: 0.1 });
  });
});

/** Each fit with sizes that give 0.02 to 0.06 mm by hand arithmetic; names as manuals print them (trade-map section 3). */
const FITS: readonly (readonly [string, string, readonly string[]])[] = [
  [
    'a piston in its bore',
    row('piston', 'clearance to bore', '0.02..0.06 mm'),
    [row('cylinder', 'bore', '80.00..80.02 mm'), row('piston', 'skirt diameter', '79.96..79.98 mm')],
  ],
  [
    'a main bearing, its shells counted twice',
    row('crankshaft', 'main bearing oil clearance', '0.020..0.060 mm'),
    [
      row('cylinder block', 'main housing bore', '60.000..60.010 mm'),
      row('main bearing', 'shell wall', '2.000..2.010 mm'),
      row('crankshaft', 'main journal', '55.950..55.960 mm'),
    ],
  ],
  [
    'a connecting rod bearing',
    row('connecting rod', 'oil clearance', '0.020..0.060 mm'),
    [
      row('connecting rod', 'big-end bore, cap torqued', '50.000..50.010 mm'),
      row('rod bearing', 'wall thickness', '1.500..1.510 mm'),
      row('crankshaft', 'rod journal diameter', '46.950..46.960 mm'),
    ],
  ],
  [
    'a camshaft in its bearings',
    row('camshaft', 'bearing clearance', '0.02..0.06 mm'),
    [
      row('camshaft', 'bush inside diameter', '40.00..40.02 mm'),
      row('camshaft', 'journal diameter', '39.96..39.98 mm'),
    ],
  ],
  [
    'a lifter in its bore',
    row('tappet', 'clearance in bore', '0.02..0.06 mm'),
    [row('cylinder block', 'tappet bore', '22.00..22.02 mm'), row('tappet', 'outside diameter', '21.96..21.98 mm')],
  ],
  [
    'a stem in its guide',
    row('valve', 'stem to guide clearance, exhaust', '0.02..0.06 mm'),
    [row('valve guide', 'bore', '8.00..8.02 mm'), row('exhaust valve', 'stem diameter', '7.96..7.98 mm')],
  ],
  [
    'a pin in its piston',
    row('piston pin', 'clearance in piston', '0.02..0.06 mm'),
    [row('piston', 'pin bore', '20.00..20.02 mm'), row('piston pin', 'diameter', '19.96..19.98 mm')],
  ],
  [
    'a pin in its rod',
    row('piston pin', 'clearance in rod bush', '0.02..0.06 mm'),
    [row('connecting rod', 'small end bush bore', '20.00..20.02 mm'), row('piston pin', 'diameter', '19.96..19.98 mm')],
  ],
  [
    'a ring in its groove',
    row('ring', 'side clearance, second', '0.02..0.06 mm'),
    [row('piston', 'groove width, second', '2.00..2.02 mm'), row('ring', 'thickness, second', '1.96..1.98 mm')],
  ],
  [
    'a liner in the block',
    row('liner', 'clearance at packing rings', '0.02..0.06 mm'),
    [
      row('cylinder block', 'liner bore, lower', '120.00..120.02 mm'),
      row('liner', 'outside diameter, lower', '119.96..119.98 mm'),
    ],
  ],
  [
    'a liner flange over the block',
    row('liner', 'protrusion', '0.02..0.06 mm'),
    [row('liner', 'flange thickness', '9.00..9.02 mm'), row('block', 'counterbore depth', '8.96..8.98 mm')],
  ],
  [
    'a crankshaft between thrust washers, counted twice',
    row('crankshaft', 'end float', '0.02..0.06 mm'),
    [
      row('crankshaft', 'thrust journal width', '30.00..30.01 mm'),
      row('block', 'width at the thrust bearing', '25.95..25.96 mm'),
      row('thrust washer', 'thickness', '2.00..2.01 mm'),
    ],
  ],
  [
    'two rods on one crankpin',
    row('connecting rod', 'side clearance of a pair', '0.02..0.06 mm'),
    [row('crankshaft', 'crankpin width', '40.00..40.02 mm'), row('connecting rod', 'big end width', '19.98..19.99 mm')],
  ],
];

describe.each(FITS)('%s', (_, gap, parts) => {
  const with06 = (text: string) => rows(gap.replace(/(0\.020?\.\.)(0\.060?) mm/, text), ...parts);

  it('agrees with the sizes that make it', () => {
    expect(codes(with06('$1$2 mm'))).toEqual([]);
  });
  it('must be matched when the print is narrower', () => {
    expect(codes(with06('0.03..0.05 mm'))).toEqual(['selective-fit']);
  });
  it('disagrees when the print reaches past what they give', () => {
    expect(codes(with06('0.05..0.09 mm'))).toEqual(['fit-disagrees']);
  });
  it('is ten times off when a tenth of the print agrees', () => {
    expect(codes(with06('0.20..0.60 mm'))).toEqual(['ten-times-off']);
  });
  it('is not judged when a part is not printed', () => {
    expect(codes(rows(gap.replace(/0\.020?\.\.0\.060? mm/, '0.05..0.09 mm'), ...parts.slice(1)))).toEqual([]);
  });
});

describe('which rows belong together', () => {
  const bore = (grade: string, size: string) => row('cylinder bore', 'diameter', size, `, scope: { grade: ${grade} }`);
  const piston = (grade: string, size: string) => row('piston', 'diameter', size, `, scope: { grade: ${grade} }`);

  it('a grade of bore goes with its own grade of piston, and the row of all grades is left out', () => {
    const graded = rows(
      row('cylinder bore', 'diameter', '80.00..80.02 mm'),
      bore('A', '80.00..80.01 mm'),
      bore('B', '80.01..80.02 mm'),
      piston('A', '79.96..79.97 mm'),
      piston('B', '79.97..79.98 mm'),
    );
    expect(codes(`${graded}\n${row('piston', 'clearance', '0.03..0.05 mm')}`)).toEqual([]);
    expect(cautions(`${graded}\n${row('piston', 'clearance', '0.04..0.06 mm')}`).map((each) => each.message)).toEqual([
      expect.stringContaining('diameter (A) 80.00..80.01 mm'),
      expect.stringContaining('diameter (B) 80.01..80.02 mm'),
    ]);
  });

  it('cylinders treated apart have their own pistons', () => {
    const text = rows(
      row('cylinder bore', 'diameter', '80.000..80.010 mm'),
      row('piston', 'diameter', '79.960..79.970 mm', ', scope: { cylinders: 1-3 }'),
      row('piston', 'diameter', '79.950..79.960 mm', ', scope: { cylinders: 4 }'),
      row('piston', 'clearance', '0.030..0.050 mm', ', scope: { cylinders: 1-3 }'),
      row('piston', 'clearance', '0.040..0.060 mm', ', scope: { cylinders: 4 }'),
    );
    expect(codes(text)).toEqual([]);
    expect(codes(text.replace('0.040..0.060', '0.045..0.060'))).toEqual(['selective-fit']);
    const inWords = text.replaceAll(
      /(clearance|diameter)", (.*), scope: \{ cylinders: ([\d-]+) \}/g,
      '$1, cylinders $3", $2',
    );
    expect(inWords).toContain('clearance, cylinders 1-3"');
    expect(codes(inWords)).toEqual([]);
  });

  it('bearings with numbers meet their own journals', () => {
    const text = rows(
      row('camshaft', 'bush inside diameter No. 1', '45.00..45.02 mm'),
      row('camshaft', 'bush inside diameter No. 2 and 3', '43.00..43.02 mm'),
      row('camshaft', 'journal diameter 1', '44.96..44.98 mm'),
      row('camshaft', 'journal diameter 2-3', '42.96..42.98 mm'),
      row('camshaft', 'journal clearance No. 1-3', '0.02..0.06 mm'),
    );
    expect(codes(text)).toEqual([]);
  });

  it('an oversize piston is not held against the standard bore', () => {
    const text = rows(
      row('cylinder bore', 'diameter', '80.00..80.02 mm'),
      row('piston', 'diameter', '79.96..79.98 mm'),
      row('piston', 'diameter', '80.46..80.48 mm', ', scope: { grade: 0.50 oversize }'),
      row('piston', 'clearance', '0.02..0.06 mm'),
    );
    expect(codes(text)).toEqual([]);
  });

  it('interference printed without a sign is a negative clearance', () => {
    const text = (fit: string) =>
      rows(
        row('connecting rod', 'bore for bush', '22.00..22.01 mm'),
        row('connecting rod', 'bush outside diameter', '22.05..22.06 mm'),
        row('connecting rod', 'bush interference', fit),
      );
    expect(codes(text('0.04..0.06 mm'))).toEqual([]);
    expect(codes(text('0.10..0.12 mm'))).toEqual(['fit-disagrees']);
  });

  it('a part ten times too large is named', () => {
    const text = rows(
      row('cylinder bore', 'diameter', '80.00..80.02 mm'),
      row('piston', 'diameter', '799.6..799.8 mm'),
      row('piston', 'clearance', '0.02..0.06 mm'),
    );
    const [found] = cautions(text);
    expect(found?.code).toBe('ten-times-off');
    expect(found?.message).toContain('a tenth of 799.6..799.8 mm would agree');
  });

  it('inch parts against a clearance in millimetres are allowed the rounding of each', () => {
    const text = (clearance: string) =>
      rows(
        row('cylinder bore', 'diameter', '3.1496..3.1504 in'),
        row('piston', 'diameter', '3.1480..3.1488 in'),
        row('piston', 'clearance', clearance),
      );
    // 0.0008 to 0.0024 in are 0.0203 to 0.0610 mm.
    expect(codes(text('0.020..0.061 mm'))).toEqual([]);
    expect(codes(text('0.020..0.075 mm'))).toEqual([]);
    expect(codes(text('0.030..0.075 mm'))).toEqual(['fit-disagrees']);
  });
});

describe('undersizes and oversizes are the standard size moved by their step (TM 10-3930-653-14&P p. 60, 4-38)', () => {
  const journal = (size: string, step: string) =>
    rows(
      row('crankshaft', 'main journal diameter, standard', '62.942..62.955 mm'),
      row('crankshaft', `main journal diameter, ${step}`, size),
    );

  it.each([
    ['62.692..62.705 mm', '0.25 undersize'],
    ['62.692..62.705 mm', '0.25 mm U/S'],
    ['62.692..62.705 mm', 'undersize 0.25'],
    ['63.192..63.205 mm', '0.25 oversize'],
    ['62.688..62.701 mm', '0.010 in undersize'],
  ])('%s is right for %s', (size, step) => {
    expect(codes(journal(size, step))).toEqual([]);
  });

  it.each([
    ['62.422..62.455 mm', '0.50 undersize', 'only the lower end is off'],
    ['62.442..62.475 mm', '0.50 undersize', 'only the upper end is off'],
    ['62.692..62.705 mm', '0.50 undersize', '62.442 mm to 62.455 mm'],
  ])('%s is questioned for %s', (size, step, says) => {
    const found = cautions(journal(size, step));
    expect(found.map((each) => each.code)).toEqual(['step-disagrees']);
    expect(found[0]?.message).toContain(says);
  });

  it('a shell wall grows by half the undersize of its journal', () => {
    const wall = (size: string) =>
      rows(
        row('main bearing', 'wall thickness, standard', '2.000..2.006 mm'),
        row('main bearing', 'wall thickness, 0.50 undersize', size),
      );
    expect(codes(wall('2.250..2.256 mm'))).toEqual([]);
    expect(codes(wall('2.500..2.506 mm'))).toEqual(['step-disagrees']);
  });

  const stock = (lines: string) =>
    engineOf(`${BASE}stock:\n${lines}\n`).cautions.map((each) => `${each.code} ${each.path}`);
  it('listed pistons and shells too, whichever standard grade they stem from', () => {
    const pistons = (size: string) => `  pistons:
    - { id: a, name: piston, oversize: standard, skirt: 79.96..79.97 mm, grade: A }
    - { id: b, name: piston, oversize: standard, skirt: 79.97..79.98 mm, grade: B }
    - { id: c, name: piston, oversize: 0.50 mm, skirt: ${size} }`;
    expect(stock(pistons('80.47..80.48 mm'))).toEqual([]);
    expect(stock(pistons('80.40..80.41 mm'))).toEqual(['step-disagrees stock.pistons[2]']);
    const shells = (size: string) => `  rodShells:
    - { id: a, name: shell, undersize: standard, wall: 1.500..1.506 mm }
    - { id: b, name: shell, undersize: 0.25 mm, wall: ${size} }`;
    expect(stock(shells('1.625..1.631 mm'))).toEqual([]);
    expect(stock(shells('1.750..1.756 mm'))).toEqual(['step-disagrees stock.rodShells[1]']);
  });
});

describe('valve springs and lifts', () => {
  const spring = (what: string, value: string) => row('valve spring', what, value);
  const pair = (open: string) => rows(spring('load at 40.0 mm', '300 N'), spring('load at 30.0 mm', open));

  it('a spring pressed further pushes harder', () => {
    expect(codes(pair('600 N'))).toEqual([]);
    expect(codes(pair('280 N'))).toEqual(['spring-loads']);
  });

  it('a printed rate is that of the two loads: 300 N over 10 mm are 30 N/mm', () => {
    expect(codes(rows(pair('600 N'), spring('rate', '29..31 N/mm')))).toEqual([]);
    expect(codes(rows(pair('600 N'), spring('rate', '35 N/mm')))).toEqual(['spring-rate']);
  });

  it('the free length lies on the same line, 300 N at 30 N/mm past 40 mm: 50 mm', () => {
    expect(codes(rows(pair('600 N'), spring('free length', '50 mm')))).toEqual([]);
    expect(codes(rows(pair('600 N'), spring('free length', '53 mm')))).toEqual(['spring-not-straight']);
    expect(codes(rows(pair('600 N'), spring('free length', '39 mm')))).toEqual(['spring-loads']);
  });

  it('the two heights are a lift apart: lobe by ratio, with or without the lash', () => {
    const gear = `valveGear: { kind: pushrod, follower: flat, adjustment: mechanical, valvesPerCylinder: { intake: 1, exhaust: 1 }, ratio: 1.5:1, lash: { intake: { hot: 0.30 mm }, exhaust: {} } }`;
    const lobe = (lift: string) => rows(pair('600 N'), row('camshaft', 'lobe lift', lift));
    expect(codes(lobe('6.67 mm'), gear)).toEqual([]);
    expect(codes(lobe('6.85 mm'), gear)).toEqual([]);
    expect(codes(lobe('7.40 mm'), gear)).toEqual(['open-height']);
    expect(codes(lobe('6.20 mm'), gear)).toEqual(['open-height']);
  });

  it('a "lobe lift" of a third of the bore is the height of the cam', () => {
    const bore = 'crankTrain: { bore: 87 mm }';
    expect(codes(row('camshaft', 'lobe lift', '6.9 mm'), bore)).toEqual([]);
    expect(codes(row('camshaft', 'lobe lift', '37.2 mm'), bore)).toEqual(['lift-or-height']);
  });
});

describe('shell charts', () => {
  const chart = (shell: string, housing = '60.000..60.008 mm') => `limits:
${rows(
  row('main housing', 'bore', housing, ', scope: { grade: "1" }'),
  row('crankshaft', 'main journal', '55.984..55.992 mm', ', scope: { grade: A }'),
  row('crankshaft', 'main bearing clearance', '0.018..0.040 mm'),
)}
stock:
  mainShells:
    - { id: red, name: shell, undersize: standard, wall: 1.992..1.995 mm, grade: red }
    - { id: blue, name: shell, undersize: standard, wall: 1.996..1.999 mm, grade: blue }
  gradeCharts: [{ for: main, rows: [{ housing: 1, journal: A, shell: ${shell} }] }]
`;
  const said = (text: string) => engineOf(`${BASE}${text}`).cautions.map((each) => each.code);

  it('name shells of the list that give the printed clearance', () => {
    expect(said(chart('red'))).toEqual([]);
    expect(said(chart('Blue'))).toEqual(['chart-disagrees']);
    expect(said(chart('green'))).toEqual(['no-such-shell']);
  });
});

describe('printed in two units', () => {
  it('a decimal slip of the second figure is named, with what the first is in its unit', () => {
    const [found] = cautions(row('ring', 'gap', '0.15..0.30 mm (0.0006..0.0012 in)'));
    expect(found?.code).toBe('units-disagree');
    expect(found?.message).toContain('ten times of the second would agree');
    expect(found?.message).toContain('0.00591 in to 0.01181 in');
  });
});

describe('one size printed in two rows', () => {
  const pin = (size: string, wear: string) => row('pin', 'diameter', size, `, wear: "${wear}"`);
  it('in inches and in millimetres agrees to the rounding of both', () => {
    // 0.7874 in are 19.99996 mm, 0.7862 in are 19.96948 mm.
    expect(codes(rows(pin('0.7874 in', '>= 0.7862 in'), pin('20.000 mm', '>= 19.970 mm')))).toEqual([]);
    expect(codes(rows(pin('0.7874 in', '>= 0.7862 in'), pin('20.010 mm', '>= 19.950 mm')))).toEqual([
      'stated-twice',
      'stated-twice',
    ]);
  });
  it('with a wear limit as a change in one and as a size in the other is asked about', () => {
    const change = row('pin', 'diameter', '20.000 mm', ', wear: { changeFromNew: 0.030 mm }');
    expect(codes(rows(change, change))).toEqual([]);
    expect(codes(rows(change, pin('20.000 mm', '>= 19.970 mm')))).toEqual(['stated-twice']);
  });
});

describe('room for wear', () => {
  it('is asked about where the wear limit is the end of the new window', () => {
    const flange = (wear: string) => row('liner', 'flange thickness', '9.00..9.02 mm', `, wear: "${wear}"`);
    expect(codes(flange('>= 8.95 mm'))).toEqual([]);
    expect(codes(flange('>= 9.00 mm'))).toEqual(['no-allowance']);
    expect(codes(flange('>= 9.01 mm'))).toEqual(['worn-when-new']);
  });
});
