import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cautionsOf, numberOf, outputOf, refusalOf, run } from './run.suite.js';

describe('burette', () => {
  const id = 'cylinder.burette-volume';

  it('adds fills and applies each correction with its sign', () => {
    const all = {
      starts: ['1 cc', '0 cc'],
      ends: ['51 cc', '10 cc'],
      factor: '1.002',
      plateHole: '0.3 cc',
      grease: '0.2 cc',
      parts: '-0.5 cc',
      meniscus: '0.1 cc',
    };
    // Hand arithmetic: 60·1.002 + 0.1 − 0.3 + 0.2 − 0.5.
    expect(numberOf(id, all, 'volume')).toBeCloseTo(59.62, 9);
    expect(numberOf(id, all, 'delivered')).toBeCloseTo(60, 9);
  });

  it.each<[string, object, RegExp]>([
    ['a fill without its end', { ends: ['50 cc'] }, /each fill needs a start and an end/],
    ['an end below the start', { ends: ['50 cc', '0.5 cc'], starts: ['0 cc', '1 cc'] }, /counts downward/],
    ['more in the hole than ran out', { plateHole: '90 cc' }, /no volume is left/],
  ])('refuses %s', (_, change, words) => {
    expect(refusalOf(id, { starts: ['0 cc', '0 cc'], ends: ['50 cc', '14 cc'], ...change })).toMatch(words);
  });

  it('is checked with water: what reads too much gets a factor below one', () => {
    const { error, factor } = run('cylinder.burette-check', {
      indicated: '51 cc',
      mass: '50 g',
      temperature: '20 °C',
    }).outputs;
    expect(Number(error?.value)).toBeCloseTo(51 - 50.143, 3);
    expect(Number(factor?.value)).toBeCloseTo(50.143 / 51, 4);
  });

  it('takes the mean of repeats and asks again when they lie too far apart', () => {
    const repeats = 'cylinder.volume-repeats';
    expect(outputOf(repeats, { volumes: ['64 cc', '65 cc'] }, 'verdict')).toBe('no limit given');
    expect(outputOf(repeats, { volumes: ['64 cc', '65 cc'], allowedSpread: '0.5 cc' }, 'verdict')).toBe(
      'too far apart: measure again',
    );
    expect(outputOf(repeats, { volumes: ['64.2 cc', '64.7 cc'], allowedSpread: '0.5 cc' }, 'verdict')).toBe('agree');
    expect(refusalOf(repeats, { volumes: ['64 cc'] })).toMatch(/two are needed/);
    expect(numberOf(repeats, { volumes: ['64 cc', '64 cc'] }, 'uncertainty')).toBe(0);
  });
});

describe('downfill', () => {
  const id = 'cylinder.downfill';
  const read = { bore: '4.070 in', depth: '0.500 in', measured: '113 cc' };
  const whole = { ...read, stroke: '3.31 in', chamber: '67 cc', gasketVolume: '8 cc' };

  it('without the other parts gives the crown alone, and no ratio', () => {
    expect(outputOf(id, read, 'ratio')).toBeUndefined();
    expect(outputOf(id, read, 'clearance')).toBeUndefined();
  });

  it('counts the deck clearance once: inside the volume from its own top, beside it from the deck', () => {
    const fromDeck = { ...whole, depthFrom: 'deck', deckClearance: '0 mm' };
    expect(numberOf(id, fromDeck, 'ratio')).toBeCloseTo(numberOf(id, whole, 'ratio'), 12);
    // 1 mm on 83.93 cm² is 8.39 cc.
    const lower =
      numberOf(id, { ...fromDeck, deckClearance: '1 mm' }, 'clearance') - numberOf(id, fromDeck, 'clearance');
    expect(lower).toBeCloseTo(8.3936, 3);
  });

  it.each<[string, Record<string, string>, RegExp]>([
    ['half of what the ratio needs', { ...read, stroke: '3.31 in' }, /together/],
    ['the other half', { ...read, chamber: '67 cc', gasketVolume: '8 cc' }, /together/],
    ['a stroke and chamber without gasket', { ...read, stroke: '3.31 in', chamber: '67 cc' }, /together/],
    ['a gasket alone', { ...read, gasketVolume: '8 cc' }, /together/],
    ['a depth from the deck without the deck clearance', { ...whole, depthFrom: 'deck' }, /deckClearance is needed/],
    ['no room', { ...whole, measured: '10 cc' }, /no clearance volume is left/],
  ])('refuses %s', (_, inputs, words) => {
    expect(refusalOf(id, inputs)).toMatch(words);
  });
});

