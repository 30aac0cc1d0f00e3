/**
 * Twelve typical readings of invented engines, as parts differ and wear, and every slip of a single key on them. For the test of the
 * number gate against the table of section 6 of the bench-ergonomics notes, which names bore, journal, ring gap, deck height,
 * pushrod, chamber, lash and spring load; rod journal, piston skirt, valve stem and piston mass are chosen here. How much
 * parts differ and wear: common practice, no source. Nothing in it is made of the gate's own figures.
 */
import { formatNumber, fromUnit } from '../../quantity/index.js';
import type { InstrumentKind, Measured } from '../model.js';
import type { GateQuestion } from './index.js';

/** Repeatable chance between 0 and 1 (a linear congruence of 2^32, steps from memory). */
export function chance(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    // The low digits of such a sequence repeat soon: the high ones are used.
    return (state >>> 8) / 2 ** 24;
  };
}
type Chance = () => number;
/** Normal scatter, by Box and Muller. */
const normal = (next: Chance): number => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
const between = (next: Chance, low: number, high: number): number => low + (high - low) * next();

export interface Typical {
  readonly name: string;
  readonly measured: Measured;
  readonly kind: InstrumentKind;
  readonly unit: string;
  readonly places: number;
  readonly usual: readonly [number, number];
  readonly possible: readonly [number, number];
  /** Readings of one engine, part by part and station by station; wear from 0 (as new) to 1 (worn out). */
  readonly engine: (next: Chance, wear: number) => readonly (readonly number[])[];
}
const parts = (count: number, one: () => readonly number[]): readonly (readonly number[])[] =>
  Array.from({ length: count }, one);

/** Top, middle and bottom of a bore, thrust and axial: the top wears most, along the thrust more than across. */
const BORE_WEAR = [1, 0.6, 0.4, 0.25, 0.1, 0.06];

