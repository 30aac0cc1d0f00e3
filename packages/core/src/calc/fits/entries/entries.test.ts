import { describe, expect, it } from 'vitest';
import { runChanged } from '../../example.suite.js';

type Change = Readonly<Record<string, unknown>>;

describe('what a fit entry refuses', () => {
  const press = 'fits.press-fit';
  const heat = 'fits.assembly-temperatures';
  it.each<[string, string, Change, RegExp]>([
    ['a grade finer than IT1', 'fits.tolerance-grade', { grade: 0 }, /^grade: 0 given/],
    ['a size above 500 mm', 'fits.tolerance-grade', { size: '501 mm' }, /at most 500 mm/],
    ['a class that is none', 'fits.limits-of-size', { class: 'P' }, /class.*such as "H7"/],
    [
      'a class that does not exist there',
      'fits.limits-of-size',
      { class: 't6', size: '20 mm' },
      /does not exist at this size/,
    ],
    ['two shafts', 'fits.limits-of-fit', { hole: 'h7' }, /capital letter/],
    ['two holes', 'fits.limits-of-fit', { shaft: 'P6' }, /capital letter/],
    ['a hole that does not exist there', 'fits.limits-of-fit', { hole: 'K9' }, /hole K9.*does not exist/],
    [
      'a shaft that does not exist there',
      'fits.limits-of-fit',
      { shaft: 't6', size: '20 mm' },
      /shaft t6.*does not exist/,
    ],
    ['a hub without a wall', press, { hubOutside: '100 mm' }, /hubOutside must be above 100 mm/],
    ['a shaft without a wall', press, { shaftBore: '100 mm' }, /shaftBore must be below 100 mm/],
    ['a length without friction', press, { friction: undefined }, /length and friction together/],
    ['a hub without a wall', 'fits.interference-needed', { hubOutside: '90 mm' }, /hub has no wall/],
    ['both a torque and a force', 'fits.interference-needed', { force: '10 kN' }, /and not both/],
    ['neither a torque nor a force', 'fits.interference-needed', { torque: undefined }, /one of torque and force/],
    ['a shaft without a wall', 'fits.grip-at-temperature', { shaftBore: '41 mm' }, /shaft has no wall/],
    ['a chill without an expansion', heat, { chilledTo: '-196 °C' }, /needs its expansion/],
    ['a chill that warms', heat, { chilledTo: '30 °C', shaftExpansion: '11 ppm/K' }, /chilledTo must be at most 20 °C/],
    ['a guide without a wall', 'fits.guide-after-pressing', { hubOutside: '14 mm' }, /hub has no wall/],
    ['a guide that closes altogether', 'fits.guide-after-pressing', { interference: '20 mm' }, /close altogether/],
    ['exchanged limits', 'fits.clearance', { lowest: '0.003 in' }, /low end is above/],
    ['exchanged limits', 'fits.clearance-at-temperature', { lowest: '2 mm', highest: '1 mm' }, /low end is above/],
    ['exchanged limits', 'fits.pickup-clearance', { lowest: '1 in' }, /low end is above/],
    ['a pickup longer than the pan', 'fits.pickup-clearance', { pickupDepth: '8 in' }, /stand through the pan/],
    ['a material that is not in the table', 'fits.material', { material: 'oak' }, /valid is one of/],
  ])('%s (%s)', (_, id, change, words) => {
    expect(runChanged(id, change).refused).toMatch(words);
  });
});

