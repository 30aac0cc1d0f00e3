/** Printed clearances of the transcribed engines: part ranges as readings of the engine's own plan give their ends, or show the misprint. */
import { describe, expect, it } from 'vitest';
import { engineOf, read } from '../engine/load/try-sheets.suite.js';
import { assess } from './assess.js';
import { EXACT, EXACT_GAUGE, findingIn, placeIn, readAll, readingsOf } from './assess.suite.js';
import { inspectionPlan } from './features/index.js';
import type { SlotReading } from './model.js';

type Ends = readonly [low: number, high: number];
interface Row {
  readonly sheet: string;
  readonly page: string;
  readonly what: string;
  readonly property: string;
  readonly unit: 'mm' | 'in';
  /** Feature of the hole and of the shaft, and the place where they are read. */
  readonly hole: readonly [feature: string, ends: Ends];
  readonly shaft: readonly [feature: string, ends: Ends];
  readonly at: 'cylinder' | 'cam' | 'intake' | 'exhaust';
  /** What the parts give, and what is printed. */
  readonly gives: Ends;
  readonly printed: Ends;
}
const row = (
  sheet: string,
  page: string,
  what: string,
  property: string,
  unit: Row['unit'],
  at: Row['at'],
  hole: Row['hole'],
  shaft: Row['shaft'],
  gives: Ends,
  printed: Ends = gives,
): Row => ({ sheet, page, what, property, unit, at, hole, shaft, gives, printed });

const SOHC = 'sm-sohc-v8-90x106';
const OHV = 'sm-ohv-v8-99x92';
const DIESEL = 'tm5-6115-400-35';
/** From reference/engine-*.json, `checks`; the page is the source key there. */
const ROWS: readonly Row[] = [
  row(
    SOHC,
    'SM1',
    'stem clearance, intake',
    'stem.clearance',
    'mm',
    'intake',
    ['valve-guide', [7.015, 7.044]],
    ['valve-stem', [6.975, 6.995]],
    [0.02, 0.069],
  ),
  row(
    SOHC,
    'SM1',
    'stem clearance, exhaust',
    'stem.clearance',
    'mm',
    'exhaust',
    ['valve-guide', [7.015, 7.044]],
    ['valve-stem', [6.949, 6.97]],
    [0.045, 0.095],
  ),
  row(
    SOHC,
    'SM1',
    'cam journal clearance',
    'cam-bearing.clearance',
    'mm',
    'cam',
    ['cam-bearing', [26.987, 27.012]],
    ['cam-journal', [26.936, 26.962]],
    [0.025, 0.076],
  ),
  row(
    SOHC,
    'SM1, SM2',
    'piston clearance grade 1',
    'piston.clearance',
    'mm',
    'cylinder',
    ['cylinder-bore', [90.2, 90.21]],
    ['piston-skirt', [90.165, 90.175]],
    [0.025, 0.045],
    [-0.005, 0.025],
  ),
  row(
    SOHC,
    'SM1, SM2',
    'piston clearance grade 2',
    'piston.clearance',
    'mm',
    'cylinder',
    ['cylinder-bore', [90.21, 90.22]],
    ['piston-skirt', [90.175, 90.185]],
    [0.025, 0.045],
    [-0.005, 0.025],
  ),
  row(
    SOHC,
    'SM1, SM2',
    'piston clearance grade 3',
    'piston.clearance',
    'mm',
    'cylinder',
    ['cylinder-bore', [90.22, 90.23]],
    ['piston-skirt', [90.185, 90.195]],
    [0.025, 0.045],
    [-0.005, 0.025],
  ),
  row(
    OHV,
    'SM3',
    'cam journal clearance',
    'cam-bearing.clearance',
    'mm',
    'cam',
    ['cam-bearing', [55.063, 55.088]],
    ['cam-journal', [54.99, 55.04]],
    [0.023, 0.098],
  ),
  row(
    'sm-ohv-v8-425x400',
    'SM9',
    'piston clearance',
    'piston.clearance',
    'in',
    'cylinder',
    ['cylinder-bore', [4.25, 4.2507]],
    ['piston-skirt', [4.2477, 4.2482]],
    [0.0018, 0.003],
  ),
  row(
    'tm10-3930-653-14p',
    'p. 61',
    'piston clearance from the part ranges',
    'piston.clearance',
    'mm',
    'cylinder',
    ['cylinder-bore', [87.2, 87.25]],
    ['piston-skirt', [87.165, 87.215]],
    [-0.015, 0.085],
    [0.025, 0.045],
  ),
  row(
    'tm9-2815-237-34',
    'p. 2-191',
    'piston clearance from part ranges',
    'piston.clearance',
    'in',
    'cylinder',
    ['cylinder-bore', [3.978, 3.981]],
    ['piston-skirt', [3.9729, 3.9754]],
    [0.0026, 0.0081],
    [0.0035, 0.0045],
  ),
  row(
    'tm5-6115-584-34',
    'p. 1-5',
    'pin clearance in rod',
    'pin.clearance-in-rod',
    'in',
    'cylinder',
    ['small-end-bore', [0.9903, 0.9906]],
    ['piston-pin', [0.9899, 0.9901]],
    [0.0002, 0.0007],
  ),
  row(
    'tm5-6115-584-34',
    'p. 1-5',
    'pin fit in piston',
    'pin.clearance-in-piston',
    'in',
    'cylinder',
    ['pin-bore', [0.99005, 0.99025]],
    ['piston-pin', [0.9899, 0.9901]],
    [-0.00005, 0.00035],
    [0.0005, 0.0025],
  ),
  row(
    DIESEL,
    'p. 8',
    'sleeve clearance below flange',
    'liner.clearance-upper',
    'in',
    'cylinder',
    ['liner-upper-seat', [5.874, 5.876]],
    ['liner-upper-outside', [5.871, 5.873]],
    [0.001, 0.005],
  ),
  row(
    DIESEL,
    'p. 8',
    'sleeve clearance at packing rings',
    'liner.clearance-lower',
    'in',
    'cylinder',
    ['liner-lower-seat', [5.781, 5.783]],
    ['liner-lower-outside', [5.778, 5.78]],
    [0.001, 0.005],
  ),
  row(
    DIESEL,
    'p. 8',
    'sleeve clearance at flange',
    'liner.clearance-flange',
    'in',
    'cylinder',
    ['counterbore', [6.229, 6.234]],
    ['liner-flange-outside', [6.217, 6.221]],
    [0.008, 0.017],
  ),
];
const exact: Partial<SlotReading> = { instrument: 'exact' };
const HALF_DIGIT = 6e-7;
const SI = { mm: 1e-3, in: 0.0254 } as const;

