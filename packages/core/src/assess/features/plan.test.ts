import { describe, expect, it } from 'vitest';
import type { Engine } from '../../engine/index.js';
import { row, SHEETS, sheet, withLimits } from '../limits/limit.suite.js';
import { PROPERTIES } from '../limits/properties.js';
import { propertiesOfLimit } from '../limits/property-of-limit.js';
import { FEATURE_RULES, featureOf, inspectionPlan, slotsOf } from './index.js';

const V8 = sheet('quernside');
const ids = (engine: Engine) => inspectionPlan(engine).features.map(({ kind }) => kind.id);
const places = (engine: Engine, feature: string) =>
  featureOf(inspectionPlan(engine), feature)?.places.map(({ id }) => id) ?? [];
const readings = (engine: Engine, feature: string) =>
  slotsOf(inspectionPlan(engine)).filter((slot) => slot.startsWith(`${feature}/`)).length;

describe('the inspection plan of a pushrod V8', () => {
  it(`holds ${slotsOf(inspectionPlan(V8)).length} readings, as many as the trade counts for a V8 measured properly and in full`, () => {
    expect(slotsOf(inspectionPlan(V8)).length).toBeGreaterThan(600);
    expect(slotsOf(inspectionPlan(V8)).length).toBeLessThan(1520);
  });

  // trade-map.md section 3: "8 bores x 6 = 48; 5 main + 4 rod journals x 4 = 36; ... 16 lifters and bores x 6 = 96; 16 springs x 3".
  it('counts them as the trade map does', () => {
    expect(readings(V8, 'cylinder-bore')).toBe(48);
    expect(readings(V8, 'main-journal') + readings(V8, 'crankpin')).toBe(36);
    expect(readings(V8, 'main-housing')).toBe(5 * 6);
    expect(readings(V8, 'lifter') + readings(V8, 'lifter-bore')).toBe(96);
    expect(['spring-free-length', 'spring-load-closed', 'spring-load-open'].map((id) => readings(V8, id))).toEqual([
      16, 16, 16,
    ]);
  });

  it('asks first for what the strip-down destroys', () => {
    const features = inspectionPlan(V8).features;
    const last = features.map(({ kind }) => kind.vanishes === true).lastIndexOf(true);
    expect(features.slice(0, last + 1).every(({ kind }) => kind.vanishes)).toBe(true);
    expect(ids(V8).slice(0, 3)).toEqual(['crank-end-float', 'cam-end-float', 'rod-side-clearance']);
  });

  it('then goes from the block to the springs', () => {
    const order = [
      'cylinder-bore',
      'main-journal',
      'big-end-bore',
      'piston-skirt',
      'ring-gap-top',
      'cam-journal',
      'lifter',
      'head-flatness',
      'valve-guide',
      'spring-free-length',
    ];
    const at = order.map((id) => ids(V8).indexOf(id));
    expect(at).toEqual([...at].sort((a, b) => a - b));
    expect(at).not.toContain(-1);
  });

  it('walks out along one bank and back along the other', () => {
    expect(places(V8, 'cylinder-bore')).toEqual(['1', '3', '5', '7', '8', '6', '4', '2']);
  });

  it('keeps parts that lie on the bench in the order of their numbers', () => {
    expect(places(V8, 'piston-skirt')).toEqual(['1', '2', '3', '4', '5', '6', '7', '8']);
  });

  it('goes along the valves as they stand in the head', () => {
    expect(places(V8, 'valve-stem').slice(0, 4)).toEqual(['1-exhaust-1', '1-intake-1', '3-intake-1', '3-exhaust-1']);
  });

  it('reads heights and directions that the maker names', () => {
    const stations = featureOf(inspectionPlan(V8), 'cylinder-bore')?.places[0]?.stations ?? [];
    expect(stations.map(({ id }) => id)).toEqual([
      'top-thrust',
      'top-axial',
      'middle-thrust',
      'middle-axial',
      'bottom-thrust',
      'bottom-axial',
    ]);
    expect(stations[1]?.name).toBe('top, 18 mm below the deck, along the crank');
  });

  it('says at which height the spring is loaded', () => {
    const how = (id: string) => featureOf(inspectionPlan(V8), id)?.kind.how;
    expect(how('spring-load-closed')).toBe('Close the spring to 42.0 mm and read the load.');
    expect(how('spring-load-open')).toBe('Close the spring to 30.2 mm and read the load.');
  });

  it('takes nothing for granted that this sheet says', () => {
    expect(inspectionPlan(V8).assumptions).toEqual([]);
  });
});

