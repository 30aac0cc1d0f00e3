import { describe, expect, it } from 'vitest';
import { changed, outputOf, runChanged } from '../../example.suite.js';
import { runCalculation } from '../../index.js';

type Change = Readonly<Record<string, unknown>>;

describe('what a bearing entry refuses', () => {
  const oil = 'bearings.oil-clearance';
  const installed = 'bearings.installed-clearance';
  const chart = 'bearings.grade-chart-check';
  const grade = 'bearings.grade-selection';
  const shells = 'bearings.shell-selection';
  const washers = 'bearings.thrust-washers';
  it.each<[string, string, Change, RegExp]>([
    ['exchanged limits', oil, { lowest: '2 mm', highest: '1 mm' }, /highest must be at least 2 mm/],
    ['shells that fill the housing line to line', oil, { journal: '63.490 mm' }, /ball anvil/],
    ['a journal larger than its bearing', installed, { journal: '2.46 in' }, /bore must be above 2.46 in/],
    ['a journal as large as its bearing', installed, { journal: '2.4512 in' }, /no clearance is left/],
    ['exchanged limits', installed, { lowest: '0.003 in' }, /low end is above/],
    ['exchanged ends of the housing', 'bearings.worst-case-clearance', { housingLow: '75 mm' }, /housingHigh must be/],
    ['half of the lower wall', 'bearings.worst-case-clearance', { lowerWallLow: '2.4 mm' }, /lower half needs both/],
    [
      'half of the printed window',
      'bearings.worst-case-clearance',
      { printedLow: undefined },
      /printed clearance needs/,
    ],
    ['a face wider than the shell', 'bearings.flat-anvil-error', { faceWidth: '2.45 in' }, /below 2.45 in/],
    ['a chart with a high end too few', chart, { housingHigh: ['74.032 mm'] }, /housingLow.*equally long/],
    ['a journal range reversed', chart, { journalLow: ['69.1 mm', '68.988 mm'] }, /journalLow.*no low end above/],
    ['a wall without its high end', chart, { wallHigh: ['2.5 mm'] }, /wallLow.*equally long/],
    ['a wall without its mark', chart, { shellMarks: [2, 3] }, /shellMarks 2, 3.*equally long/],
    ['a printed window reversed', chart, { printedLow: '0.07 mm' }, /printedHigh must be at least/],
    ['a grade without its wall', grade, { upperWallLow: ['2.009 mm'] }, /each grade needs both ends/],
    ['a wall of no grade', grade, { grades: ['3', '34'] }, /each grade needs both ends/],
    ['a lower wall reversed', grade, { lowerWallLow: ['2.02 mm', '2.009 mm', '2.012 mm'] }, /each grade needs both/],
    ['exchanged limits', grade, { lowest: '2 mm', highest: '1 mm' }, /low end is above/],
    ['a grade without a name', grade, { grades: ['3', ' ', '4'] }, /grades, value 2/],
    ['a position without its journal', shells, { journals: ['2.449 in'] }, /each position needs/],
    ['exchanged limits', shells, { lowest: '0.003 in' }, /highest must be at least 0.003 in/],
    ['a position that no shell suits', shells, { walls: ['0.0970 in'] }, /no pair of these walls.*position 1/],
    ['shells that fill the housing', 'bearings.grind-target', { upperWall: '38 mm' }, /fill the housing/],
    [
      'journals beyond the last undersize',
      'bearings.undersize-choice',
      { worn: ['2.41 in'] },
      /no undersize in the list/,
    ],
    ['halves that eat the clearance', 'bearings.mixed-halves', { upperUndersize: '0.006 in' }, /ball anvil/],
    ['a plane with one direction', 'bearings.journal-form', { y: ['59.9 mm'] }, /each plane needs both/],
    ['exchanged sizes', 'bearings.housing-form', { lowest: '2 mm', highest: '1 mm' }, /low end is above/],
    ['exchanged limits', 'bearings.thread-gauge', { lowest: '0.05 mm' }, /low end is above/],
    ['a discard limit below new', 'bearings.end-float', { discard: '0.10 mm' }, /discard must be at least 0.24 mm/],
    ['a new range reversed', 'bearings.end-float-from-sizes', { newLow: '0.3 mm' }, /newHigh must be/],
    ['washers without a target', washers, { target: undefined }, /target is needed, or lowest and highest/],
    ['washers with half a window', washers, { target: undefined, lowest: '0.1 mm' }, /target is needed/],
    ['exchanged limits', washers, { lowest: '0.3 mm', highest: '0.1 mm' }, /low end is above/],
    ['washers that bind', washers, { sizes: ['2.7 mm'] }, /bind with every size/],
    ['a cold bearing without clearance', 'bearings.clearance-at-temperature', { journal: '56 mm' }, /ball anvil/],
    ['both ways to name a film', 'bearings.finite-bearing', { eccentricity: 0.5 }, /and not both/],
    ['no way to name a film', 'bearings.finite-bearing', { number: undefined }, /one of eccentricity and number/],
    ['a nearly centred shaft', 'bearings.finite-bearing', { number: 1.5 }, /number must be at most 1.33/],
    [
      'a film beyond the table',
      'bearings.finite-bearing',
      { number: 0.004 },
      /thinner than the table.*at least 0.00474/,
    ],
    [
      'a bearing shorter than the table',
      'bearings.film-thickness',
      { length: '0.3 in' },
      /length must be at least 0.375 in/,
    ],
    ['a light load', 'bearings.film-thickness', { load: '20 lbf' }, /see bearings.petroff/],
    ['a load beyond the table', 'bearings.film-thickness', { load: '20000 lbf' }, /thinner than the table reaches/],
    ['both ways to name a film', 'bearings.short-bearing', { number: 1 }, /and not both/],
    ['no way to name a film', 'bearings.short-bearing', { eccentricity: undefined }, /one of eccentricity/],
    ['a bore that is not a number', oil, { housing: { value: Number.NaN, unit: 'mm' } }, /^housing/],
    ['a negative wall', oil, { upperWall: '-2 mm' }, /^upperWall: -2 mm given/],
    ['an empty list', 'bearings.crush', { proud: [] }, /^proud: the list is empty/],
  ])('%s (%s)', (_, id, change, words) => {
    expect(runChanged(id, change).refused).toMatch(words);
  });
});