describe('what a fit entry answers', () => {
  it.each<[string, string, Change, string, string]>([
    ['a clearance fit', 'fits.limits-of-fit', { shaft: 'g6' }, 'fit', 'clearance'],
    ['the least of it', 'fits.limits-of-fit', { shaft: 'g6' }, 'leastClearance', '0.0090 mm'],
    ['the most of it', 'fits.limits-of-fit', { shaft: 'g6' }, 'mostClearance', '0.0500 mm'],
    ['H7/h6, which just slides', 'fits.limits-of-fit', { shaft: 'h6' }, 'fit', 'clearance'],
    ['a transition fit', 'fits.limits-of-fit', { shaft: 'k6' }, 'fit', 'transition'],
    [
      'H7/p6 of 2 mm, which may be line to line',
      'fits.limits-of-fit',
      { shaft: 'n6', size: '2 mm' },
      'fit',
      'transition',
    ],
    ['a hole', 'fits.limits-of-size', { class: 'H7' }, 'of', 'hole'],
    [
      'an axial force to hold',
      'fits.interference-needed',
      { torque: undefined, force: '137.445 kN' },
      'interference',
      '0.1000 mm',
    ],
    [
      'roughness on top of it',
      'fits.interference-needed',
      { hubRoughness: '5 µm', shaftRoughness: '5 µm' },
      'interference',
      '0.1080 mm',
    ],
    ['a ring hotter than its head', 'fits.grip-at-temperature', { shaftRise: '250 K' }, 'interference', '0.0830 mm'],
    [
      'heating from another start',
      'fits.assembly-temperatures',
      { startTemperature: '0 °C' },
      'hubTemperature',
      '173.6 °C',
    ],
    [
      'a pin in its window',
      'fits.clearance-at-temperature',
      { lowest: '0.01 mm', highest: '0.03 mm' },
      'verdict',
      'in',
    ],
    [
      'a pin warmer than its piston',
      'fits.clearance-at-temperature',
      { shaftTemperature: '140 °C' },
      'clearance',
      '0.0181 mm',
    ],
    ['a press', 'fits.clearance', { shaft: '0.3445 in' }, 'verdict', 'below'],
    [
      'a pickup without limits',
      'fits.pickup-clearance',
      { lowest: undefined, highest: undefined },
      'verdict',
      'no data',
    ],
  ])('%s (%s)', (_, id, change, name, text) => {
    const { outputs, refused } = runChanged(id, change);
    expect(refused).toBe('');
    expect(outputs[name]?.text).toBe(text);
  });

  it.each<[string, string, Change, readonly string[]]>([
    ['a fit that smooths away', 'fits.press-fit', { interference: '0.008 mm', hubRoughness: '10 µm' }, ['no-grip']],
    ['a fit that holds', 'fits.press-fit', {}, []],
    ['a seat past its temperature', 'fits.grip-at-temperature', { hubRise: '243 K' }, ['no-grip']],
    ['a seat that holds', 'fits.grip-at-temperature', {}, []],
    [
      'a chill below absolute zero',
      'fits.assembly-temperatures',
      { interference: '2 mm', shaftExpansion: '11.7 ppm/K' },
      ['colder-than-possible'],
    ],
    [
      'a chill in nitrogen',
      'fits.assembly-temperatures',
      { chilledTo: '-196 °C', shaftExpansion: '11.7 ppm/K' },
      ['expansion-falls-in-the-cold'],
    ],
    ['a chill that is possible', 'fits.assembly-temperatures', { shaftExpansion: '11.7 ppm/K' }, []],
    ['a guide already too large', 'fits.guide-after-pressing', { clearance: '0.01 mm' }, ['nothing-to-ream']],
    ['a guide to be reamed', 'fits.guide-after-pressing', {}, []],
  ])('%s (%s)', (_, id, change, codes) => {
    expect(runChanged(id, change)).toMatchObject({ refused: '', cautions: codes });
  });

  it('leaves out what it does not know', () => {
    expect(runChanged('fits.tolerance-grade', { grade: 4 }).outputs).not.toHaveProperty('byFormula');
    expect(runChanged('fits.press-fit', { length: undefined, friction: undefined }).outputs).not.toHaveProperty(
      'pressForce',
    );
    const alike = { hubExpansion: '11.2 ppm/K' };
    expect(runChanged('fits.grip-at-temperature', alike).outputs).not.toHaveProperty('gripGoneRise');
    expect(runChanged('fits.assembly-temperatures').outputs).not.toHaveProperty('shaftDrop');
    expect(runChanged('fits.assembly-temperatures', { shaftExpansion: '11 ppm/K' }).outputs).not.toHaveProperty(
      'shrink',
    );
    expect(runChanged('fits.material', { material: 'piston alloy Si12' }).outputs).not.toHaveProperty('poissonLow');
    expect(runChanged('fits.material', { material: 'piston alloy Si18' }).outputs).not.toHaveProperty('expansionLow');
  });

  it('is the same in inches and in millimetres', () => {
    const inches = { diameter: '4 in', hubOutside: '6 in', interference: '0.004 in', length: '2 in' };
    const millimetres = { diameter: '101.6 mm', hubOutside: '152.4 mm', interference: '0.1016 mm', length: '50.8 mm' };
    const [a, b] = [inches, millimetres].map((one) => runChanged('fits.press-fit', one).outputs);
    for (const name of ['pressure', 'slipTorque', 'hubGrowth']) {
      expect(Number(a?.[name]?.value) / Number(b?.[name]?.value)).toBeCloseTo(1, 12);
    }
  });
});
