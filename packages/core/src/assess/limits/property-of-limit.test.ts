import { describe, expect, it } from 'vitest';
import { propertiesOfLimit, propertyOfLimit, whyNoSize } from './index.js';
import { row, SHEETS } from './limit.suite.js';
import { PROPERTIES } from './properties.js';
import { PHRASES } from './vocabulary.js';

const ALL = SHEETS.flatMap(([path, engine]) => engine.limits.map((limit) => ({ path, limit })));
const MAPPED = ALL.filter(({ limit }) => propertiesOfLimit(limit).length > 0);

describe('the limit rows of every sheet', () => {
  it.each(SHEETS)('in %s each name a size to measure, or the reason why not is listed', (_path, engine) => {
    const lost = engine.limits.filter(
      (limit) => propertiesOfLimit(limit).length === 0 && whyNoSize(limit) === undefined,
    );
    expect(lost.map(({ part, what }) => `${part}: ${what}`)).toEqual([]);
  });

  it(`name a size in ${MAPPED.length} of ${ALL.length} rows, the rest have a listed reason`, () => {
    expect(MAPPED.length).toBeGreaterThanOrEqual(400);
    expect(MAPPED.length / ALL.length).toBeGreaterThan(0.9);
  });

  it('never name a size of another kind of quantity', () => {
    const wrong = MAPPED.filter(({ limit }) =>
      propertiesOfLimit(limit).some((id) => PROPERTIES.get(id)?.measured !== limit.quantity),
    );
    expect(wrong.map(({ path, limit }) => `${path} ${limit.part}: ${limit.what}`)).toEqual([]);
  });
});

