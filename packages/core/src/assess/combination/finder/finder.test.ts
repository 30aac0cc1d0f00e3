import { cubicCentimetres, degrees, inch, mm } from '@gudgeon/core/quantity';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { describeCalcFault, runCalculation } from '../../../calc/index.js';
import { veeEight } from './example.suite.js';
import {
  advance,
  answerOf,
  beginSearch,
  describeFinderFault,
  type FinderAnswer,
  type FinderInput,
  progressOf,
  sizeValue,
} from './index.js';

function find(input: FinderInput, budget = 1e9): FinderAnswer {
  const begun = beginSearch(input);
  if (!begun.ok) throw new Error(describeFinderFault(begun.fault));
  while (!advance(begun.value, budget).done);
  return answerOf(begun.value);
}
const refusal = (input: FinderInput) => {
  const begun = beginSearch(input);
  return begun.ok ? '' : describeFinderFault(begun.fault);
};
const outputs = (id: string, inputs: Record<string, unknown>) => {
  const run = runCalculation(id, inputs);
  if (!run.ok) throw new Error(run.fault.map(describeCalcFault).join('\n'));
  return run.value.outputs;
};
const figureOf = (answer: FinderAnswer, key: string) =>
  answer.best['least-metal'][0]!.figures.find((one) => one.key === key)!.value;

/** One cylinder with its deck clearance measured. */
const single = (change: Partial<FinderInput['fixed']> = {}): FinderInput => ({
  fixed: {
    stroke: inch(3.48),
    cylinders: [{ number: 1, bank: 'only', bore: inch(4), deckClearance: inch(0.033), chamber: cubicCentimetres(64) }],
    piston: { crownVolume: cubicCentimetres(5) },
    ...change,
  },
  offer: { gaskets: { options: [{ thickness: inch(0.02), bore: inch(4) }] } },
  wanted: { ratio: { low: 1, high: 30 } },
  keep: 3,
});

describe('published rows as problems', () => {
  it('one choice only has the ratio 9.97 of MO-10', () => {
    expect(figureOf(find(single()), 'ratio@1')).toBeCloseTo(9.967, 3);
  });

  it('the chamber of MO-13 for 10.0 with 15 cm³ of other parts is 65.8 cm³', () => {
    const input: FinderInput = {
      ...single({
        cylinders: [{ number: 1, bank: 'only', bore: inch(4.03), deckClearance: 0, other: cubicCentimetres(15) }],
        piston: { crownVolume: 0 },
        gasket: { thickness: 0 },
      }),
      offer: { chambers: { from: cubicCentimetres(60), to: cubicCentimetres(70), step: cubicCentimetres(0.1) } },
      wanted: { ratio: { low: 9.995, high: 10.005 } },
    };
    const answer = find(input);
    const [best] = answer.best['most-margin'];
    expect(sizeValue(best!.options[0]!.option.sizes.value!) / cubicCentimetres(1)).toBeCloseTo(65.8, 6);
    expect(answer.raw).toBe(101);
  });

  it('30 thousandths off the heads ask for 0.0370 in at the intake face (MO-17, case A)', () => {
    const input: FinderInput = {
      ...single({ bankAngle: degrees(45), faceAngle: degrees(55), gasket: { thickness: inch(0.02) } }),
      offer: { headCut: { limit: inch(0.03), step: inch(0.03) } },
      wanted: { intakeShift: inch(0.04) },
    };
    const answer = find(input);
    const shifts = answer.best['least-metal'].map(({ figures }) => figures[0]!.value / inch(1));
    expect(answer.feasible).toBe(2);
    expect(shifts[1]).toBeCloseTo(0.037, 4);
  });

  it('fits as many combinations as the catalogue tries, with the same nearest ratio', () => {
    const list = (low: number, high: number) =>
      fc.array(fc.integer({ min: low, max: high }), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(list(640, 700), list(7, 14), list(-3, 6), list(-40, 60), (chambers, gaskets, decks, crowns) => {
        // Deck clearances stand for pistons of other heights on one measured engine.
        const input: FinderInput = {
          ...single({
            stroke: mm(90),
            cylinders: [{ number: 1, bank: 'only', bore: mm(100), deckClearance: mm(1) }],
            piston: { compressionHeight: mm(40), crownVolume: 0 },
          }),
          offer: {
            gaskets: { options: gaskets.map((one) => ({ thickness: mm(one / 10), bore: mm(100) })) },
            chambers: { values: chambers.map((one) => ({ value: cubicCentimetres(one / 10) })) },
            pistons: {
              options: decks.flatMap((deck) =>
                crowns.map((crown) => ({
                  compressionHeight: mm(41 - deck / 10),
                  crownVolume: cubicCentimetres(crown / 10),
                })),
              ),
            },
          },
          wanted: { ratio: { low: 1, high: 1000 }, quench: { low: mm(0.55), high: mm(1.25) } },
        };
        const run = runCalculation('cylinder.choose-parts', {
          bore: '100 mm',
          stroke: '90 mm',
          ratio: '10',
          chambers: chambers.map((one) => `${one / 10} cm3`),
          gasketThicknesses: gaskets.map((one) => `${one / 10} mm`),
          deckClearances: decks.map((one) => `${one / 10} mm`),
          pistonVolumes: crowns.map((one) => `${one / 10} cm3`),
          leastQuench: '0.55 mm',
          mostQuench: '1.25 mm',
        });
        const answer = find({ ...input, keep: 1000 });
        expect(answer.feasible).toBe(run.ok ? run.value.outputs.fitting!.value : 0);
        if (!run.ok) return;
        const off = answer.best['least-metal'].map(({ figures }) => Math.abs(figures[0]!.value - 10));
        expect(Math.min(...off)).toBeCloseTo(Math.abs(Number(run.value.outputs.ratio!.value) - 10), 6);
      }),
      { numRuns: 60 },
    );
  });
});