describe('volumes from sizes', () => {
  const id = 'cylinder.crown-shape';
  const dish = { is: 'dish', diameter: '80 mm', depth: '4 mm' };

  it('turns a dome into a negative volume of the same size', () => {
    expect(numberOf(id, { ...dish, is: 'dome' }, 'volume')).toBe(-numberOf(id, dish, 'volume'));
  });

  it('has a sloping wall between the straight one and a cone', () => {
    const at = (floorDiameter: string) => numberOf(id, { ...dish, shape: 'sloping', floorDiameter }, 'volume');
    expect(at('80 mm')).toBeCloseTo(numberOf(id, dish, 'volume'), 9);
    expect(at('0.000001 mm')).toBeCloseTo(numberOf(id, dish, 'volume') / 3, 3);
  });

  it('makes half a ball of a spherical dish as deep as its radius', () => {
    const half = numberOf(id, { is: 'dish', shape: 'spherical', diameter: '80 mm', depth: '40 mm' }, 'volume');
    expect(half).toBeCloseTo((2 / 3) * Math.PI * 4 ** 3, 9);
  });

  it('refuses a floor where none belongs, and a sloping wall without one', () => {
    expect(refusalOf(id, { ...dish, floorDiameter: '60 mm' })).toMatch(/only to it/);
    expect(refusalOf(id, { ...dish, shape: 'sloping' })).toMatch(/only to it/);
  });

  it('uses the traced area of a gasket that is not round', () => {
    const gasket = { gasketThickness: '1 mm', gasketBore: '100 mm' };
    expect(numberOf('cylinder.gasket-volume', { ...gasket, tracedArea: '8000 mm2' }, 'volume')).toBeCloseTo(8, 9);
  });

  it('refuses a land larger than the bore', () => {
    const land = { bore: '100 mm', landDiameter: '100.1 mm', landHeight: '6 mm' };
    expect(refusalOf('cylinder.crevice-volume', land)).toMatch(/landDiameter must be at most 100 mm/);
    expect(numberOf('cylinder.crevice-volume', { ...land, landDiameter: '100 mm' }, 'volume')).toBe(0);
  });
});