describe('the vocabulary', () => {
  it('gives only sizes that the project knows', () => {
    const forms = ['diameter', 'out-of-round', 'taper'];
    const unknown = PHRASES.flatMap(({ gives }) => gives).filter((pattern) => {
      const spelled = pattern.includes('?')
        ? [pattern.replace('?', 'top')]
        : forms.map((form) => pattern.replace('*', form));
      return !spelled.some((id) => PROPERTIES.has(id));
    });
    expect(unknown).toEqual([]);
  });

  // Pairs of words from the glossary of the trade map (US / UK), each in both orders.
  it.each([
    ['piston pin', 'diameter', 'piston-pin.diameter'],
    ['gudgeon pin', 'diameter', 'piston-pin.diameter'],
    ['wrist pin', 'diameter', 'piston-pin.diameter'],
    ['tappet', 'clearance in bore', 'lifter.clearance'],
    ['cam follower', 'clearance in bore', 'lifter.clearance'],
    ['crankshaft', 'end float', 'crank-end-float.float'],
    ['crankshaft', 'end play', 'crank-end-float.float'],
    ['crankshaft', 'axial play', 'crank-end-float.float'],
    ['main bearing', 'running clearance', 'main-bearing.clearance'],
    ['main bearing', 'oil clearance', 'main-bearing.clearance'],
    ['liner', 'inside diameter', 'cylinder-bore.diameter'],
    ['sleeve', 'inside diameter', 'cylinder-bore.diameter'],
    ['cylinder bore', 'ovality', 'cylinder-bore.out-of-round'],
    ['cylinder bore', 'out-of-round', 'cylinder-bore.out-of-round'],
    ['big-end journal', 'diameter of the crankshaft', 'crankpin.diameter'],
    ['valve', 'inlet stem diameter', 'valve-stem.diameter'],
    ['connecting rod', 'little end bore', 'small-end-bore.diameter'],
    ['connecting rod', 'side float', 'rod-side-clearance.clearance'],
    ['cylinder head', 'warp of the gasket face', 'head-flatness.gap'],
    ['push rod', 'run-out', 'pushrod-runout.total'],
    ['cylinder bore', 'wall thickness, thrust side', 'bore-wall.thinnest'],
    ['main bearing housings', 'alignment', 'main-alignment.gap'],
    ['ring', 'back clearance, second', 'ring-back-second.depth'],
    ['retainer', 'clearance to the guide seal', 'retainer-to-guide.room'],
    ['connecting rod', 'big end taper', 'big-end-bore.taper'],
    ['connecting rod', 'small end taper', 'small-end-bore.taper'],
    ['connecting rod', 'little end out-of-round', 'small-end-bore.out-of-round'],
    ['connecting rod', 'weight of the big end', 'rod-big-end-mass.mass'],
    ['connecting rod', 'pin end weight', 'rod-small-end-mass.mass'],
    ['connecting rod', 'difference of big end weight', 'rod-big-end-mass.between'],
    ['connecting rod', 'weight difference in one set', 'rod-mass.between'],
    ['gudgeon pin', 'weight', 'pin-mass.mass'],
    ['piston pin', 'weight difference', 'pin-mass.between'],
    ['piston', 'weight without pin', 'piston-mass.mass'],
    ['wrist pin', 'out-of-round', 'piston-pin.out-of-round'],
    ['piston pin', 'taper', 'piston-pin.taper'],
    ['ring', 'weight of one set', 'ring-mass.mass'],
    ['ring', 'depth below the land, second', 'ring-back-second.depth'],
    ['valve guide', 'ovality', 'valve-guide.out-of-round'],
    ['valve guide', 'taper', 'valve-guide.taper'],
    ['valve', 'stem height above the spring seat', 'stem-height.height'],
    ['tappet', 'taper', 'lifter.taper'],
    ['cylinder liner', 'difference of protrusion between neighbours', 'liner-protrusion.neighbours'],
    ['sleeve', 'protrusion, adjacent sleeves', 'liner-protrusion.neighbours'],
    ['piston', 'highest protrusion', 'piston-protrusion.largest'],
    ['crankshaft', 'thrust journal width, difference', 'thrust-width.spread'],
    ['cylinder head', 'variation of thickness', 'head-thickness.spread'],
    ['head gasket', 'spread of thickness', 'gasket-thickness.spread'],
    ['block', 'deck height difference along one bank', 'deck-height.spread'],
    ['piston', 'depth below the deck, front to rear', 'deck-clearance.tilt'],
    ['piston', 'difference of depth below the deck', 'deck-clearance.between'],
    ['valve stem', 'clearance between stem and guide', 'stem.clearance'],
  ])('reads "%s, %s" as %s, whatever comes first', (part, what, property) => {
    expect(propertyOfLimit(row(part, what))).toBe(property);
    expect(propertyOfLimit(row(what, part))).toBe(property);
  });

  it('reads several sizes from a row that names several', () => {
    expect(propertiesOfLimit(row('crankshaft', 'taper and out-of-round, mains and pins'))).toEqual([
      'main-journal.out-of-round',
      'main-journal.taper',
      'crankpin.out-of-round',
      'crankpin.taper',
    ]);
    expect(propertiesOfLimit(row('ring', 'side clearance, 2nd and 3rd'))).toEqual([
      'ring-groove-second.clearance',
      'ring-groove-third.clearance',
    ]);
  });

  it('takes a lift of 37 mm for the height over the lobe, as the maker of that engine must have meant', () => {
    const lift = (low: number) => row('camshaft', 'lobe lift', { whenNew: { window: { low }, text: `${low} m` } });
    expect(propertyOfLimit(lift(0.0372))).toBe('lobe-height.height');
    expect(propertyOfLimit(lift(0.00735))).toBe('lobe-lift.lift');
  });

  it('tells squareness in millimetres from squareness in degrees', () => {
    expect(propertyOfLimit(row('valve spring', 'out of square'))).toBe('spring-squareness.gap');
    expect(propertyOfLimit(row('valve spring', 'out of square', { quantity: 'angle' }))).toBe('spring-lean.angle');
  });

  it('never takes a difference for the size: of a size whose spread is not read nothing is limited', () => {
    expect(propertyOfLimit(row('valve', 'length'))).toBe('valve-length.length');
    expect(propertyOfLimit(row('valve', 'difference of length'))).toBeUndefined();
  });

  it('does not weigh a piston together with its pin: the two are weighed apart', () => {
    expect(propertyOfLimit(row('piston', 'weight with pin'))).toBeUndefined();
    expect(whyNoSize(row('piston', 'weight with pin'))).toBe('piston, pin and rings are weighed apart');
  });

  it('tells the hole for a bush from the bush', () => {
    expect(propertyOfLimit(row('connecting rod', 'bore for bushing'))).toBe('small-end-housing.diameter');
    expect(propertyOfLimit(row('connecting rod', 'bushing inside diameter'))).toBe('small-end-bore.diameter');
    expect(propertyOfLimit(row('connecting rod', 'bushing outside diameter'))).toBe('small-end-bush.diameter');
  });

  it('obeys the property that the sheet gives, before any word', () => {
    expect(propertyOfLimit(row('thing', 'of this maker only', { property: 'cylinder-bore.taper' }))).toBe(
      'cylinder-bore.taper',
    );
    expect(propertyOfLimit(row('valve', 'seat width', { property: 'stem.clearance-intake' }))).toBe('stem.clearance');
  });

  it('does not guess at words that it does not know', () => {
    expect(propertyOfLimit(row('supercharger', 'rotor lobes'))).toBeUndefined();
    expect(whyNoSize(row('supercharger', 'rotor lobes'))).toBeUndefined();
    expect(whyNoSize(row('cylinder head', 'torque of studs'))).toBe('a torque belongs to tightening');
  });
});