describe('figures of a combination are those of the catalogue', () => {
  const answer = find(veeEight);
  const [best] = answer.best['least-metal'];
  const size = (choice: string, name = 'value') =>
    sizeValue(best!.options.find((one) => one.choice === choice)!.option.sizes[name]!);
  const value = (key: string) => best!.figures.find((one) => one.key === key)!.value;
  const inMm = (length: number) => `${length / mm(1)} mm`;
  const cuts = () => size('deck-cut@left') + size('head-cut@left');

  it('has some to choose from', () => {
    expect(answer.raw).toBe(3 * 2 * 25 * 16 * 5 * 2 * 6);
    expect(answer.feasible).toBeGreaterThan(0);
    expect(answer.words).toEqual([`${answer.feasible} of 144000 combinations keep everything.`]);
  });
  it('for ratio and quench', () => {
    const found = outputs('cylinder.compression-ratio', {
      bore: '102 mm',
      stroke: '88 mm',
      chamber: `${68 - (6800 * size('head-cut@left') * 1000) / 1000} cm3`,
      gasketThickness: inMm(size('gasket', 'thickness')),
      gasketBore: inMm(size('gasket', 'bore')),
      deckClearance: inMm(mm(229.4 - 44 - 145) - size('piston', 'compressionHeight') - size('deck-cut@left')),
      pistonVolume: `${size('piston', 'crownVolume') / cubicCentimetres(1) + 1} cm3`,
    });
    expect(value('ratio@1')).toBeCloseTo(Number(found.ratio!.value), 3);
    const deck = mm(229.4 - 44 - 145) - size('piston', 'compressionHeight') - size('deck-cut@left');
    expect(value('quench@1')).toBeCloseTo(deck + size('gasket', 'thickness'), 12);
  });
  it('for the room of both valves', () => {
    for (const [valve, centreline] of [
      ['intake', '108 deg'],
      ['exhaust', '112 deg'],
    ] as const) {
      const higher = size('gasket', 'thickness') - mm(1.2) - cuts() - (size('piston', 'compressionHeight') - mm(39.5));
      const found = outputs('valvetrain.valve-to-piston-from-card', {
        valve,
        stroke: '88 mm',
        rodLength: '145 mm',
        valveAngle: '18 deg',
        gapAtTop: '4.6 mm',
        peakLift: '7.9 mm',
        durations: ['276 deg'],
        checkingLifts: ['0 mm'],
        centreline,
        ratio: size('rocker-ratio'),
        advance: `${size('cam-advance') / degrees(1)} deg`,
        headHigher: inMm(higher),
      });
      expect(value(`${valve}-room@left`) / mm(1)).toBeCloseTo(Number(found.minimum!.value), 5);
    }
  });
  it('for the preload of the pushrod', () => {
    const found = outputs('valvetrain.pushrod-length', {
      zeroLash: '198 mm',
      ratio: 1.5,
      preload: '1 mm',
      headHigher: inMm(size('gasket', 'thickness') - mm(1.2) - cuts()),
      offered: [inMm(size('pushrod'))],
    });
    expect(value('preload@left') / mm(1)).toBeCloseTo(Number(found.chosenPreload!.value), 5);
  });
  it('for the springs: installed less lift less bind, and room less lift', () => {
    expect(value('bind-room@intake')).toBeCloseTo(mm(44 - 28) - mm(7.9) * size('rocker-ratio'), 12);
    expect(value('retainer-room@exhaust')).toBeCloseTo(mm(15) - mm(7.9) * size('rocker-ratio'), 12);
  });
  it('adds up metal of both banks and known prices', () => {
    const all = ['deck-cut@left', 'deck-cut@right', 'head-cut@left', 'head-cut@right'];
    expect(best!.metal).toBeCloseTo(
      all.reduce((sum, one) => sum + size(one), 0),
      9,
    );
    const prices = best!.options.reduce((sum, { option }) => sum + (option.price ?? 0), 0);
    expect(best!.cost).toBeCloseTo(prices, 3);
    expect(best!.unpriced).toBe(0);
  });
  it('says each limit of cylinders that are alike once', () => {
    expect(best!.figures.map(({ name }) => name).filter((name) => name.startsWith('quench'))).toEqual([
      'quench, cylinders 1, 3, 5, 7',
      'quench, cylinders 2, 4, 6, 8',
    ]);
  });
});