describe('milling', () => {
  const cut = 'cylinder.mill-for-volume';
  const away = 'cylinder.volume-from-mill';

  it('takes away again what it was asked to', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        fc.double({ min: 3000, max: 12000, noNaN: true }),
        (volume, mm2) => {
          const area = { value: mm2, unit: 'mm2' };
          const depth = { value: numberOf(cut, { reduction: { value: volume, unit: 'cc' }, area }, 'cut'), unit: 'mm' };
          expect(numberOf(away, { cut: depth, area }, 'reduction')).toBeCloseTo(volume, 9);
        },
      ),
    );
  });

  it('learns the area from a trial cut', () => {
    const trial = { trialCut: '0.5 mm', trialReduction: '3.5 cc' };
    expect(numberOf(cut, { reduction: '1.4 cc', ...trial }, 'cut')).toBeCloseTo(0.2, 9);
    expect(numberOf(cut, { reduction: '1.4 cc', ...trial }, 'area')).toBeCloseTo(7000, 6);
    expect(outputOf(away, { cut: '0.1 mm', ...trial }, 'chamber')).toBeUndefined();
    expect(cautionsOf(cut, { reduction: '1.4 cc', ...trial })).toEqual([]);
  });

  it('warns that a circle takes too little', () => {
    expect(cautionsOf(cut, { reduction: '1 cc', perimeter: '12 in' })).toEqual(['circle-of-perimeter']);
    expect(cautionsOf(away, { cut: '1 mm', perimeter: '12 in' })).toEqual(['circle-of-perimeter']);
  });

  it.each<[string, string, Record<string, string>, RegExp]>([
    ['no way to the area', cut, { reduction: '1 cc' }, /exactly one is needed/],
    ['two ways', cut, { reduction: '1 cc', area: '1 mm2', perimeter: '1 mm' }, /exactly one is needed/],
    ['half a trial', cut, { reduction: '1 cc', trialCut: '1 mm' }, /both the cut and what it took away/],
    ['the other half', cut, { reduction: '1 cc', trialReduction: '1 cc' }, /both the cut and what it took away/],
    ['no way to the area of a cut', away, { cut: '1 mm' }, /exactly one is needed/],
    ['a cut through the chamber', away, { cut: '10 mm', area: '7000 mm2', chamber: '60 cc' }, /take the whole chamber/],
  ])('refuses %s', (_, id, inputs, words) => {
    expect(refusalOf(id, inputs)).toMatch(words);
  });
});

describe('head and deck cut together', () => {
  const id = 'cylinder.head-and-deck-cut';
  const base = {
    bore: '100 mm',
    stroke: '90 mm',
    chamber: '70 cc',
    chamberArea: '7000 mm2',
    deckClearance: '0.5 mm',
    gasketThickness: '1 mm',
    headThickness: '120 mm',
    deckHeight: '230 mm',
    leastHeadThickness: '119.8 mm',
    leastDeckHeight: '229.8 mm',
    mostTogether: '0.3 mm',
  };

  it('changes nothing when nothing is cut', () => {
    const { ratioBefore, ratioAfter, headMoved, verdict } = run(id, base).outputs;
    expect(ratioAfter?.value).toBe(ratioBefore?.value);
    expect(headMoved?.value).toBe(0);
    expect(verdict?.value).toBe('within the limits given');
  });

  it('agrees with the ratio of the parts as they will be', () => {
    const cuts = {
      ...base,
      headCut: '0.1 mm',
      deckCut: '0.15 mm',
      newGasketThickness: '1.3 mm',
      gasketBore: '102 mm',
      otherVolume: '2 cc',
    };
    const parts = {
      bore: '100 mm',
      stroke: '90 mm',
      chamber: '69.3 cc',
      deckClearance: '0.35 mm',
      gasketThickness: '1.3 mm',
      gasketBore: '102 mm',
      otherVolume: '2 cc',
    };
    expect(numberOf(id, cuts, 'ratioAfter')).toBeCloseTo(numberOf('cylinder.compression-ratio', parts, 'ratio'), 9);
    expect(numberOf(id, cuts, 'headMoved')).toBeCloseTo(-0.05, 9);
    expect(numberOf(id, cuts, 'quenchAfter')).toBeCloseTo(1.65, 9);
    expect(numberOf(id, cuts, 'deckHeightLeft')).toBeCloseTo(229.85, 9);
  });

  it.each<[object, string]>([
    [{ headCut: '0.2 mm' }, 'within the limits given'],
    [{ headCut: '0.21 mm' }, 'the head would be too thin'],
    [{ deckCut: '0.21 mm' }, 'the deck would be too low'],
    [{ headCut: '0.2 mm', deckCut: '0.11 mm' }, 'head and block together would lose too much'],
    [{ deckClearance: '-1 mm' }, 'the piston would touch the head'],
  ])('with %j says: %s', (change, words) => {
    expect(outputOf(id, { ...base, ...change }, 'verdict')).toBe(words);
  });

  it('does not judge what it was not told', () => {
    const { headThickness, deckHeight, leastHeadThickness, leastDeckHeight, mostTogether, ...bare } = base;
    expect(outputOf(id, { ...bare, headCut: '5 mm' }, 'verdict')).toBe('within the limits given');
    expect(outputOf(id, bare, 'headThicknessLeft')).toBeUndefined();
    expect(outputOf(id, bare, 'deckHeightLeft')).toBeUndefined();
    expect([headThickness, deckHeight, leastHeadThickness, leastDeckHeight, mostTogether].length).toBe(5);
  });

  it.each<[string, object]>([
    ['a cut through the chamber', { headCut: '11 mm' }],
    ['no room before', { otherVolume: '-90 cc' }],
    ['no room after', { deckCut: '12 mm' }],
  ])('refuses %s', (_, change) => {
    expect(refusalOf(id, { ...base, ...change })).toMatch(/no clearance volume is left/);
  });
});

