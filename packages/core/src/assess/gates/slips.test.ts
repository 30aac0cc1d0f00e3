/** The slip test of section 6 of the bench-ergonomics notes: what the gate catches, and how often it asks without need. */
import { describe, expect, it } from 'vitest';
import { type GateQuestion, readingGate } from './index.js';
import { type Moment, moments, type SlipKind, type SlipMade, slipsOn, TYPICAL } from './slips.suite.js';

/** As new, half worn, worn out. */
const WEAR = [0, 0.5, 1];
const SLIP_SEEDS = [3, 17, 29, 41, 53, 67];
const HONEST_SEEDS = Array.from({ length: 40 }, (_, k) => 1_000 + 37 * k);

interface Count {
  readonly made: number;
  readonly range: number;
  readonly places: number;
  readonly all: number;
}
const caught = (question: GateQuestion): number => (readingGate(question).level === 'fine' ? 0 : 1);
/** The three columns of the table: syntax and range; and the places of the gauge; and the sisters. */
function columns(moment: Moment, { digits, unit }: SlipMade): Omit<Count, 'made'> {
  const { gauge, ...bare } = moment.question(digits, unit);
  const lonely = { ...bare, sisters: [] };
  return {
    range: caught(lonely),
    places: caught({ ...lonely, ...(gauge && { gauge }) }),
    all: caught(moment.question(digits, unit)),
  };
}
const plus = (sum: Count | undefined, one: Omit<Count, 'made'>): Count => ({
  made: (sum?.made ?? 0) + 1,
  range: (sum?.range ?? 0) + one.range,
  places: (sum?.places ?? 0) + one.places,
  all: (sum?.all ?? 0) + one.all,
});

/** Slips on the reading in the middle of the round, when half of its sisters are read. */
function countSlips(): ReadonlyMap<SlipKind | 'all', Count> {
  const counts = new Map<SlipKind | 'all', Count>();
  for (const typical of TYPICAL) {
    for (const wear of WEAR) {
      for (const seed of SLIP_SEEDS) {
        const round = moments(typical, seed, wear);
        const moment = round[Math.floor(round.length / 2)]!;
        for (const slip of slipsOn(typical, moment.right)) {
          const one = columns(moment, slip);
          for (const key of [slip.slip, 'all'] as const) counts.set(key, plus(counts.get(key), one));
        }
      }
    }
  }
  return counts;
}
const counts = countSlips();
const share = (key: SlipKind | 'all', column: keyof Omit<Count, 'made'>): number => {
  const count = counts.get(key)!;
  return (100 * count[column]) / count.made;
};
const table = [...counts].map(
  ([key, { made }]) =>
    `${key.padEnd(24)} ${String(made).padStart(5)} ${(['range', 'places', 'all'] as const)
      .map((column) => `${share(key, column).toFixed(0).padStart(6)} %`)
      .join(' ')}`,
);
console.info(['', `${'slip'.padEnd(24)}  made    range  +places +sisters`, ...table, ''].join('\n'));

describe('of the slips of one key over twelve typical readings', () => {
  it.each([
    'point left out',
    'point doubled',
    'ten times',
    'a tenth',
    '25.4 times',
    'a 25.4th',
    'inch and mm mixed up',
  ] as const)('%s: every one is asked about or refused', (slip) => {
    expect(counts.get(slip)!.made).toBeGreaterThan(100);
    expect(share(slip, 'all')).toBe(100);
  });
  // The figures of the table in section 6: digits 100 %, swapped 82 %, wrong key 54 %, all 80 %.
  it.each([
    ['digit left out', 100],
    ['digit doubled', 100],
    ['neighbours swapped', 82],
    ['wrong neighbouring key', 54],
    ['all', 80],
  ] as const)('%s: at least %d of a hundred are asked about or refused', (slip, least) => {
    expect(share(slip, 'all')).toBeGreaterThanOrEqual(least);
  });
  it('the places of the gauge alone find every digit left out or doubled, which the range does not', () => {
    for (const slip of ['digit left out', 'digit doubled'] as const) {
      expect(share(slip, 'places')).toBe(100);
      expect(share(slip, 'range')).toBeLessThan(100);
    }
  });
  it('each gate adds to the one before it', () => {
    expect(share('all', 'range')).toBeLessThan(share('all', 'places'));
    expect(share('all', 'places')).toBeLessThan(share('all', 'all'));
  });
  it('no gate finds every wrong last digit: that is what a second reading is for', () => {
    expect(share('wrong neighbouring key', 'all')).toBeLessThan(100);
  });
});

describe('slips of magnitude before there are sisters to compare with', () => {
  it.each(TYPICAL.map((typical) => [typical.name, typical] as const))(
    '%s: ten times, a tenth and inch for millimetre are caught on the very first reading',
    (_, typical) => {
      for (const wear of WEAR) {
        const [first] = moments(typical, 5, wear);
        const magnitude = slipsOn(typical, first!.right).filter(({ slip }) =>
          ['ten times', 'a tenth', '25.4 times', 'a 25.4th', 'inch and mm mixed up', 'point left out'].includes(slip),
        );
        expect(magnitude.length).toBeGreaterThanOrEqual(4);
        for (const { digits, unit } of magnitude) expect(caught(first!.question(digits, unit)), digits).toBe(1);
      }
    },
  );
});

describe('right entries, reading by reading through whole engines', () => {
  const asked = (wear: number) => {
    let [entered, questions] = [0, 0];
    for (const typical of TYPICAL) {
      for (const seed of HONEST_SEEDS) {
        for (const { right, question } of moments(typical, seed, wear)) {
          entered += 1;
          questions += caught(question(right));
        }
      }
    }
    return { entered, questions };
  };
  it('at most two in a hundred are asked about, in fresh engines and in worn ones', () => {
    const each = WEAR.map(asked);
    console.info(
      each
        .map(({ entered, questions }, k) => `wear ${WEAR[k]}: ${questions} of ${entered} right entries asked about`)
        .join('\n'),
    );
    for (const { entered, questions } of each) {
      expect(entered).toBeGreaterThan(5_000);
      expect(questions / entered).toBeLessThanOrEqual(0.02);
    }
  });
  it('none is refused', () => {
    for (const typical of TYPICAL) {
      for (const { right, question } of moments(typical, 77, 1)) {
        expect(readingGate(question(right)).level).not.toBe('impossible');
      }
    }
  });
});
