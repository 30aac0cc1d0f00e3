import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cautionsOf, numberOf, outputOf, refusalOf, run } from './run.suite.js';

const effective = 'cylinder.effective-ratio';
const engine = { staticRatio: '10', stroke: '3.480 in', rodLength: '5.700 in', intakeCloses: '60 deg' };

describe('effective ratio', () => {
  it('is the static ratio when the intake closes at bottom dead centre', () => {
    expect(numberOf(effective, { ...engine, intakeCloses: '0 deg' }, 'effective')).toBeCloseTo(10, 12);
  });

  it('falls as the intake closes later, and lies between 1 and the static ratio', () => {
    const angle = fc.double({ min: 0, max: 170, noNaN: true });
    fc.assert(
      fc.property(angle, angle, (a, b) => {
        const [early, late] = [Math.min(a, b), Math.max(a, b)];
        const at = (deg: number) =>
          numberOf(effective, { ...engine, intakeCloses: { value: deg, unit: 'deg' } }, 'effective');
        expect(at(late)).toBeLessThanOrEqual(at(early) + 1e-12);
        expect(at(late)).toBeGreaterThan(1);
        expect(at(early)).toBeLessThanOrEqual(10);
      }),
    );
  });

  it('gives the static ratio back', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1.5, max: 20, noNaN: true }),
        fc.double({ min: -60, max: 120, noNaN: true }),
        (cr, ic) => {
          const closing = {
            stroke: '90 mm',
            rodLength: '150 mm',
            pinOffset: '1 mm',
            intakeCloses: { value: ic, unit: 'deg' },
          };
          const found = { value: numberOf(effective, { ...closing, staticRatio: cr }, 'effective'), unit: '' };
          expect(
            numberOf('cylinder.static-for-effective', { ...closing, effective: found }, 'staticRatio'),
          ).toBeCloseTo(cr, 8);
        },
      ),
    );
  });

  it('says where the closing was taken, and that it matters when nobody said', () => {
    expect(run(effective, engine).cautions[0]?.text).toContain('is not said; it is worth about one whole point');
    expect(run(effective, { ...engine, closingPoint: 'seat' }).cautions[0]?.text).toBe('intake closing taken at: seat');
    const { staticRatio: _, ...closing } = engine;
    expect(cautionsOf('cylinder.static-for-effective', { ...closing, effective: '8' })).toEqual(['closing-point']);
  });

  it('refuses a crank that could not turn, and a closing that leaves no stroke', () => {
    expect(refusalOf(effective, { ...engine, rodLength: '1.7 in' })).toMatch(
      /could not turn; rodLength must be above 1.74 in/,
    );
    const { staticRatio: _, ...rest } = engine;
    const id = 'cylinder.static-for-effective';
    expect(refusalOf(id, { ...rest, effective: '8', rodLength: '1.7 in' })).toMatch(/could not turn/);
    expect(refusalOf(id, { ...rest, effective: '8', intakeCloses: '100 deg', laterBy: '80 deg' })).toMatch(
      /no stroke is left/,
    );
  });
});

describe('cylinder volume over a turn', () => {
  const id = 'cylinder.volume-at-angle';
  const inputs = { bore: '86 mm', stroke: '86 mm', rodLength: '166 mm', staticRatio: '9.5', crankAngle: '0 deg' };

  it('runs from the clearance volume to all of it', () => {
    const top = run(id, inputs).outputs;
    expect(top.volume?.value).toBeCloseTo(Number(top.clearance?.value), 9);
    expect(top.share?.value).toBeCloseTo(1 / 9.5, 9);
    expect(outputOf(id, { ...inputs, crankAngle: '180 deg' }, 'share')).toBeCloseTo(1, 9);
  });

  it('refuses a rod shorter than the throw', () => {
    expect(refusalOf(id, { ...inputs, rodLength: '40 mm' })).toMatch(/could not turn/);
  });
});

describe('cranking pressure', () => {
  it('is turned back into its ratio, and is marked as an estimate', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 2, max: 15, noNaN: true }),
        fc.double({ min: 1.1, max: 1.4, noNaN: true }),
        (cr, k) => {
          const gauge = {
            value: numberOf('cylinder.cranking-pressure', { effective: cr, exponent: k }, 'gauge'),
            unit: 'kPa',
          };
          expect(numberOf('cylinder.ratio-from-pressure', { gauge, exponent: k }, 'effective')).toBeCloseTo(cr, 8);
        },
      ),
    );
    expect(cautionsOf('cylinder.cranking-pressure', { effective: '8' })).toEqual(['advisory']);
    expect(cautionsOf('cylinder.ratio-from-pressure', { gauge: '180 psi' })).toEqual(['advisory']);
  });

  it('falls with the height above the sea', () => {
    expect(numberOf('cylinder.air-pressure', { altitude: '0 m' }, 'pressure')).toBeCloseTo(101.325, 9);
    expect(numberOf('cylinder.air-pressure', { altitude: '3000 m' }, 'pressure')).toBeLessThan(90);
  });
});

describe('gas figures', () => {
  const id = 'cylinder.mean-gas-speed';
  const engine = { bore: '100 mm', stroke: '90 mm', crankSpeed: '6000 rpm' };

  it('counts all valves of a kind', () => {
    const two = numberOf(id, { ...engine, valveDiameter: '30 mm', valves: 2 }, 'gasSpeed');
    // Hand arithmetic: 18 m/s · 100²/(2·30²).
    expect(two).toBeCloseTo(100, 9);
    expect(cautionsOf(id, { ...engine, area: '1400 mm2' })).toEqual(['advisory']);
  });

  it('needs exactly one of area and valve', () => {
    expect(refusalOf(id, engine)).toMatch(/exactly one/);
    expect(refusalOf(id, { ...engine, area: '1 mm2', valveDiameter: '1 mm' })).toMatch(/exactly one/);
  });
});
