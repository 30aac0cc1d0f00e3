import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Angle, toUnit } from '../../quantity/index.js';
import { engineOf, JOINT, ROOT, read, sheetsIn } from './try-sheets.suite.js';

const SHEETS = ['sheets/', 'sheets/transcribed/', 'cases/recipes/'].flatMap(sheetsIn);
const cautionCodes = (path: string) => engineOf(read(path)).cautions.map((each) => `${each.path} ${each.code}`);

describe('the sheets of the project', () => {
  it('are four invented engines, eight transcribed ones and thirteen recipes', () => {
    expect([
      sheetsIn('sheets/').length,
      sheetsIn('sheets/transcribed/').length,
      sheetsIn('cases/recipes/').length,
    ]).toEqual([4, 8, 13]);
  });

  it.each(SHEETS)('%s loads without a fault and survives being written as JSON', (path) => {
    const engine = engineOf(read(path));
    expect(JSON.parse(JSON.stringify(engine))).toEqual(engine);
  });

  it.each(sheetsIn('sheets/'))('%s is marked as invented, figure by figure', (path) => {
    const engine = engineOf(read(path));
    expect(engine.invented).toBe(true);
    const standings = JSON.stringify(engine).match(/"standing":"[a-z-]+"/g) ?? [];
    expect(new Set(standings)).toEqual(new Set(['"standing":"invented"']));
  });

  it('agree with themselves, but for one cam journal clearance of the diesel, contradicted on purpose', () => {
    const said = sheetsIn('sheets/').flatMap((path) => engineOf(read(path)).cautions);
    expect(said.map((each) => each.code)).toEqual(['fit-disagrees']);
    expect(said[0]?.message).toContain('camshaft, journal clearance');
    expect(said[0]?.message).toContain('give 0.050 mm to 0.110 mm, but 0.030..0.060 mm is printed');
  });

  it.each(sheetsIn('sheets/'))(
    '%s says where it is measured, what parts there are and what the machine shop is told',
    (path) => {
      const { inspection, stock, machining, layout } = engineOf(read(path));
      expect(inspection?.boreHeights).toHaveLength(3);
      expect(inspection?.mainJournals).toBeGreaterThanOrEqual(layout.form === 'vee' ? 5 : layout.cylinders.length + 1);
      for (const list of ['pistons', 'mainShells', 'rodShells', 'headGaskets', 'rings'] as const)
        expect(stock?.[list].length, list).toBeGreaterThan(0);
      expect(machining?.leastDeckHeight?.value).toBeLessThan(0.35);
    },
  );

  it.each(sheetsIn('sheets/transcribed/'))('%s names the page or says "memory" beside every figure', (path) => {
    const engine = engineOf(read(path));
    expect(engine.invented).toBe(false);
    const froms = [
      ...engine.limits.map((each) => each.from),
      ...engine.joints.flatMap((joint) => joint.stages.map((stage) => stage.from)),
    ];
    expect(froms.length).toBeGreaterThan(10);
    for (const from of froms)
      expect(from.standing === 'memory' || Object.hasOwn(engine.sources, from.source ?? ''), from.text).toBe(true);
    expect(engine.gaps.length).toBeGreaterThan(0);
  });
});

