import { describe, expect, it } from 'vitest';
import { mm, refusal, result, values } from './run.suite.js';

describe('a size at 20 °C', () => {
  it('needs to know what the part is made of', () => {
    const part = { partTemperature: '28 °C' };
    expect(refusal('size-at-reference', { reading: '1 mm', ...part })).toMatch(/expansion of the part or its material/);
    expect(refusal('reading-at-temperature', { size: '1 mm', ...part })).toMatch(
      /expansion of the part or its material/,
    );
  });
  it('a figure goes before the table', () => {
    const given = { size: '100 mm', partTemperature: '30 °C', partMaterial: 'steel', partExpansion: '10 ppm/K' };
    expect(values('reading-at-temperature', given).change).toBeCloseTo(0.01, 9);
  });
  it('a warm gauge reads low', () => {
    const warm = { reading: '100 mm', partTemperature: '20 °C', partMaterial: 'steel', gaugeTemperature: '30 °C' };
    expect(values('size-at-reference', warm).correction).toBeCloseTo(0.0115, 9);
  });
  it('may be referred to 68 °F, which is 20 °C', () => {
    const inches = { reading: '4.0000 in', partTemperature: '83 °F', partExpansion: '6 ppm/°F', reference: '68 °F' };
    const found = values('size-at-reference', inches);
    expect(found.correction).toBeCloseTo(-101.6 * (1 - 1 / 1.00009), 7);
  });
});

describe('a clearance at 20 °C', () => {
  const fit = { hole: '101.64 mm', holeTemperature: '28 °C', shaft: '101.58 mm', shaftTemperature: '28 °C' };
  it('needs both materials', () => {
    expect(refusal('clearance-at-reference', { ...fit, shaftMaterial: 'steel' })).toMatch(/material of the hole/);
    expect(refusal('clearance-at-reference', { ...fit, holeMaterial: 'steel' })).toMatch(/material of the shaft/);
  });
  it('of two parts of one material at one temperature hardly changes', () => {
    const same = { ...fit, holeMaterial: 'steel', shaftMaterial: 'steel' };
    expect(values('clearance-at-reference', same).correction).toBeCloseTo(-0.06 * 11.5e-6 * 8, 7);
  });
  it('with the gauge as warm as both, of the same steel, needs no correction at all', () => {
    const same = { ...fit, holeMaterial: 'steel', shaftMaterial: 'steel', gaugeTemperature: '28 °C' };
    expect(values('clearance-at-reference', same).correction).toBeCloseTo(0, 12);
  });
});

describe('an instrument', () => {
  const setting = { reading: '63.442 mm', standard: '63.500 mm', atStart: '63.502 mm' };
  it('not checked at the end has no known drift, and no verdict', () => {
    const found = values('instrument-correction', setting);
    expect(found).toMatchObject({ size: expect.closeTo(63.44, 9), verdict: 'no data' });
    expect(found.drift).toBeUndefined();
    expect(found.driftUncertainty).toBeUndefined();
  });
  it('drifts evenly between start and end', () => {
    const drifted = { ...setting, atEnd: '63.506 mm' };
    const sizes = ['0', '0.25', '1'].map((share) => values('instrument-correction', { ...drifted, share }).size);
    expect(sizes).toEqual([expect.closeTo(63.44, 9), expect.closeTo(63.439, 9), expect.closeTo(63.436, 9)]);
    expect(values('instrument-correction', drifted).driftUncertainty).toBeCloseTo(0.004 / Math.sqrt(12), 9);
    expect(values('instrument-correction', drifted).verdict).toBe('no data');
  });
  it('that drifted too far asks to check again; a drift at the limit passes, up or down', () => {
    const of = (atEnd: string) =>
      values('instrument-correction', { ...setting, atEnd, allowedDrift: '0.002 mm' }).verdict;
    expect([of('63.504 mm'), of('63.500 mm'), of('63.505 mm'), of('63.499 mm')]).toEqual([
      'in',
      'in',
      'check again',
      'check again',
    ]);
  });
  const pair = { lowSize: '50 mm', lowReading: '50.002 mm', highSize: '75 mm', highReading: '75.006 mm' };
  it('between two standards gives each back, and warns outside them', () => {
    expect(values('two-standards', { ...pair, reading: '50.002 mm' }).size).toBeCloseTo(50, 9);
    expect(values('two-standards', { ...pair, reading: '75.006 mm' }).size).toBeCloseTo(75, 9);
    expect(values('two-standards', { ...pair, reading: '60 mm' }).scale).toBeCloseTo(25 / 25.004, 9);
    const cautions = (reading: string) => result('two-standards', { ...pair, reading }).cautions.length;
    expect(['49 mm', '60 mm', '76 mm'].map(cautions)).toEqual([1, 0, 1]);
  });
  it('two standards the wrong way round are refused', () => {
    expect(refusal('two-standards', { ...pair, reading: '60 mm', highReading: '40 mm' })).toMatch(
      /must read and be more/,
    );
    expect(refusal('two-standards', { ...pair, reading: '60 mm', highSize: '50 mm' })).toMatch(/must read and be more/);
  });
});

describe('an indicator out of line', () => {
  const of = (contact: string) => values('cosine-error', { reading: '10 mm', angle: '30 deg', contact });
  it('reads high on a face across the travel and as a lever, low on a point of the part', () => {
    const cosine = Math.sqrt(3) / 2;
    expect(of('face-across-travel')).toMatchObject({
      travel: expect.closeTo(10 * cosine, 9),
      error: expect.closeTo(10 - 10 * cosine, 9),
    });
    expect(of('lever').travel).toBeCloseTo(10 * cosine, 9);
    expect(of('point-on-part')).toMatchObject({
      travel: expect.closeTo(10 / cosine, 9),
      share: expect.closeTo(100 * (cosine - 1), 9),
    });
  });
});

describe('a plate', () => {
  it('changes diameters; without a wanted size there is nothing to hone to', () => {
    const found = values('plate-change', { withPlate: ['10.01 mm'], withoutPlate: ['10 mm'] });
    expect(found.meanChange).toBeCloseTo(0.01, 9);
    expect([found.honeTo, found.readings]).toEqual([undefined, undefined]);
    const two = values('plate-change', { withPlate: mm([100.02, 100]), withoutPlate: mm([100, 100.01]) });
    expect(two).toMatchObject({
      largestChange: expect.closeTo(0.02, 9),
      smallestChange: expect.closeTo(-0.01, 9),
      changeSpread: expect.closeTo(0.03, 9),
    });
    expect(refusal('plate-change', { withPlate: ['1 mm'], withoutPlate: ['1 mm', '1 mm'] })).toMatch(/at every place/);
  });
});
