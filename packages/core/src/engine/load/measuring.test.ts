import { describe, expect, it } from 'vitest';
import { CYLINDER_RULES, ROUND_RULES, TAPER_RULES } from '../../calc/metrology/bore-shape.js';
import { RULES_OF_SHAPE } from './shape-rules.js';
import { BASE, engineOf, faultsOf } from './try-sheets.suite.js';

const INSPECTION = `inspection:
  boreHeights:
    - { name: top, depth: 20 mm }
    - { name: middle }
    - { name: bottom, depth: 90 mm }
  boreDirections: [thrust, along the crank]
  mainJournals: 5
  camJournals: 3
  camshafts: 2
  thrustAt: 5
  pistonHeight: 12 mm
  ringDepth: { value: 25 mm, from: manual p. 9 }
  materials: { block: cast-iron, piston: aluminium }
`;
const STOCK = `stock:
  pistons:
    - { id: a, name: piston, partNumber: P-1, oversize: standard, skirt: 79.950..79.965 mm, grade: 1, count: 4, price: 31.5 }
    - { id: b, name: piston, oversize: 0.50 mm }
  mainShells:
    - { id: s, name: shell, undersize: standard, wall: 1.990..1.996 mm, grade: blue }
  rodShells:
    - { id: r, name: shell, undersize: 0.25 mm, wall: 1.618 mm }
  thrustWashers: [{ id: t, name: washer, thickness: 2.30 mm }]
  headGaskets:
    - { id: one, name: gasket, thickness: 1.20 mm, protrusion: "<= 0.40 mm", bore: 82 mm, from: part maker }
  springShims: [{ id: h, name: shim, thickness: 0.50 mm }]
  linerShims: [{ id: l, name: shim, thickness: 0.05 mm }]
  rings: [{ id: k, name: ring, ring: top, oversize: standard, gap: 0.20..0.35 mm }]
  gradeCharts:
    - { for: main, rows: [{ housing: 1, journal: A, shell: blue }, { housing: 2, journal: A, shell: blue }] }
`;
const MACHINING = `machining:
  boreCleanUp: 0.12 mm
  honeAllowance: 0.06 mm
  boreFinish: 400 grit, crosshatch 30 to 45 degrees
  torquePlate: 40 mm plate at head torque
  leastDeckHeight: 219.80 mm
  ringGapFactor: { top: 0.0040, second: 0.0045 }
  widestShellMix: 0.013 mm
  massMatch: 2 g
`;

describe('what a sheet says about measuring, parts and machining', () => {
  const { inspection, stock, machining } = engineOf(`${BASE}${INSPECTION}${STOCK}${MACHINING}`);

  it('keeps where bores, pistons and rings are measured, and knows no depth that is not given', () => {
    expect(inspection?.boreHeights?.map((each) => [each.name, each.depth?.value])).toEqual([
      ['top', 0.02],
      ['middle', undefined],
      ['bottom', 0.09],
    ]);
    expect(inspection).toMatchObject({
      boreDirections: ['thrust', 'along the crank'],
      mainJournals: 5,
      thrustAt: 5,
      camshafts: 2,
    });
    expect(inspection?.ringDepth).toMatchObject({ text: '25 mm', from: { standing: 'manual' } });
    expect(inspection?.materials).toEqual({ block: 'cast-iron', piston: 'aluminium' });
  });

  it('keeps parts with their sizes in SI; "standard" is no oversize, and a part without a count can be bought', () => {
    expect(stock?.pistons[0]).toMatchObject({ partNumber: 'P-1', oversize: 0, grade: '1', count: 4, price: 31.5 });
    expect(stock?.pistons[0]?.skirt?.low).toBeCloseTo(0.07995, 12);
    expect(stock?.pistons[1]).toEqual({
      id: 'b',
      name: 'piston',
      oversize: 0.0005,
      from: { standing: 'unstated', text: 'not stated' },
    });
    expect(stock?.rodShells[0]?.wall).toEqual({ low: 0.001618, high: 0.001618 });
    expect(stock?.headGaskets[0]).toMatchObject({ thickness: 0.0012, protrusion: { high: 0.0004 }, bore: 0.082 });
    expect(stock?.gradeCharts[0]?.rows[0]).toEqual({ housing: '1', journal: 'A', shell: 'blue' });
  });

  it('keeps what the machine shop is told', () => {
    expect(machining).toMatchObject({
      boreCleanUp: { text: '0.12 mm', value: 0.00012 },
      ringGapFactor: { top: { value: 0.004 }, second: { value: 0.0045 } },
      massMatch: { text: '2 g', value: 0.002 },
      torquePlate: '40 mm plate at head torque',
    });
  });

  it('takes a mix of 0 mm for "never mix", and a bare number for the mark of a grade', () => {
    const never = engineOf(`${BASE}${MACHINING.replace('0.013 mm', '0 mm')}`);
    expect(never.machining?.widestShellMix?.value).toBe(0);
    const graded = engineOf(`${BASE}limits: [{ part: piston, what: diameter, whenNew: 90 mm, scope: { grade: 2 } }]\n`);
    expect(graded.limits[0]).toMatchObject({ scope: 'grade 2', applies: { grade: '2' } });
  });

  it('leaves the sections out where the sheet has none', () => {
    const engine = engineOf(BASE);
    for (const section of ['inspection', 'stock', 'machining']) expect(engine).not.toHaveProperty(section);
  });
});