describe('misprints found in the manuals (traps of the reference files engine-*.json)', () => {
  it('TM 9-2815-237-34: bore of another displacement, 1.80 in as 46.0 mm, two stem clearances, seat widths of two pages', () => {
    expect(cautionCodes('sheets/transcribed/tm9-2815-237-34.yaml')).toEqual([
      'crankTrain.displacement displacement-disagrees',
      'limits[3] selective-fit',
      'limits[4] selective-fit',
      'limits[40] open-height',
      'limits[41].whenNew units-disagree',
      'limits[43] worn-when-new',
      'limits[44] stated-twice',
      'limits[45] stated-twice',
      'limits[47] stated-twice',
      'limits[48] selective-fit',
      'limits[49] selective-fit',
    ]);
  });

  it('TM 9-2815-237-34: the stem clearance caution gives both figures', () => {
    const engine = engineOf(read('sheets/transcribed/tm9-2815-237-34.yaml'));
    const [stem] = engine.cautions.filter((each) => each.code === 'worn-when-new');
    expect(stem?.message).toContain('0.001..0.003 in');
    expect(stem?.message).toContain('<= 0.0027 in');
    expect(stem?.line).toBeGreaterThan(100);
  });

  it('4.25 x 4.00 in V8: two service limits in millimetres do not match their inches', () => {
    expect(cautionCodes('sheets/transcribed/sm-ohv-v8-425x400.yaml')).toEqual([
      'limits[3] no-allowance',
      'limits[5].wear.clearance units-disagree',
      'limits[6].wear.clearance units-disagree',
    ]);
  });

  it('TM 10-3930-653-14&P: a rod clearance limit below the largest new one, 8.0 kg-m as 59 lb-ft', () => {
    expect(cautionCodes('sheets/transcribed/tm10-3930-653-14p.yaml')).toEqual([
      'limits[21] lift-or-height',
      'limits[28] worn-when-new',
      'limits[31] step-disagrees',
      'limits[40] selective-fit',
      'limits[49] step-disagrees',
      'limits[55].whenNew units-disagree',
    ]);
  });

  it('TM 5-6115-584-34: a pin clearance limit of 0.0003 in below the new range, and eight limits that are changes', () => {
    const path = 'sheets/transcribed/tm5-6115-584-34.yaml';
    expect(cautionCodes(path)).toEqual([
      'limits[0] no-allowance',
      'limits[17] worn-when-new',
      'limits[17] ten-times-off',
    ]);
    expect(engineOf(read(path)).limits.filter((each) => each.wear?.form === 'change-from-new')).toHaveLength(8);
  });

  it('90.2 x 105.8 mm V8: two rows whose inch column is not the millimetre column', () => {
    expect(cautionCodes('sheets/transcribed/sm-sohc-v8-90x106.yaml')).toEqual([
      'limits[15].whenNew units-disagree',
      'limits[15] fit-disagrees',
      'limits[15] fit-disagrees',
      'limits[15] fit-disagrees',
      'limits[16].whenNew units-disagree',
      'limits[36] spring-not-straight',
      'limits[44] no-allowance',
    ]);
  });

  it.each([
    ['tm5-6115-400-35', ['limits[8] selective-fit']],
    ['sm-ohv-v8-99x92', ['limits[9] no-allowance']],
    ['tm9-2815-213-34', ['limits[23] no-allowance', 'limits[24] no-allowance', 'limits[25] no-allowance']],
  ])('%s: liners chosen with shims, and wear limits at the very end of the new window', (name, codes) => {
    expect(cautionCodes(`sheets/transcribed/${name}.yaml`)).toEqual(codes);
  });

  it('the 6.0 L sister: 101.618 x 92.0 mm and eight cylinders are 5969 cc, not the printed 5697', () => {
    const engine = engineOf(`gudgeon: 1
name: Sister
layout: { form: vee, banks: { left: 45 deg, right: -45 deg }, cylinders: { left: [1, 3, 5, 7], right: [2, 4, 6, 8] } }
crankTrain: { bore: 101.618 mm, stroke: 92.0 mm, displacement: 5697 cm3 }
`);
    expect(engine.cautions).toHaveLength(1);
    expect(engine.cautions[0]?.message).toContain('5969 cm3');
    expect(engine.crankTrain.displacement?.text).toBe('5697 cm3');
  });

  it('printed displacements that agree raise no caution (5665 cm3; 454 cu in)', () => {
    const eight = (train: string) =>
      engineOf(`gudgeon: 1
name: Eight
layout: { form: vee, banks: { left: 45 deg, right: -45 deg }, cylinders: { left: [1, 3, 5, 7], right: [2, 4, 6, 8] } }
crankTrain: { ${train} }
`);
    expect(eight('bore: 99.0 mm, stroke: 92.0 mm, displacement: 5665 cm3').cautions).toEqual([]);
    expect(eight('bore: 4.25 in, stroke: 4.00 in, displacement: 454 cu in').cautions).toEqual([]);
  });
});

