import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Angle,
  type Compliance,
  degrees,
  type Force,
  inch,
  kelvinDifference,
  kilonewtons,
  mm,
  newtonMetres,
  type Pressure,
  poundFeet,
  psi,
  ratio,
  type ThermalExpansion,
} from '../../quantity/index.js';
import { MEMBER_FIT } from './clamped.js';
import {
  type Adapter,
  angleForPreload,
  type BoltShape,
  barCompliance,
  boltDepth,
  boltResilience,
  type ConeJoint,
  complianceOf,
  coneCompliance,
  coneStiffness,
  drives,
  embeddingAmount,
  embeddingLoss,
  fittedStiffness,
  leastEngagement,
  methods,
  preloadForAngle,
  readThread,
  roughnesses,
  scatterOf,
  settingFor,
  sleeveCompliance,
  stageTorques,
  stressArea,
  type Thread,
  thermalPreload,
  tighteningFactor,
  torqueAtFastener,
  wholeResilience,
} from './index.js';
import { circle } from './thread.js';

const thread = (text: string): Thread => {
  const found = readThread(text);
  if (!found.ok) throw new Error(text);
  return found.value;
};
const STEEL = 205e9 as Pressure;
const IRON = 110e9 as Pressure;
const m10 = thread('M10 x 1.5');
const bolt: BoltShape = {
  thread: m10,
  modulus: STEEL,
  shank: [{ length: mm(60), diameter: mm(10) }],
  freeThread: mm(25),
  threadArea: 'root',
  head: 'hexagon',
  partner: { kind: 'tapped', modulus: IRON },
};

describe('resilience', () => {
  it('of a bar cut in pieces is that of the whole', () => {
    const piece = fc.double({ min: 1, max: 100, noNaN: true });
    fc.assert(
      fc.property(fc.array(piece, { minLength: 1, maxLength: 6 }), (lengths) => {
        const each = lengths.map((one) => barCompliance(mm(one), circle(mm(10)), STEEL));
        const whole = lengths.reduce((sum, one) => sum + one, 0);
        const sum = each.reduce((all, one) => all + one, 0);
        expect(sum / barCompliance(mm(whole), circle(mm(10)), STEEL)).toBeCloseTo(1, 10);
      }),
    );
  });

  it('of a sleeve without a hole is that of a bar', () => {
    expect(sleeveCompliance(mm(22), mm(0), mm(85), IRON)).toBe(barCompliance(mm(85), circle(mm(22)), IRON));
  });

  it('counts a hexagon head for half a diameter, a socket head for 0.4, none for nothing (VDI 2230, from memory)', () => {
    const head = (kind: BoltShape['head']) => boltResilience({ ...bolt, head: kind }).head;
    const whole = barCompliance(mm(10), circle(mm(10)), STEEL);
    expect(head('hexagon') / whole).toBeCloseTo(0.5, 12);
    expect(head('socket') / whole).toBeCloseTo(0.4, 12);
    expect(head('none')).toBe(0);
  });

  it('counts a nut with the bolt’s modulus, a tapped part with its own, and nothing without either', () => {
    const into = (partner: BoltShape['partner']) => boltResilience({ ...bolt, partner });
    const steel = barCompliance(mm(10), circle(mm(10)), STEEL);
    expect(into({ kind: 'nut' }).partner / steel).toBeCloseTo(0.4, 12);
    expect(into({ kind: 'tapped', modulus: IRON }).partner / steel).toBeCloseTo((0.33 * 205) / 110, 12);
    expect(into({ kind: 'none' })).toMatchObject({ partner: 0, engagedThread: 0 });
    expect(into({ kind: 'nut' }).engagedThread).toBeGreaterThan(0);
  });

  it('of a stud without anything else is its shank and thread', () => {
    const stud: BoltShape = { ...bolt, head: 'none', partner: { kind: 'none' }, threadArea: 'stress' };
    const by = barCompliance(mm(25), stressArea(m10), STEEL) + barCompliance(mm(60), circle(mm(10)), STEEL);
    expect(wholeResilience(boltResilience(stud)) / by).toBeCloseTo(1, 12);
  });
});