describe('faults in these sections, each with its line and what is valid', () => {
  it.each([
    [INSPECTION.replace('thrustAt: 5', 'thrustAt: 6'), 'inspection.thrustAt', /no main bearing 6; valid: 1 to 5/],
    [INSPECTION.replace('90 mm', '10 mm'), 'inspection.boreHeights[2].depth', /not below the height before it/],
    [INSPECTION.replace('name: middle', 'name: top'), 'inspection.boreHeights', /"top" stands twice/],
    [INSPECTION.replace('along the crank', 'thrust'), 'inspection.boreDirections', /"thrust" stands twice/],
    [INSPECTION.replace('block: cast-iron', 'block: brass'), 'inspection.materials.block', /one of: cast-iron, steel/],
    [INSPECTION.replace('12 mm', '12'), 'inspection.pistonHeight', /has no unit/],
    [STOCK.replace('id: b', 'id: a'), 'stock.pistons', /the id "a" stands twice/],
    [STOCK.replace('0.50 mm }\n  main', '-0.50 mm }\n  main'), 'stock.pistons[1].oversize', /has a sign/],
    [STOCK.replace('2.30 mm', '0 mm'), 'stock.thrustWashers[0].thickness', /not more than zero/],
    [STOCK.replace('1.990..1.996 mm', '<= 1.996 mm'), 'stock.mainShells[0].wall', /open at one end/],
    [STOCK.replace(', wall: 1.618 mm', ''), 'stock.rodShells[0].wall', /is missing/],
    [STOCK.replace('count: 4', 'count: -4'), 'stock.pistons[0].count', /at least 0/],
    [STOCK.replace('ring: top', 'ring: third'), 'stock.rings[0].ring', /one of: top, second, oil/],
    [STOCK.replace('housing: 2', 'housing: 1'), 'stock.gradeCharts[0].rows', /1 and A stand twice/],
    [STOCK.replace('springShims', 'springShim'), 'stock.springShim', /did you mean "springShims"/],
    [MACHINING.replace('0.12 mm', '0 mm'), 'machining.boreCleanUp', /not more than zero/],
    [MACHINING.replace('top: 0.0040', 'top: 0.40'), 'machining.ringGapFactor.top', /usual is 0.0030 to 0.0065/],
    [MACHINING.replace('0.013 mm', '-0.013 mm'), 'machining.widestShellMix', /0 mm means never mix/],
    [MACHINING.replace('2 g', '2 mm'), 'machining.massMatch', /mm/],
    [INSPECTION.replace('camshafts: 2', 'camshafts: 0'), 'inspection.camshafts', /at least 1/],
  ])('%#: %s', (text, path, message) => {
    const faults = faultsOf(`${BASE}${text}`);
    expect(faults.map((each) => each.path)).toEqual([path]);
    expect(faults[0]?.message).toMatch(message);
    expect(faults[0]?.line).toBeGreaterThan(6);
  });
});