describe('intake face and angle milling', () => {
  const face = 'cylinder.intake-face';
  const vee = { bankAngle: '45 deg', faceAngle: '55 deg' };

  it('asks for nothing when nothing was cut', () => {
    const { faceCut, drop } = run(face, vee).outputs;
    expect([faceCut?.value, drop?.value]).toEqual([0, 0]);
  });

  it('opens the joint with a thicker gasket, as far as a cut of the same size closes it', () => {
    const thicker = numberOf(face, { ...vee, gasketChange: '0.5 mm' }, 'faceCut');
    expect(thicker).toBeCloseTo(-numberOf(face, { ...vee, headCut: '0.5 mm' }, 'faceCut'), 12);
  });

  it('lands the manifold where the port has gone: cut along the face normal and drop close the triangle', () => {
    const angle = fc.double({ min: 0, max: 80, noNaN: true });
    fc.assert(
      fc.property(angle, angle, (bank, slope) => {
        const [a, f] = [(bank * Math.PI) / 180, (slope * Math.PI) / 180];
        const { faceCut, drop } = run(face, {
          bankAngle: { value: bank, unit: 'deg' },
          faceAngle: { value: slope, unit: 'deg' },
          headCut: '1 mm',
        }).outputs;
        const [x, z] = [Number(faceCut?.value), Number(drop?.value)];
        expect(x * Math.cos(f)).toBeCloseTo(Math.sin(a), 9);
        expect(Math.cos(a) + x * Math.sin(f)).toBeCloseTo(z, 9);
      }),
    );
  });

  it('does nothing to an upright bank', () => {
    const { faceCut, drop } = run(face, { bankAngle: '0 deg', faceAngle: '30 deg', headCut: '1 mm' }).outputs;
    expect(faceCut?.value).toBe(0);
    expect(drop?.value).toBeCloseTo(1, 12);
  });

  const mill = 'cylinder.angle-mill';
  it('takes half of the deep cut from a chamber in the middle', () => {
    const inputs = { width: '200 mm', angle: '1 deg', chamberArea: '6000 mm2', chamberDistance: '100 mm' };
    const { deepCut, chamberCut, reduction } = run(mill, inputs).outputs;
    expect(Number(chamberCut?.value)).toBeCloseTo(Number(deepCut?.value) / 2, 12);
    expect(Number(reduction?.value)).toBeCloseTo(6 * Number(chamberCut?.value), 9);
  });

  it.each<[object, RegExp]>([
    [{ chamberArea: '6000 mm2' }, /needed together/],
    [{ chamberDistance: '10 mm' }, /needed together/],
    [{ chamberArea: '6000 mm2', chamberDistance: '201 mm' }, /beyond the face; chamberDistance must be at most 200 mm/],
  ])('refuses %j', (change, words) => {
    expect(refusalOf(mill, { width: '200 mm', angle: '1 deg', ...change })).toMatch(words);
  });
});