describe('every combination of a vee', () => {
  const quarter = (most: number) => fc.integer({ min: 0, max: most }).map((n) => n / 4);
  const lists = fc.record({
    gaskets: fc.array(quarter(8), { minLength: 1, maxLength: 3 }),
    pistons: fc.array(
      fc.record({
        lower: fc.integer({ min: -4, max: 8 }).map((n) => n / 8),
        crown: fc.integer({ min: -8, max: 8 }),
        price: fc.integer({ min: 1, max: 9 }),
      }),
      { maxLength: 3 },
    ),
    keep: fc.boolean(),
    deck: quarter(2),
    head: quarter(4),
    pushrods: fc.array(quarter(8), { minLength: 1, maxLength: 3 }),
    ratio: fc.integer({ min: 84, max: 100 }).map((n) => n / 10),
    width: fc.integer({ min: 2, max: 20 }).map((n) => n / 10),
    quench: quarter(6),
  });

  it('is counted as by six loops with the formulas written out, and its cheapest pistons are the cheapest', () => {
    let solvable = 0;
    let bought = 0;
    fc.assert(
      fc.property(lists, ({ gaskets, pistons, keep, deck, head, pushrods, ratio, width, quench }) => {
        fc.pre(keep || pistons.length > 0);
        const { fixed, wanted } = veeEight;
        const { valveRoom: _, ...rest } = wanted;
        const input: FinderInput = {
          ...veeEight,
          fixed,
          offer: {
            gaskets: { options: gaskets.map((one) => ({ thickness: mm(0.5 + one), bore: mm(104), price: 0 })) },
            pistons: {
              keep,
              options: pistons.map(({ lower, crown, price }) => ({
                compressionHeight: mm(39.5 - lower),
                crownVolume: cubicCentimetres(crown),
                price,
              })),
            },
            deckCut: { limit: mm(deck), step: mm(0.25), each: true, price: 0 },
            headCut: { limit: mm(head), step: mm(0.25), price: 0 },
            pushrods: { values: pushrods.map((one) => ({ value: mm(197 + one), price: 0 })) },
          },
          wanted: {
            ...rest,
            ratio: { low: ratio, high: ratio + width },
            quench: { low: mm(0.9 + quench), high: mm(1.9 + quench) },
            intakeShift: mm(1),
            preload: { low: mm(0.25), high: mm(2) },
          },
        };
        const quarters = (most: number) => Array.from({ length: Math.floor(most * 4 + 1e-9) + 1 }, (_e, at) => at / 4);
        // Those that are there: 39.5 mm high with a dish of 5 cm³, and nothing to pay.
        const sets = [...(keep ? [{ lower: 0, crown: 5, price: 0 }] : []), ...pistons];
        let count = 0;
        let cheapest = Number.POSITIVE_INFINITY;
        for (const gasket of gaskets.map((one) => 0.5 + one))
          for (const { lower, crown, price } of sets)
            for (const left of quarters(deck))
              for (const right of quarters(deck))
                for (const cut of quarters(head))
                  for (const rod of pushrods.map((one) => 197 + one)) {
                    const holds = [left, right].every((own, bank) => {
                      const clear = 229.4 + bank * 0.1 - 44 - 145 - (39.5 - lower) - own;
                      const room =
                        68 -
                        6.8 * cut +
                        (Math.PI / 4) * (10.4 ** 2 * gasket * 0.1 + 10.2 ** 2 * clear * 0.1) +
                        crown +
                        1;
                      const got = ((Math.PI / 4) * 10.2 ** 2 * 8.8) / room + 1;
                      const moved = own + cut - (gasket - 1.2);
                      const shift = (moved * Math.sin(Math.PI / 4)) / Math.cos((55 * Math.PI) / 180);
                      const preload = rod - 198 + moved;
                      const inside = (value: number, low: number, high: number) =>
                        value >= low - 1e-9 && value <= high + 1e-9;
                      return (
                        inside(got, ratio, ratio + width) &&
                        inside(clear + gasket, 0.9 + quench, 1.9 + quench) &&
                        inside(shift, -1, 1) &&
                        inside(preload, 0.25, 2) &&
                        229.4 + bank * 0.1 - own >= 229 - 1e-9 &&
                        120 - cut >= 119.2 - 1e-9
                      );
                    });
                    if (!holds) continue;
                    count += 1;
                    cheapest = Math.min(cheapest, price);
                  }
        const begun = beginSearch(input);
        if (!begun.ok) throw new Error(describeFinderFault(begun.fault));
        while (progressOf(begun.value).phase === 'combinations') advance(begun.value, 1000);
        expect(progressOf(begun.value).feasible).toBe(count);
        if (count === 0) return;
        solvable += 1;
        if (cheapest > 0) bought += 1;
        expect(answerOf(begun.value).best['least-cost'][0]?.cost).toBe(cheapest);
      }),
      { numRuns: 120 },
    );
    expect(solvable).toBeGreaterThan(20);
    expect(bought).toBeGreaterThan(5);
  });
});