describe('the rule by which a maker forms a shape is part of the limit', () => {
  const row = (more: string) => `${BASE}limits: [{ part: cylinder bore, whenNew: <= 0.01 mm, ${more} }]\n`;

  it('the names are those of the calculation', () => {
    expect(RULES_OF_SHAPE).toEqual({
      'out-of-round': ROUND_RULES,
      taper: TAPER_RULES,
      cylindricity: CYLINDER_RULES,
      clearance: ['smallest', 'mean', 'largest'],
    });
  });

  it('of a clearance says which figure of the hole counts', () => {
    expect(engineOf(row('what: piston clearance, rule: mean')).limits[0]?.rule).toBe('mean');
  });

  it('is kept with the size that it forms', () => {
    const engine = engineOf(row('what: roundness, property: cylinder-bore.out-of-round, rule: same-height-radial'));
    expect(engine.limits[0]).toMatchObject({ property: 'cylinder-bore.out-of-round', rule: 'same-height-radial' });
    expect(engineOf(row('what: taper, rule: ends')).limits[0]?.rule).toBe('ends');
  });

  it.each([
    ['what: taper, rule: same-height', 'limits[0].rule', /of taper: ends, ends-signed-mean/],
    ['what: diameter, rule: ends', 'limits[0].rule', /this row names none/],
    ['what: piston clearance, rule: ends', 'limits[0].rule', /of clearance: smallest, mean, largest/],
    ['what: taper, rule: conical', 'limits[0].rule', /one of: same-height/],
    ['what: taper, property: Bore taper', 'limits[0].property', /cylinder-bore\.taper/],
  ])('refused: %s', (more, path, message) => {
    const faults = faultsOf(row(more));
    expect(faults.map((each) => each.path)).toEqual([path]);
    expect(faults[0]?.message).toMatch(message);
  });
});

describe('pistons of another form in the stock', () => {
  const TRAIN =
    'crankTrain: { bore: 80 mm, stroke: 80 mm, rodLength: 140 mm, compressionHeight: 40.00 mm, deckHeight: 220.20 mm }\n';
  const piston = (more: string) =>
    `${BASE}${TRAIN}stock: { pistons: [{ id: flat, name: piston, oversize: standard, form: flat, ${more} }] }\n`;

  it('keep height, crown with its sign, pockets and mass in SI; what is not stated is absent', () => {
    const sizes = 'compressionHeight: 39.50 mm, crownVolume: -2.5 cm3, pocketDeeper: 0.5 mm, mass: 540 g';
    const [full, bare] = [piston(sizes), piston('count: 4')].map((text) => engineOf(text).stock?.pistons[0]);
    expect(full).toMatchObject({ form: 'flat', compressionHeight: expect.closeTo(0.0395, 12), mass: 0.54 });
    expect(full?.crownVolume).toBeCloseTo(-2.5e-6, 15);
    expect(full?.pocketDeeper).toBeCloseTo(0.0005, 12);
    for (const size of ['compressionHeight', 'crownVolume', 'pocketDeeper', 'mass'])
      expect(bare).not.toHaveProperty(size);
    expect(engineOf(piston(sizes)).cautions).toEqual([]);
  });

  it.each([
    ['compressionHeight: 395 mm', 'compressionHeight', '395.00 mm is 10 times the compression height of this engine'],
    ['compressionHeight: 3.95 mm', 'compressionHeight', '3.95 mm is one part in 10 of the compression height'],
    ['compressionHeight: 0 mm', 'compressionHeight', '"0 mm" is not more than zero'],
    // Bore 80, stroke 80: 402.1 cm³ swept.
    ['crownVolume: -250 cm3', 'crownVolume', '-250.0 cm3 in the crown of a cylinder that sweeps 402.1 cm3'],
    ['mass: 0 g', 'mass', '"0 g" is not more than zero'],
  ])('are refused with one line: %s', (sizes, at, words) => {
    const faults = faultsOf(piston(sizes)).filter(({ path }) => path === `stock.pistons[0].${at}`);
    expect(faults.map(({ message }) => message).join('\n')).toContain(words);
    expect(faults).toHaveLength(1);
  });

  it('get a caution where their crown would stand far out of the deck', () => {
    // 40 + 140 + 52 = 232, deck 220.2.
    const { cautions } = engineOf(piston('compressionHeight: 52 mm'));
    expect(cautions.map(({ code, path }) => `${code} ${path}`)).toEqual([
      'deck-disagrees stock.pistons[0].compressionHeight',
    ]);
    expect(cautions[0]?.message).toContain('put its crown 11.80 mm above the deck');
  });
});

describe('parts of the stock that turn the cam', () => {
  const offset = (text: string) => `${BASE}stock: { camOffsets: [{ id: key, name: offset key, offset: ${text} }] }\n`;
  it('keep what they give in crank degrees', () => {
    expect(engineOf(offset('2 deg')).stock?.camOffsets[0]?.offset).toBeCloseTo(Math.PI / 90, 12);
  });
  it('are refused where they give nothing', () => {
    expect(faultsOf(offset('0 deg'))[0]?.message).toContain('"0 deg" is not more than zero');
  });
});
