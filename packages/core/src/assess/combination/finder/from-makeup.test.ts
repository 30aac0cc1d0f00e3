import { cubicCentimetres, degrees, mm, squareMillimetres } from '@gudgeon/core/quantity';
import { describe, expect, it } from 'vitest';
import { compressionOf } from '../compression.js';
import { intakeFacesOf } from '../intake-face.js';
import { bareEngine, bareVee, makeupWith, valueIn } from '../rows.suite.js';
import { springsOf } from '../springs.js';
import { roomSweep } from '../valve-room.js';
import {
  advance,
  answerOf,
  beginSearch,
  describeFinderFault,
  type FinderInput,
  fixedFrom,
  sizeValue,
  wantedFrom,
} from './index.js';

/** Invented figures. */
const FIGURES: Readonly<Record<string, number>> = {
  bore: mm(102),
  stroke: mm(88),
  'rod-length': mm(145),
  'deck-height': mm(229.4),
  'compression-height': mm(39.5),
  'piston-volume': cubicCentimetres(5),
  'crevice-volume': cubicCentimetres(0.6),
  'other-volume': cubicCentimetres(0.4),
  'chamber-volume': cubicCentimetres(68),
  'chamber-volume@4': cubicCentimetres(69),
  'chamber-area': squareMillimetres(6800),
  'gasket-thickness': mm(1.2),
  'gasket-thickness-before': mm(1.1),
  'gasket-bore': mm(104),
  'intake-face-angle': degrees(55),
  'head-thickness': mm(120),
  'lobe-lift': mm(7.9),
  'lobe-duration': degrees(276),
  'centreline-wanted': degrees(108),
  'rocker-ratio': 1.5,
  'valve-lash': mm(0.2),
  'valve-drop': mm(4.6),
  'valve-drop-gasket': mm(1.3),
  'valve-angle': degrees(18),
  'lobe-fullness': 6.5,
  'valve-room-least@intake': mm(1),
  'valve-room-least@exhaust': mm(1),
  'spring-installed-height': mm(44),
  'spring-bind-height': mm(28),
  'spring-shim': mm(0.5),
  'retainer-room': mm(15),
  'ratio-least': 9,
  'ratio-most': 11,
  'quench-least': mm(0.5),
  'quench-most': mm(2.5),
  'head-thickness-least': mm(119),
};
const vee = bareVee();
const makeup = makeupWith(vee, FIGURES);
const input: FinderInput = {
  fixed: fixedFrom(makeup),
  offer: {
    gaskets: { options: [0.8, 1, 1.3].map((one) => ({ thickness: mm(one), bore: mm(104.5) })) },
    deckCut: { limit: mm(0.4), step: mm(0.2), each: true },
    headCut: { limit: mm(0.4), step: mm(0.2), each: true },
    rockerRatio: { values: [{ value: 1.5 }, { value: 1.6 }] },
    camAdvance: { from: degrees(-4), to: degrees(4), step: degrees(4) },
  },
  wanted: { ...wantedFrom(makeup), intakeShift: mm(2) },
  keep: 4,
};
const find = (given: FinderInput) => {
  const begun = beginSearch(given);
  if (!begun.ok) throw new Error(describeFinderFault(begun.fault));
  advance(begun.value, 1e9);
  return answerOf(begun.value);
};

describe('a search that starts from the figures at hand', () => {
  const { best, feasible } = find(input);
  const combinations = Object.values(best).flat();

  it('finds combinations', () => {
    expect(feasible).toBeGreaterThan(0);
    expect(combinations).toHaveLength(12);
  });
  it('says of each what the other screens say when its parts are tried on the scratch copy', () => {
    for (const { options, figures } of combinations) {
      const size = (choice: string, name = 'value') =>
        sizeValue(options.find((one) => one.choice === choice)!.option.sizes[name]!);
      const cuts = [1, 2].flatMap((first) => {
        const bank = first === 1 ? 'left' : 'right';
        return [0, 2, 4, 6].flatMap((more): readonly (readonly [string, number])[] => [
          [`deck-cut@${first + more}`, size(`deck-cut@${bank}`)],
          [`head-cut@${first + more}`, size(`head-cut@${bank}`)],
        ]);
      });
      const tried = makeupWith(vee, {
        ...FIGURES,
        'gasket-thickness': size('gasket', 'thickness'),
        'gasket-bore': size('gasket', 'bore'),
        'rocker-ratio': size('rocker-ratio'),
        'cam-advance': size('cam-advance'),
        ...Object.fromEntries(cuts),
      });
      const found = (key: string) => figures.find((one) => one.key === key)!.value;
      const compression = compressionOf(tried);
      for (const cylinder of [1, 2, 4]) {
        expect(found(`ratio@${cylinder}`)).toBeCloseTo(valueIn(compression, 'ratio', { cylinder })!, 9);
      }
      for (const cylinder of [1, 2])
        expect(found(`quench@${cylinder}`)).toBeCloseTo(valueIn(compression, 'quench', { cylinder })!, 12);
      const faces = intakeFacesOf(tried);
      for (const bank of ['left', 'right'])
        expect(found(`intake-shift@${bank}`)).toBeCloseTo(valueIn(faces, 'intake-face-cut', { bank })!, 12);
      const bank = roomSweep(tried, { cylinder: 2 })(0);
      for (const { kind, least } of bank) expect(found(`${kind}-room@right`)).toBeCloseTo(least.gap, 8);
      expect(bank).toHaveLength(2);
      const springs = springsOf(tried);
      expect(found('bind-room@intake')).toBeCloseTo(valueIn(springs, 'bind-margin', { kind: 'intake' })!, 12);
      expect(found('retainer-room@exhaust')).toBeCloseTo(valueIn(springs, 'retainer-margin', { kind: 'exhaust' })!, 12);
    }
  });
});

describe('figures that nobody gives', () => {
  const bare: FinderInput = {
    ...input,
    fixed: fixedFrom(makeupWith(bareEngine(4), { bore: mm(100), stroke: mm(90), 'deck-clearance': mm(0.2) })),
    wanted: { quench: { low: mm(0.9), high: mm(1.4) }, ratio: { low: 9 }, valveRoom: { intake: mm(2) } },
    offer: { gaskets: { options: [0.8, 1].map((one) => ({ thickness: mm(one), bore: mm(104.5) })) } },
  };
  it('are asked for, or what needs them is left out and said so', () => {
    const begun = beginSearch(bare);
    expect(begun.ok ? '' : describeFinderFault(begun.fault)).toContain(
      'chamber volume of cylinder 1 is needed for compression ratio, cylinder 1',
    );
    const { feasible, words, best } = find({ ...bare, lacking: 'leave-out' });
    expect(feasible).toBe(2);
    expect(best['least-metal'][0]!.figures.map(({ name }) => name)).toEqual(['quench, cylinders 1, 2, 3, 4']);
    expect(words).toContain(
      'Not checked: compression ratio, cylinder 1; not known: chamber volume of cylinder 1, crown volume.',
    );
    expect(words.some((one) => one.startsWith('Not checked: intake valve to piston; not known: '))).toBe(true);
  });
});