export const TYPICAL: readonly Typical[] = [
  {
    name: 'cylinder bore',
    measured: 'length',
    kind: 'bore-gauge',
    unit: 'in',
    places: 4,
    usual: [3.995, 4.07],
    possible: [3.6, 4.4],
    engine: (next, wear) =>
      parts(8, () => {
        const [own, worn] = [4.0302 + 0.00015 * normal(next), wear * 0.004 * between(next, 0.6, 1.4)];
        return BORE_WEAR.map((share) => own + share * worn + 0.00015 * normal(next));
      }),
  },
  {
    name: 'main journal',
    measured: 'length',
    kind: 'outside-micrometer',
    unit: 'in',
    places: 4,
    usual: [2.46, 2.502],
    possible: [2.2, 2.75],
    engine: (next, wear) =>
      parts(5, () => {
        const own = 2.4982 + 0.0001 * normal(next) - wear * 0.001 * between(next, 0.3, 1.7);
        return [0, 1, 2, 3].map(() => own + (0.0001 + 0.0002 * wear) * normal(next));
      }),
  },
  {
    name: 'rod journal',
    measured: 'length',
    kind: 'outside-micrometer',
    unit: 'mm',
    places: 3,
    usual: [54, 55.05],
    possible: [49, 60],
    engine: (next, wear) =>
      parts(6, () => {
        const own = 54.983 + 0.003 * normal(next) - wear * 0.025 * between(next, 0.3, 1.7);
        return [0, 1, 2, 3].map(() => own + (0.002 + 0.005 * wear) * normal(next));
      }),
  },
  {
    name: 'piston skirt',
    measured: 'length',
    kind: 'outside-micrometer',
    unit: 'in',
    places: 4,
    usual: [3.985, 4.066],
    possible: [3.6, 4.4],
    engine: (next, wear) => parts(8, () => [4.0267 + 0.0002 * normal(next) - wear * 0.0015 * between(next, 0.4, 1.6)]),
  },
  {
    name: 'ring gap',
    measured: 'length',
    kind: 'feeler-gauge',
    unit: 'in',
    places: 3,
    usual: [0.006, 0.06],
    possible: [0, 0.25],
    engine: (next, wear) => parts(8, () => [0.018 + 0.001 * normal(next) + wear * 0.01 * between(next, 0.6, 1.4)]),
  },
  {
    name: 'deck height',
    measured: 'length',
    kind: 'height-gauge',
    unit: 'in',
    places: 3,
    usual: [8.975, 9.035],
    possible: [8.1, 9.9],
    engine: (next) => parts(2, () => [0, 1, 2, 3].map(() => 9.024 + 0.0015 * normal(next))),
  },
  {
    name: 'pushrod length',
    measured: 'length',
    kind: 'height-gauge',
    unit: 'in',
    places: 3,
    usual: [7.7, 7.9],
    possible: [7, 8.6],
    engine: (next, wear) => parts(16, () => [7.794 + 0.001 * normal(next) - wear * 0.003 * between(next, 0.3, 1.7)]),
  },
  {
    name: 'chamber volume',
    measured: 'volume',
    kind: 'burette',
    unit: 'cm3',
    places: 1,
    usual: [55, 75],
    possible: [30, 130],
    engine: (next, wear) => parts(8, () => [64.2 + (0.4 + 0.3 * wear) * normal(next)]),
  },
  {
    name: 'lash',
    measured: 'length',
    kind: 'feeler-gauge',
    unit: 'in',
    places: 3,
    usual: [0.002, 0.036],
    possible: [0, 0.2],
    engine: (next, wear) => parts(8, () => [Math.max(0.003, 0.012 + (0.001 + 0.002 * wear) * normal(next))]),
  },
  {
    name: 'spring load, seated',
    measured: 'force',
    kind: 'spring-tester',
    unit: 'lbf',
    places: 0,
    usual: [80, 140],
    possible: [30, 300],
    engine: (next, wear) => parts(16, () => [118 + 2 * normal(next) - wear * 10 * between(next, 0.3, 1.7)]),
  },
  {
    name: 'valve stem',
    measured: 'length',
    kind: 'outside-micrometer',
    unit: 'in',
    places: 4,
    usual: [0.336, 0.343],
    possible: [0.3, 0.38],
    engine: (next, wear) =>
      parts(8, () => {
        const [own, worn] = [0.3414 + 0.0001 * normal(next), wear * 0.0012 * between(next, 0.3, 1.7)];
        return [0.8, 0.2, 1].map((share) => own - share * worn + 0.00005 * normal(next));
      }),
  },
  {
    name: 'piston mass',
    measured: 'mass',
    kind: 'scale',
    unit: 'g',
    places: 1,
    usual: [500, 720],
    possible: [250, 1250],
    engine: (next) => parts(8, () => [612.4 + 0.7 * normal(next)]),
  },
];

/** Digits as the gauge shows them. */
export const figure = (typical: Typical, value: number): string => formatNumber(value, typical.places);

export interface Moment {
  readonly typical: Typical;
  readonly right: string;
  readonly question: (digits: string, unit?: string) => GateQuestion;
}
/** Every reading of an engine in the order of walking round, each with what was read before it. */
export function moments(typical: Typical, seed: number, wear: number): readonly Moment[] {
  const engine = typical.engine(chance(seed), wear);
  const si = (digits: string) => fromUnit(typical.measured, Number(digits), typical.unit);
  return engine.flatMap((stations, part) =>
    stations.map((value, station): Moment => {
      const read = (one: number) => si(figure(typical, one));
      const others = engine.slice(0, part).map((one) => read(one[station] ?? Number.NaN));
      const here = stations.slice(0, station).map(read);
      return {
        typical,
        right: figure(typical, value),
        question: (digits, unit = typical.unit) => asked(typical, `${digits} ${unit}`, others, here),
      };
    }),
  );
}
function asked(typical: Typical, text: string, others: readonly number[], here: readonly number[]): GateQuestion {
  const { measured, kind, unit, places } = typical;
  const window = ([low, high]: readonly [number, number]) => ({
    low: fromUnit(measured, low, unit),
    high: fromUnit(measured, high, unit),
  });
  const [usual, possible] = [window(typical.usual), window(typical.possible)];
  const resolution = fromUnit(measured, 10 ** -places, unit);
  return {
    text,
    what: typical.name,
    measured,
    kind,
    step: resolution,
    gauge: { name: 'the gauge', unit, resolution },
    expected: { nominal: (usual.low + usual.high) / 2, usual, possible, why: 'invented' },
    sisters: [
      { words: 'the others', values: others },
      { words: 'the other readings here', values: here },
    ],
  };
}