describe('what an engine has follows from its sheet', () => {
  it('buckets and shims over a twin-cam head, no pushrods', () => {
    const twin = sheet('pellgarth');
    expect(ids(twin)).toEqual(expect.arrayContaining(['bucket', 'bucket-bore', 'shim-thickness', 'valve-lash']));
    expect(ids(twin).filter((id) => /lifter|pushrod|liner/.test(id))).toEqual([]);
    expect(places(twin, 'cam-end-float')).toEqual(['intake-camshaft', 'exhaust-camshaft']);
    expect(featureOf(inspectionPlan(twin), 'cam-bearing')?.kind).toMatchObject({ area: 'heads', material: 'head' });
  });

  it('liners, protrusions and recesses in a wet-liner diesel, and no deck clearance', () => {
    const diesel = sheet('tollbarrow');
    expect(ids(diesel)).toEqual(
      expect.arrayContaining([
        'liner-protrusion',
        'counterbore-depth',
        'liner-flange',
        'liner-lower-outside',
        'piston-protrusion',
        'valve-recess',
        'injector-protrusion',
        'timing-backlash',
      ]),
    );
    expect(ids(diesel)).not.toContain('deck-clearance');
    expect(featureOf(inspectionPlan(diesel), 'cylinder-bore')?.kind.material).toBe('liner');
    expect(places(diesel, 'main-journal')).toHaveLength(7);
  });

  it('no lash with hydraulic lifters, no crown on roller lifters', () => {
    expect(ids(V8)).not.toContain('valve-lash');
    expect(ids(V8)).toContain('lifter-crown');
    expect(ids(sheet('99x92'))).not.toContain('lifter-crown');
  });

  it.each(SHEETS)('every limit of %s has its worksheet', (_path, engine) => {
    const has = new Set(ids(engine));
    const needed = engine.limits.flatMap(propertiesOfLimit).flatMap((id) => PROPERTIES.get(id)?.needs ?? []);
    expect(needed.filter((id) => !has.has(id))).toEqual([]);
  });

  it('a clearance brings both of its parts in', () => {
    const asked = withLimits(V8, row('rocker', 'clearance on its shaft'));
    expect(ids(asked)).toEqual(expect.arrayContaining(['rocker-bore', 'rocker-shaft']));
    expect(ids(V8)).not.toContain('rocker-bore');
  });

  it('is made once for one engine', () => {
    expect(inspectionPlan(V8)).toBe(inspectionPlan(V8));
  });
});

describe('journals that the sheet does not count', () => {
  const silent = (engine: Engine): Engine => ({ ...engine, inspection: {}, limits: [] });

  it('are one more than the crankpins in a vee, and the plan says so', () => {
    expect(places(silent(V8), 'main-journal')).toHaveLength(5);
    expect(inspectionPlan(silent(V8)).assumptions?.[0]).toEqual({
      feature: 'main-journal',
      words: '5 main journals, one beside every crankpin: the sheet does not say how many',
    });
  });

  it('are one more than the cylinders in line', () => {
    expect(places(silent(sheet('tollbarrow')), 'main-journal')).toHaveLength(7);
  });

  it('stand at the ends of each pair in an opposed engine', () => {
    const flat: Engine = {
      ...silent(V8),
      layout: {
        ...V8.layout,
        form: 'opposed',
        cylinders: V8.layout.cylinders.slice(0, 4).map(({ number, bank, place }) => ({ number, bank, place })),
      },
    };
    expect(places(flat, 'crankpin')).toHaveLength(4);
    expect(places(flat, 'main-journal')).toHaveLength(3);
  });

  it('are taken from the numbers in the limits where those have them', () => {
    expect(places(sheet('tm10'), 'cam-journal')).toEqual(['camshaft-1', 'camshaft-2', 'camshaft-3']);
  });

  it('share a crankpin in a vee that does not name its crankpins', () => {
    expect(places(sheet('425x400'), 'crankpin')).toHaveLength(4);
  });
});

describe('feature kinds', () => {
  it('have one id each, in whole words', () => {
    const all = FEATURE_RULES.map(({ kind }) => kind.id);
    expect(new Set(all).size).toBe(all.length);
    expect(all.filter((id) => !/^[a-z]+(-[a-z]+)*$/.test(id))).toEqual([]);
  });

  it('name their sizes after themselves, each once', () => {
    const sizes = FEATURE_RULES.flatMap(({ kind }) => kind.sizes.map(({ property }) => [kind.id, property] as const));
    expect(sizes.filter(([id, property]) => !property.startsWith(`${id}.`))).toEqual([]);
    expect(new Set(sizes.map(([, property]) => property)).size).toBe(sizes.length);
  });

  it.each(SHEETS)('form sizes in %s only from stations that are read', (_path, engine) => {
    for (const { kind, places: all } of inspectionPlan(engine).features) {
      for (const { stations = [] } of kind.sizes) {
        const has = new Set(all[0]?.stations.map(({ id }) => id));
        expect(stations.filter((id) => !has.has(id))).toEqual([]);
      }
    }
  });
});

describe('camshafts', () => {
  const bucketed = sheet('pellgarth');
  const withShafts = (camshafts: number) => ({ ...bucketed, inspection: { ...bucketed.inspection, camshafts } });
  it('are as many as the sheet says, and then nothing is taken for granted', () => {
    expect(places(withShafts(1), 'cam-runout')).toEqual(['camshaft']);
    expect(places(withShafts(2), 'cam-runout')).toEqual(['intake-camshaft', 'exhaust-camshaft']);
    expect(places(withShafts(3), 'cam-runout')).toEqual(['camshaft-1', 'camshaft-2', 'camshaft-3']);
    const said = inspectionPlan(withShafts(2)).assumptions?.map(({ words }) => words) ?? [];
    expect(said.join()).not.toContain('camshafts a bank');
  });
  it('under buckets are two a bank where the sheet is silent, and the plan says so', () => {
    const { camshafts: _, ...silent } = bucketed.inspection ?? {};
    const engine = { ...bucketed, inspection: silent };
    expect(places(engine, 'cam-runout')).toEqual(['intake-camshaft', 'exhaust-camshaft']);
    expect(
      inspectionPlan(engine)
        .assumptions?.map(({ words }) => words)
        .join(),
    ).toContain('two camshafts a bank');
  });
});