describe('what a sheet says', () => {
  it('keeps the printed text and its page, with the value in SI beside it', () => {
    const engine = engineOf(read('sheets/transcribed/sm-ohv-v8-99x92.yaml'));
    expect(engine.crankTrain.stroke).toMatchObject({
      text: '92.0 mm',
      value: 0.092,
      from: { standing: 'manual', text: 'manual SM3', source: 'SM3' },
    });
    expect(engine.crankTrain.bore).toMatchObject({ text: '99.000..99.018 mm', window: { low: 0.099, high: 0.099018 } });
    expect(engine.crankTrain.bore?.value).toBeCloseTo(0.099009, 9);
  });

  it('reads every form of the printed recipes (reference engine-cases-head-torque.json)', () => {
    const acts = (recipe: string) => {
      const name = readdirSync(new URL('cases/recipes/', ROOT)).find((each) => each.startsWith(recipe))!;
      return engineOf(read(`cases/recipes/${name}`)).joints[0]!.stages.map((stage) =>
        [
          stage.holes === 'all' ? 'all' : `${stage.holes[0]}..${stage.holes.at(-1)}`,
          stage.act.kind,
          stage.act.text,
          ...(stage.direction === 'in-order' ? [] : [stage.direction]),
        ].join(' '),
      );
    };
    expect(acts('01')).toEqual([
      '1..10 torque 95 N·m',
      '1..10 loosen fully',
      '1..10 torque 156 N·m',
      '1..10 angle 90 deg',
      '1..10 angle 90 deg',
      '11..15 torque 24 N·m',
      '11..15 torque 31 N·m',
    ]);
    expect(acts('03')).toContain('all loosen at least 1 turn');
    expect(acts('04')).toContain('1..8 verify 27 N·m');
    expect(acts('06')).toContain('all loosen fully reverse');
    expect(acts('07').at(-1)).toBe('A..H torque 11 N·m (95 lb-in)');
    expect(acts('11')).toContain('all stretch 0.0135..0.0185 in');
  });

  it('gives a torque window in newton metres and a loosening in turns', () => {
    const engine = engineOf(read('cases/recipes/03-windows-single-use.yaml'));
    const [torque, , loosen] = engine.joints[0]!.stages.map((stage) => stage.act);
    expect(torque).toMatchObject({ kind: 'torque', target: { low: 37, high: 43 } });
    expect(loosen).toMatchObject({ kind: 'loosen', amount: 2 * Math.PI });
    expect(engine.joints[0]!.fasteners[0]?.use).toBe('once');
  });

  it.each([
    ['one full turn', 360],
    ['at least one full turn', 360],
    ['1 full turn', 360],
    ['half a turn', 180],
    ['1/2 turn', 180],
    ['a quarter turn', 90],
    ['two turns', 720],
    ['180 deg', 180],
  ])('reads loosen: %s (wording of reference engine-cases-head-torque.json and its like)', (text, degrees) => {
    const engine = engineOf(JOINT.replace('{ torque: 20 N·m }', `{ torque: 20 N·m }\n      - { loosen: ${text} }`));
    const act = engine.joints[0]!.stages[1]!.act;
    expect(act).toMatchObject({ kind: 'loosen', text });
    expect(toUnit('angle', (act as { amount: Angle }).amount, 'deg')).toBeCloseTo(degrees, 9);
  });

  it('keeps what is not stated as not stated', () => {
    const [joint] = engineOf(read('cases/recipes/02-loosen-one-turn.yaml')).joints;
    expect(joint?.holes[0]).toEqual({
      id: '1',
      fastener: 'bolt',
      opensInto: 'not-stated',
      onThread: 'not-stated',
      underHead: 'not-stated',
    });
    expect(joint?.fasteners[0]).toEqual({ id: 'bolt', name: 'head bolt', thread: 'not stated', use: 'not-stated' });
    expect(joint).not.toHaveProperty('order');
  });

  it('holds the three forms of a wear limit apart, and the scope in parts', () => {
    const { limits } = engineOf(read('sheets/quernside-51-v8.yaml'));
    const named = (what: string) => limits.find((each) => `${each.part} ${each.what}` === what);
    expect(named('cylinder bore diameter')?.wear).toMatchObject({ form: 'change-from-new', text: '0.15 mm' });
    expect(named('cylinder bore taper')?.wear).toMatchObject({ form: 'absolute', window: { high: 0.00006 } });
    expect(named('lifter clearance in bore')?.wear).toMatchObject({ form: 'clearance' });
    const pistons = limits.filter((each) => `${each.part} ${each.what}` === 'piston clearance');
    expect(pistons.map((each) => each.applies?.cylinders)).toEqual([
      [1, 2, 3, 4, 5, 6],
      [7, 8],
    ]);
    expect(named('ring gap, top')).toMatchObject({ scope: 'at 25 mm', applies: { depth: { value: 0.025 } } });
  });

  it('takes cam events from either side of their dead centre', () => {
    const { cam } = engineOf(read('sheets/pellgarth-t4-twin-cam.yaml'));
    const degrees = Object.values(cam?.events ?? {}).map((angle) => Math.round(toUnit('angle', angle, 'deg')));
    expect(degrees).toEqual([-2, 34, 38, -4]);
    expect(cam).toMatchObject({ basis: 'at-lift', checkingLift: { text: '1.00 mm' } });
  });
});