describe('when nothing fits', () => {
  const wanted = { ...veeEight.wanted, quench: { low: mm(0.9), high: mm(1) } };
  const offer = {
    gaskets: { options: [{ thickness: mm(1.5), bore: mm(104) }] },
    pistons: { options: [{ compressionHeight: mm(40.4), crownVolume: cubicCentimetres(5) }] },
  };
  const { stroke, rodLength, chamberArea } = veeEight.fixed;
  const blocked: FinderInput = {
    fixed: {
      stroke,
      ...(rodLength !== undefined && { rodLength }),
      ...(chamberArea !== undefined && { chamberArea }),
      cylinders: [
        {
          number: 1,
          bank: 'only',
          bore: mm(102),
          deckHeight: mm(229.4),
          chamber: cubicCentimetres(68),
        },
      ],
    },
    offer,
    wanted: { quench: wanted.quench, ratio: { low: 9, high: 10.5 } },
    keep: 3,
  };

  it('says what must give way, and which gasket would do', () => {
    const answer = find(blocked);
    // Deck clearance 229.4 − 44 − 145 − 40.4 = 0: a gasket of 1.5 mm gives 1.5 mm of quench, 0.5 mm too much.
    expect(answer.feasible).toBe(0);
    expect(answer.together?.loosened).toMatchObject([{ key: 'quench', end: 'high', to: expect.closeTo(mm(1.5), 9) }]);
    expect(answer.together?.share).toBeCloseTo(0.5 / 0.05, 6);
    const gasket = answer.additions.find(({ choice }) => choice === 'gasket');
    expect(gasket?.from).toBeCloseTo(mm(0.9), 9);
    expect(gasket?.to).toBeCloseTo(mm(1), 9);
    expect(answer.words).toContain('A head gasket with a thickness of 0.90 mm to 1.00 mm (bore 104.00 mm) would do.');
    expect(answer.words[1]).toBe(
      'It is enough to let quench up to 1.500 mm in place of 1.000 mm (1000 % of half of the window).',
    );
  });

  it('says that no piston on offer is low enough, and which is the nearest', () => {
    // Crown 0.2 mm and 0.9 mm proud of the deck and a gasket of 0.8 mm: 0.6 mm at most, where 0.9 is wanted.
    const answer = find({
      ...blocked,
      offer: {
        pistons: {
          options: [
            { name: 'flat', compressionHeight: mm(41.3), crownVolume: 0 },
            { name: 'dished', compressionHeight: mm(40.6), crownVolume: cubicCentimetres(6) },
          ],
        },
      },
      fixed: { ...blocked.fixed, gasket: { thickness: mm(0.8), bore: mm(104) } },
      wanted: { quench: { low: mm(0.9), high: mm(1.2) } },
    });
    expect(answer.words).toContain('No piston on offer is low enough: the nearest is dished (40.60 mm).');
    expect(answer.words.join(' ')).toContain('A piston with a compression height of 40.00 mm to 40.30 mm');
  });

  it('says nothing of that kind where those that are there are the only ones', () => {
    const answer = find({
      ...blocked,
      fixed: { ...blocked.fixed, piston: { compressionHeight: mm(40.4), crownVolume: cubicCentimetres(5) } },
      offer: { ...offer, pistons: { keep: true, options: [] } },
    });
    expect(answer.feasible).toBe(0);
    expect(answer.words.join(' ')).not.toContain('No piston');
    expect(answer.words.join(' ')).toContain('A head gasket with a thickness');
  });

  it('names the pair where no single limit is enough', () => {
    const answer = find({ ...blocked, wanted: { ...blocked.wanted, ratio: { low: 12, high: 12.5 } } });
    expect(answer.together?.loosened.map(({ key }) => key)).toEqual(['ratio', 'quench']);
    expect(answer.alone.every((one) => 'helps' in one)).toBe(true);
    expect(answer.words[1]).toMatch(/^Only together: let compression ratio down to .*, and quench up to/);
  });

  it('what it proposes to add makes a combination possible', () => {
    const answer = find(blocked);
    for (const { choice, size, from, to, beside } of answer.additions)
      for (const value of [from, to]) {
        const sizes = { ...beside, [size]: value };
        const option = choice === 'gasket' ? { gaskets: { options: [sizes] } } : { pistons: { options: [sizes] } };
        expect(find({ ...blocked, offer: { ...offer, ...option } as unknown as FinderInput['offer'] }).feasible).toBe(
          1,
        );
      }
  });
});