describe('clamped parts', () => {
  const steel = psi(30e6);

  it('are as stiff in layers of one material as in one piece', () => {
    const cuts = fc.array(fc.double({ min: 0.05, max: 0.6, noNaN: true }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(cuts, (thicknesses) => {
        const layers = thicknesses.map((one) => ({ thickness: inch(one), modulus: steel }));
        const grip = thicknesses.reduce((sum, one) => sum + one, 0);
        const whole = coneStiffness([{ thickness: inch(grip), modulus: steel }], inch(0.5), inch(0.75), degrees(30));
        expect(coneStiffness(layers, inch(0.5), inch(0.75), degrees(30)) / whole).toBeCloseTo(1, 9);
      }),
    );
  });

  it('agree with the closed form of the textbook for one material: 0.5774·π·E·d/(2·ln[5·(…)/(…)])', () => {
    for (const grip of [0.5, 1.095, 2, 5]) {
      const closed =
        (0.57735 * Math.PI * steel * inch(0.5)) /
        (2 * Math.log((5 * (0.57735 * grip + 0.5 * 0.5)) / (0.57735 * grip + 2.5 * 0.5)));
      const found = coneStiffness([{ thickness: inch(grip), modulus: steel }], inch(0.5), inch(0.75), degrees(30));
      expect(found / closed).toBeCloseTo(1, 5);
    }
  });

  it('give the same from either end, and more with a soft layer', () => {
    const soft = { thickness: inch(0.2), modulus: psi(10e6) };
    const hard = { thickness: inch(0.8), modulus: steel };
    const at = (layers: readonly (typeof soft)[]) => coneStiffness(layers, inch(0.5), inch(0.75), degrees(30));
    expect(at([soft, hard]) / at([hard, soft])).toBeCloseTo(1, 12);
    expect(at([soft, hard])).toBeLessThan(at([{ ...soft, modulus: steel }, hard]));
  });

  it('by the fitted exponential come within a tenth of the cones at usual grips', () => {
    for (const grip of [0.75, 1, 1.5]) {
      const cone = coneStiffness([{ thickness: inch(grip), modulus: steel }], inch(0.5), inch(0.75), degrees(30));
      expect(fittedStiffness('steel', steel, inch(0.5), inch(grip)) / cone).toBeGreaterThan(0.9);
      expect(fittedStiffness('steel', steel, inch(0.5), inch(grip)) / cone).toBeLessThan(1.1);
    }
    expect(Object.values(MEMBER_FIT).every(([a, b]) => a > 0.77 && a < 0.8 && b > 0.61 && b < 0.64)).toBe(true);
  });

  const joint: ConeJoint = {
    kind: 'through',
    bearingOutside: mm(16),
    hole: mm(11),
    grip: mm(40),
    outside: mm(16),
    modulus: STEEL,
  };

  it('as slim as the head are a plain sleeve', () => {
    const sleeve = sleeveCompliance(mm(16), mm(11), mm(40), STEEL);
    expect(coneCompliance(joint) / sleeve).toBeCloseTo(1, 12);
    expect(coneCompliance({ ...joint, outside: mm(15) }) / sleeveCompliance(mm(15), mm(11), mm(40), STEEL)).toBeCloseTo(
      1,
      12,
    );
  });

  it('give less the more room there is, without a jump where the sleeve begins and ends', () => {
    let last = coneCompliance(joint);
    for (let outside = 16.05; outside < 80; outside += 0.05) {
      const now = coneCompliance({ ...joint, outside: mm(outside) });
      expect(now).toBeLessThan(last * 1.000001);
      expect(now / last).toBeGreaterThan(0.97);
      last = now;
    }
  });

  it('have a cone that is worked out by hand: φ 27.8°, 40 mm under a 16 mm face (VDI 2230 form, from memory)', () => {
    // β 2.5, y 5: tan φ = 0.362 + 0.032·ln 1.25 + 0.153·ln 5 = 0.61538; edge 16 + 24.615 = 40.615 mm.
    const slope = 0.362 + 0.032 * Math.log(1.25) + 0.153 * Math.log(5);
    expect(slope).toBeCloseTo(0.61538, 5);
    const cone = Math.log(((16 + 11) * (16 + 40 * slope - 11)) / ((16 - 11) * (16 + 40 * slope + 11)));
    const byHand = (2 * cone) / (205e9 * Math.PI * 0.011 * slope);
    expect(coneCompliance({ ...joint, outside: mm(80) }) / byHand).toBeCloseTo(1, 9);
  });

  it('tapped spread from one face only, to twice the depth', () => {
    const wide = { ...joint, outside: mm(200) };
    expect(coneCompliance({ ...wide, kind: 'tapped' })).not.toBeCloseTo(coneCompliance(wide), 12);
    const slope = 0.348 + 0.013 * Math.log(2.5) + 0.193 * Math.log(12.5);
    const cone = Math.log(((16 + 11) * (16 + 80 * slope - 11)) / ((16 - 11) * (16 + 80 * slope + 11)));
    const byHand = (2 * cone) / (2 * 205e9 * Math.PI * 0.011 * slope);
    expect(coneCompliance({ ...wide, kind: 'tapped' }) / byHand).toBeCloseTo(1, 9);
  });

  it('are as compliant as they are not stiff', () => {
    const k = coneStiffness([{ thickness: inch(1), modulus: steel }], inch(0.5), inch(0.75), degrees(30));
    expect(complianceOf(k) * k).toBeCloseTo(1, 12);
  });
});

describe('turn and preload', () => {
  it('undo each other', () => {
    const force = fc.double({ min: 1, max: 1e5, noNaN: true }).map((n) => n as Force);
    const give = fc.double({ min: 1e-9, max: 1e-7, noNaN: true }).map((n) => n as Compliance);
    fc.assert(
      fc.property(force, give, (preload, compliance) => {
        const angle = angleForPreload(preload, compliance, mm(1.5));
        expect(preloadForAngle(angle, compliance, mm(1.5)) / preload).toBeCloseTo(1, 10);
      }),
    );
  });

  it('move the nut by one pitch in one turn', () => {
    const compliance = 1e-8 as Compliance;
    expect(preloadForAngle(degrees(360), compliance, mm(1.5)) * compliance).toBeCloseTo(mm(1.5), 15);
  });
});

describe('heat and embedding', () => {
  const ppm = (n: number) => (n * 1e-6) as ThermalExpansion;
  const give = 1e-8 as Compliance;
  const warmth = (part: number, head: number, rise: number) => ({
    partExpansion: ppm(part),
    boltExpansion: ppm(head),
    partRise: kelvinDifference(rise),
    boltRise: kelvinDifference(rise),
  });

  it('change nothing where bolt and parts grow alike, gain with alloy hot and lose in the cold', () => {
    expect(thermalPreload(mm(85), give, warmth(11.7, 11.7, 80))).toBe(0);
    expect(thermalPreload(mm(85), give, warmth(21.5, 11.7, 80))).toBeGreaterThan(0);
    expect(thermalPreload(mm(85), give, warmth(21.5, 11.7, -40))).toBeLessThan(0);
  });

  it('lose most on rough faces, many interfaces and stiff joints', () => {
    const amounts = roughnesses.map((one) => embeddingAmount('tension', one, 2, 3));
    expect(amounts).toEqual(amounts.toSorted((a, b) => a - b));
    expect(amounts.map((one) => Number((one * 1e6).toFixed(3)))).toEqual([12.5, 15, 20]);
    const shear = roughnesses.map((one) => Number((embeddingAmount('shear', one, 1, 1) * 1e6).toFixed(3)));
    expect(shear).toEqual([8, 10, 13]);
    expect(embeddingLoss(mm(0.008), 9.928e-9 as Compliance) / kilonewtons(0.8058)).toBeCloseTo(1, 4);
  });
});

describe('wrench adapter', () => {
  const adapter = fc
    .record({
      wrench: fc.double({ min: 200, max: 1000, noNaN: true }),
      reach: fc.double({ min: 0, max: 199, noNaN: true }),
      angle: fc.double({ min: -360, max: 360, noNaN: true }),
    })
    .map(({ wrench, reach, angle }): Adapter => ({ wrench: mm(wrench), reach: mm(reach), angle: degrees(angle) }));

  it('comes back to the torque wanted', () => {
    fc.assert(
      fc.property(adapter, (one) => {
        expect(drives(one)).toBe(true);
        expect(torqueAtFastener(settingFor(newtonMetres(90), one), one)).toBeCloseTo(90, 9);
      }),
    );
  });

  it('is set lower straight ahead, higher folded back, and not changed at a right angle', () => {
    const at = (angle: number) =>
      settingFor(newtonMetres(90), { wrench: mm(400), reach: mm(60), angle: degrees(angle) });
    expect(at(0)).toBeLessThan(90);
    expect(at(180)).toBeGreaterThan(90);
    expect(at(90)).toBeCloseTo(90, 12);
    expect(at(-45)).toBeCloseTo(at(45), 12);
  });

  it('does not drive when it reaches back behind the hand', () => {
    expect(drives({ wrench: mm(100), reach: mm(100), angle: Math.PI as Angle })).toBe(false);
    expect(drives({ wrench: mm(100), reach: mm(120), angle: Math.PI as Angle })).toBe(false);
  });
});

describe('stages', () => {
  it('round to the wrench, the last one down', () => {
    const shares = [0.3, 0.6, 1].map(ratio);
    const shown = stageTorques(poundFeet(65.4), shares, poundFeet(1)).map((one) => one / poundFeet(1));
    expect(shown.map((one) => Number(one.toFixed(6)))).toEqual([20, 39, 65]);
    const high = stageTorques(poundFeet(65.9), shares, poundFeet(1)).at(-1);
    expect((high ?? 0) / poundFeet(1)).toBeCloseTo(65, 9);
    const exact = stageTorques(poundFeet(65), [ratio(1)], poundFeet(0.5)).at(-1);
    expect((exact ?? 0) / poundFeet(65)).toBeCloseTo(1, 12);
  });
});

describe('engagement', () => {
  it('ends at the end of the thread and never below nothing', () => {
    const found = boltDepth(mm(60), [mm(30)], mm(25), mm(2));
    expect(found.reach).toBeCloseTo(mm(30), 12);
    expect(found.engaged).toBeCloseTo(mm(23), 12);
    expect(found.spare).toBeCloseTo(mm(-5), 12);
    expect(boltDepth(mm(31), [mm(30)], mm(25), mm(2)).engaged).toBe(0);
  });

  it('is asked for by the diameter, whatever the pitch', () => {
    expect(leastEngagement(thread('M10 x 1.25'), 'aluminium')).toBe(leastEngagement(m10, 'aluminium'));
    expect(leastEngagement(m10, 'steel or cast iron') / leastEngagement(m10, 'aluminium')).toBeCloseTo(0.625, 12);
  });
});

describe('methods of tightening', () => {
  it('scatter less the nearer they measure to the preload (order of the 1986 table)', () => {
    const worst = methods.map((method) => scatterOf(method).high);
    expect(worst).toEqual(worst.toSorted((a, b) => a - b));
    for (const method of methods) {
      const { low, high } = scatterOf(method);
      expect(tighteningFactor(low)).toBeLessThan(tighteningFactor(high));
    }
  });
});

it('stretches by the same share in inches and in millimetres', () => {
  const metric = barCompliance(mm(25.4), circle(mm(25.4)), STEEL);
  expect(barCompliance(inch(1), circle(inch(1)), STEEL)).toBeCloseTo(metric, 20);
});