describe('verdicts and cautions of a bearing entry', () => {
  it.each<[string, string, Change, string, string]>([
    ['a clearance inside its window', 'bearings.oil-clearance', { lowest: '0.04 mm' }, 'verdict', 'in'],
    ['a clearance under its window', 'bearings.oil-clearance', { lowest: '0.06 mm' }, 'verdict', 'below'],
    ['a clearance over its window', 'bearings.oil-clearance', { highest: '0.04 mm' }, 'verdict', 'above'],
    [
      'a clearance without limits',
      'bearings.installed-clearance',
      { lowest: undefined, highest: undefined },
      'verdict',
      'no data',
    ],
    [
      'ranges without a printed clearance',
      'bearings.worst-case-clearance',
      { printedLow: undefined, printedHigh: undefined },
      'verdict',
      'no data',
    ],
    [
      'ranges inside a wider printed clearance',
      'bearings.worst-case-clearance',
      { printedHigh: '0.070 mm' },
      'verdict',
      'inside',
    ],
    [
      'ranges over a narrower printed clearance',
      'bearings.worst-case-clearance',
      { printedHigh: '0.050 mm' },
      'verdict',
      'reaches outside',
    ],
    [
      'ranges all under the printed clearance',
      'bearings.worst-case-clearance',
      { printedLow: '0.070 mm', printedHigh: '0.090 mm' },
      'verdict',
      'cannot',
    ],
    [
      'ranges all over the printed clearance',
      'bearings.worst-case-clearance',
      { printedLow: '0.010 mm', printedHigh: '0.020 mm' },
      'verdict',
      'cannot',
    ],
    [
      'a lower half of its own',
      'bearings.worst-case-clearance',
      { lowerWallLow: '2.489 mm', lowerWallHigh: '2.492 mm' },
      'least',
      '0.0450 mm',
    ],
    [
      'a grade chosen by its window',
      'bearings.grade-selection',
      { target: undefined, lowest: '0.016 mm', highest: '0.022 mm' },
      'chosen',
      '34',
    ],
    ['a grade in its window', 'bearings.grade-selection', { lowest: '0.016 mm', highest: '0.022 mm' }, 'verdict', 'in'],
    [
      'alike halves where the lower is not given',
      'bearings.grade-selection',
      { lowerWallLow: undefined, lowerWallHigh: undefined },
      'clearances',
      '0.0210 mm, 0.0150 mm, 0.0150 mm',
    ],
    [
      'a target of one’s own',
      'bearings.shell-selection',
      { target: '0.0010 in' },
      'clearances',
      '0.001000 in, 0.001500 in',
    ],
    ['positions outside their window', 'bearings.shell-selection', { target: '0.0010 in' }, 'verdicts', 'below, below'],
    ['halves never mixed', 'bearings.shell-selection', { widestMix: '0 mm' }, 'thinner', '0.095000 in, 0.095000 in'],
    ['a shell with spread', 'bearings.free-spread', {}, 'verdict', 'holds'],
    ['a shell that fell in', 'bearings.free-spread', { freeWidth: '2.640 in' }, 'verdict', 'loose'],
    ['a journal larger than allowed', 'bearings.journal-form', { highest: '59.963 mm' }, 'sizeVerdict', 'above'],
    ['a journal smaller than allowed', 'bearings.journal-form', { lowest: '59.963 mm' }, 'sizeVerdict', 'below'],
    [
      'a journal within its sizes',
      'bearings.journal-form',
      { lowest: '59.95 mm', highest: '59.97 mm' },
      'sizeVerdict',
      'in',
    ],
    [
      'a barrel by the spread rule',
      'bearings.journal-form',
      { x: ['10.000 mm', '10.004 mm', '10.001 mm'], y: ['10 mm', '10 mm', '10 mm'], taperRule: 'spread' },
      'taper',
      '0.0040 mm',
    ],
    [
      'a barrel by its ends',
      'bearings.journal-form',
      { x: ['10.000 mm', '10.004 mm', '10.001 mm'], y: ['10 mm', '10 mm', '10 mm'] },
      'taper',
      '0.0010 mm',
    ],
    ['taper over its limit', 'bearings.housing-form', { taperLimit: '0.001 mm' }, 'taperVerdict', 'above'],
    [
      'a strip without limits',
      'bearings.thread-gauge',
      { lowest: undefined, highest: undefined },
      'verdict',
      'no data',
    ],
    ['a strip inside', 'bearings.thread-gauge', { highest: '0.06 mm' }, 'verdict', 'in'],
    ['a strip too tight', 'bearings.thread-gauge', { lowest: '0.04 mm', highest: '0.06 mm' }, 'verdict', 'below'],
    [
      'a strip out at both ends',
      'bearings.thread-gauge',
      { lowest: '0.04 mm', highest: '0.05 mm' },
      'verdict',
      'below and above',
    ],
    ['a float that binds', 'bearings.end-float-from-sizes', { gap: '30.00 mm' }, 'verdict', 'too tight'],
    ['a float tighter than new', 'bearings.end-float', { measured: '0.03 mm' }, 'verdict', 'too tight'],
    ['a float as new at its limit', 'bearings.end-float', { measured: '0.24 mm' }, 'verdict', 'as new'],
    ['a float at the discard limit', 'bearings.end-float', { measured: '0.30 mm' }, 'verdict', 'usable, note it'],
    ['a float over the discard limit', 'bearings.end-float', { measured: '0.31 mm' }, 'verdict', 'discard'],
    ['a float without a discard limit', 'bearings.end-float', { discard: undefined }, 'verdict', 'no data'],
    [
      'a float without a new range',
      'bearings.end-float',
      { newLow: undefined, newHigh: undefined },
      'verdict',
      'no data',
    ],
    [
      'washers by the middle of a window',
      'bearings.thrust-washers',
      { target: undefined, lowest: '0.1 mm', highest: '0.3 mm' },
      'thickness',
      '2.485 mm',
    ],
    ['washers on one side', 'bearings.thrust-washers', { count: 1, sizes: ['2.515 mm'] }, 'float', '0.200 mm'],
    ['washers judged', 'bearings.thrust-washers', { lowest: '0.21 mm' }, 'verdict', 'below'],
    [
      'an undersize wall without a printed one',
      'bearings.undersize-wall',
      { undersizeWall: undefined },
      'wall',
      '2.6370 mm',
    ],
    [
      'one cold journal in a warm housing',
      'bearings.clearance-at-temperature',
      { journalTemperature: '20 °C' },
      'clearance',
      '0.1519 mm',
    ],
  ])('%s (%s)', (_, id, change, name, text) => {
    const { outputs, refused } = runChanged(id, change);
    expect(refused).toBe('');
    expect(outputs[name]?.text).toBe(text);
  });

  it.each<[string, string, Change, readonly string[]]>([
    [
      'ranges that cannot give the printed clearance',
      'bearings.worst-case-clearance',
      { printedHigh: '0.05 mm' },
      ['ranges-disagree'],
    ],
    ['ranges that can', 'bearings.worst-case-clearance', {}, []],
    ['a chart that contradicts itself', 'bearings.grade-chart-check', { shellMarks: [2, 2, 3] }, ['chart-disagrees']],
    ['a chart that agrees', 'bearings.grade-chart-check', {}, []],
    ['a mix wider than 0.001 in', 'bearings.mixed-halves', { upperUndersize: '0.002 in' }, ['wide-mix']],
    [
      'two halves alike, however thick',
      'bearings.mixed-halves',
      { upperUndersize: '0.002 in', lowerUndersize: '0.002 in' },
      [],
    ],
    [
      'no clearance left in the cold',
      'bearings.clearance-at-temperature',
      { housingTemperature: '-100 °C' },
      ['no-clearance-hot'],
    ],
    ['a closed form far outside its range', 'bearings.short-bearing-film', {}, ['indicative-only']],
    ['a very short, lightly loaded bearing', 'bearings.short-bearing', {}, []],
    ['a very eccentric short bearing', 'bearings.short-bearing', { eccentricity: 0.8 }, ['indicative-only']],
  ])('%s (%s)', (_, id, change, codes) => {
    expect(runChanged(id, change)).toMatchObject({ refused: '', cautions: codes });
  });

  it('names what it does not know by leaving it out', () => {
    expect(runChanged('bearings.undersize-wall', { undersizeWall: undefined }).outputs).not.toHaveProperty('deviation');
    expect(runChanged('bearings.grade-selection', { target: undefined }).outputs).not.toHaveProperty('chosen');
    const half = { target: undefined, lowest: '0.01 mm' };
    expect(runChanged('bearings.grade-selection', half).outputs.verdict?.text).toBe('no data');
  });

  it('finds each pair of marks of a misprinted chart', () => {
    const { outputs } = runChanged('bearings.grade-chart-check', { shellMarks: [2, 2, 3] });
    expect(outputs.findings?.value).toEqual([
      'bore 1 + journal 1, shell 2: mark used twice',
      'bore 1 + journal 2, shell 3: reaches outside',
      'bore 2 + journal 1, shell 3: reaches outside',
      'bore 2 + journal 2, shell 4: no such shell',
    ]);
    expect(outputs.least?.value).toHaveLength(2);
  });

  it('reads a chart whose shells are numbered from 1', () => {
    expect(outputOf('bearings.grade-chart-check', 'verdict', { shellMarks: [1, 2, 3], offset: -1 })).toBe('agrees');
  });
});