describe('a search under way', () => {
  it('answers the same however its steps are divided', () => {
    expect(find(veeEight, 997)).toEqual(find(veeEight));
  });
  it('tells how far it is and can be left at any time', () => {
    const begun = beginSearch(veeEight);
    if (!begun.ok) throw new Error('refused');
    let before = 0;
    for (let turn = 0; turn < 10; turn += 1) {
      const { share, done, phase } = advance(begun.value, 10);
      expect(done).toBe(false);
      expect(phase).toBe('combinations');
      expect(share).toBeGreaterThanOrEqual(before);
      before = share;
    }
    expect(before).toBeLessThan(1);
    expect(answerOf(begun.value).words[0]).toContain('so far');
  });
  it('gets through a million combinations', () => {
    const answer = find({
      ...veeEight,
      offer: {
        ...veeEight.offer,
        camAdvance: { from: degrees(-8), to: degrees(8), step: degrees(1) },
        pushrods: { from: mm(196), to: mm(200), step: mm(0.25) },
      },
    });
    expect(answer.raw).toBeGreaterThan(1e6);
    expect(answer.feasible).toBeGreaterThan(0);
  });
});

describe('an input that cannot be searched', () => {
  const { offer, fixed, wanted } = veeEight;
  it.each<[string, FinderInput, string]>([
    ['an empty list', { ...veeEight, offer: { ...offer, gaskets: { options: [] } } }, 'head gasket: the list is empty'],
    [
      'a size that is no number',
      { ...veeEight, offer: { ...offer, gaskets: { options: [{ thickness: Number.NaN, bore: mm(100) }] } } },
      'offer.gaskets.options 1.thickness: not a number',
    ],
    [
      'a window upside down',
      { ...veeEight, wanted: { ...wanted, ratio: { low: 11, high: 10 } } },
      'compression ratio: the lower limit 11 is above the upper limit 10',
    ],
    [
      'a step of nothing',
      { ...veeEight, offer: { ...offer, deckCut: { limit: mm(1), step: 0 } } },
      'deck cut: the steps cannot be made',
    ],
    [
      'a lobe that is none',
      {
        ...veeEight,
        fixed: { ...fixed, intake: { ...fixed.intake, lobe: { kind: 'table', angles: [0, 1], lifts: [0, 1] } } },
      },
      'intake lobe: no lobe has these',
    ],
    [
      'a rod too short',
      { ...veeEight, fixed: { ...fixed, rodLength: mm(20) } },
      'the rod is too short for this stroke',
    ],
    ['no cylinder', { ...veeEight, fixed: { ...fixed, cylinders: [] } }, 'at least one cylinder'],
    ['nothing on offer', { ...veeEight, offer: {} }, 'pushrod length is needed for preload, bank left'],
    [
      'nothing to choose',
      { ...veeEight, offer: {}, wanted: { headThickness: mm(100) } },
      'there is nothing to choose: name at least one thing',
    ],
  ])('is refused by name: %s', (_, input, words) => {
    expect(refusal(input)).toContain(words);
  });
  it('says what is missing and for what', () => {
    const { rodLength: _, ...without } = fixed;
    expect(refusal({ ...veeEight, fixed: without })).toContain(
      'rod length is needed for compression ratio, cylinder 1',
    );
  });
});