describe('clearances that the manuals print', () => {
  for (const { sheet, page, what, property, unit, at, hole, shaft, gives, printed } of ROWS)
    it(`${sheet}, ${page}: ${what}`, () => {
      const engine = engineOf(read(`sheets/transcribed/${sheet}.yaml`));
      const { features } = inspectionPlan(engine);
      const places = features.find(({ kind }) => kind.id === hole[0])?.places ?? [];
      const place = places.find(({ valve }) => (at === 'intake' || at === 'exhaust' ? valve?.kind === at : true));
      expect(place, `the plan has ${hole[0]}`).toBeDefined();
      const id = place!.id;
      placeIn(engine, shaft[0], id);
      const end = (holeEnd: number, shaftEnd: number) => {
        const taken = [
          ...readAll(engine, hole[0], id, `${holeEnd} ${unit}`, exact),
          ...readAll(engine, shaft[0], id, `${shaftEnd} ${unit}`, exact),
        ];
        return findingIn(
          assess(engine, readingsOf(taken, { instruments: [EXACT_GAUGE] }), EXACT).findings,
          `${property}@${id}`,
        );
      };
      const tight = end(hole[1][0], shaft[1][1]);
      const loose = end(hole[1][1], shaft[1][0]);
      expect(Math.abs(tight.size!.value - gives[0] * SI[unit])).toBeLessThan(HALF_DIGIT);
      expect(Math.abs(loose.size!.value - gives[1] * SI[unit])).toBeLessThan(HALF_DIGIT);
      const against = (one: typeof tight) => one.held.find((held) => held.against === 'new')?.verdict;
      // Where the print agrees with the parts, both ends are in; where it does not, one of them is seen to be out.
      if (gives[0] >= printed[0] && gives[1] <= printed[1])
        expect([against(tight), against(loose)]).toEqual(['in', 'in']);
      else expect([against(tight), against(loose)]).toContain('out');
    });
});