describe('doubt of a clearance', () => {
  const doubtful = (change: Change) => {
    const run = runCalculation('bearings.oil-clearance', changed('bearings.oil-clearance', change), {
      uncertainty: { trials: 4000, seed: 7 },
    });
    if (!run.ok) throw new Error('refused');
    const doubt = run.value.outputs.clearance?.uncertainty;
    return doubt && 'standard' in doubt ? doubt : undefined;
  };

  it('counts one wall reading twice, and two walls each once (rule of quadrature, JCGM 100 5.1.2)', () => {
    const sizes = { housing: '68.350 ±0.003 mm', upperWall: '2.430 ±0.001 mm', journal: '63.440 ±0.002 mm' };
    expect(doubtful(sizes)?.standard).toBeCloseTo(Math.hypot(0.003, 0.002, 0.002), 6);
    const both = { ...sizes, lowerWall: '2.430 ±0.001 mm' };
    expect(doubtful(both)?.standard).toBeCloseTo(Math.hypot(0.003, 0.001, 0.001, 0.002), 6);
    expect(doubtful(both)?.monteCarlo.standard).toBeCloseTo(Math.hypot(0.003, 0.001, 0.001, 0.002), 3);
  });

  it('is nothing where nothing is doubtful', () => {
    expect(doubtful({})).toBeUndefined();
  });
});