describe('a hydraulic lifter that pumps up', () => {
  const preload = { value: mm(0.8), u: 0 };
  const hydraulic: FinderInput = {
    ...veeEight,
    fixed: { ...veeEight.fixed, intake: { ...veeEight.fixed.intake, preload } },
  };
  it('leaves less room by its preload times the rocker ratio, and both rooms must hold', () => {
    const answer = find({ ...hydraulic, wanted: { valveRoom: { intake: mm(0.1) } } });
    const [best] = answer.best['least-metal'];
    const room = (key: string) => best!.figures.find((one) => one.key === `${key}@left`)!.value;
    const ratio = best!.options.find(({ choice }) => choice === 'rocker-ratio')!.option.sizes.value;
    const less = room('intake-room') - room('intake-room-pumped-up');
    expect(less).toBeCloseTo(mm(0.8) * (typeof ratio === 'number' ? ratio : ratio!.value), 6);
    expect(best!.figures.some(({ key }) => key.startsWith('exhaust-room-pumped-up'))).toBe(false);
  });
  it('rules out what only a full lifter would clear', () => {
    const wanted = { valveRoom: { intake: mm(2) } };
    const [solid, pumped] = [find({ ...veeEight, wanted }), find({ ...hydraulic, wanted })];
    expect(pumped.feasible).toBeLessThan(solid.feasible);
  });
});