export type SlipKind =
  | 'point left out'
  | 'point doubled'
  | 'ten times'
  | 'a tenth'
  | '25.4 times'
  | 'a 25.4th'
  | 'inch and mm mixed up'
  | 'digit left out'
  | 'digit doubled'
  | 'neighbours swapped'
  | 'wrong neighbouring key';
export interface SlipMade {
  readonly slip: SlipKind;
  readonly digits: string;
  readonly unit?: string;
}

/** Keys beside each key on a number pad: 7 8 9 above 4 5 6 above 1 2 3 above 0. */
const BESIDE: Readonly<Record<string, string>> = {
  '0': '12',
  '1': '024',
  '2': '0135',
  '3': '26',
  '4': '157',
  '5': '2468',
  '6': '359',
  '7': '48',
  '8': '579',
  '9': '68',
};
const at = (text: string, index: number, instead: string, taken = 1): string =>
  text.slice(0, index) + instead + text.slice(index + taken);
/** The point one place to the right or to the left, the digits kept. */
function movedPoint(right: string, by: 1 | -1): string {
  const places = (right.split('.')[1] ?? '').length;
  const digits = right.replace('.', '');
  const point = digits.length - places + by;
  const padded = point <= 0 ? `${'0'.repeat(1 - point)}${digits}` : digits.padEnd(point, '0');
  const whole = point <= 0 ? 1 : point;
  const text = whole >= padded.length ? padded : `${padded.slice(0, whole)}.${padded.slice(whole)}`;
  return text.replace(/^0+(?=\d)/, '');
}

/** Every slip of one key on a figure, and the slips of magnitude; those that give the same number are no slips. */
export function slipsOn(typical: Typical, right: string): readonly SlipMade[] {
  const number = Number(right);
  const keys = [...right].map((key, index) => ({ key, index }));
  const digits = keys.filter(({ key }) => key !== '.');
  const times = (factor: number) => formatNumber(number * factor, typical.places);
  const other = typical.unit === 'in' ? 'mm' : 'in';
  const made: readonly SlipMade[] = [
    ...(right.includes('.')
      ? ([
          { slip: 'point left out', digits: right.replace('.', '').replace(/^0+(?=\d)/, '') },
          { slip: 'point doubled', digits: right.replace('.', '..') },
        ] as const)
      : []),
    { slip: 'ten times', digits: movedPoint(right, 1) },
    { slip: 'a tenth', digits: movedPoint(right, -1) },
    { slip: 'ten times', digits: times(10) },
    { slip: 'a tenth', digits: times(0.1) },
    ...(typical.measured === 'length'
      ? ([
          { slip: '25.4 times', digits: times(25.4) },
          { slip: 'a 25.4th', digits: times(1 / 25.4) },
          { slip: 'inch and mm mixed up', digits: right, unit: other },
        ] as const)
      : []),
    ...digits.map(({ index }): SlipMade => ({ slip: 'digit left out', digits: at(right, index, '') })),
    ...digits.map(({ key, index }): SlipMade => ({ slip: 'digit doubled', digits: at(right, index, key + key) })),
    ...digits.slice(1).map(({ key, index }, k): SlipMade => {
      const before = digits[k]!;
      return { slip: 'neighbours swapped', digits: at(at(right, before.index, key), index, before.key) };
    }),
    ...digits.flatMap(({ key, index }) =>
      [...BESIDE[key]!].map((wrong): SlipMade => ({ slip: 'wrong neighbouring key', digits: at(right, index, wrong) })),
    ),
  ];
  return made.filter((one) => one.unit !== undefined || Number(one.digits) !== number);
}
