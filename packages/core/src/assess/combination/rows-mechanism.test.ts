/**
 * Every row of the mechanism reference: asked of the functions that the screens of the combination use, or named here with the reason why
 * it is no question about parts that are put together. Rows MO-01 to MO-09 besides those asked elsewhere are asked here of what shakes a
 * single cylinder: its force is the mass times the acceleration of the piston, so it vanishes where the piston is fastest.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { bareEngine, makeupWith, rowsOf, si } from './rows.suite.js';
import { shakingTurn } from './shaking.js';

/** Row, and the test file with what it asks there: the name of the calculation whose rows it takes, or the row by its own number. */
const ASKED: Readonly<Record<string, readonly [file: string, asks: string]>> = {
  'MO-01': ['rows-mechanism', 'fastest piston'],
  'MO-02': ['rows-mechanism', 'fastest piston'],
  'MO-03': ['rows-mechanism', 'fastest piston'],
  'MO-04': ['rows-mechanism', 'fastest piston'],
  'MO-08': ['rows-valve-room', 'MO-08'],
  'MO-09': ['rows-mechanism', 'force at the dead centres'],
  'MO-10': ['rows-compression', 'cylinder.compression-ratio'],
  'MO-11': ['rows-compression', 'cylinder.downfill'],
  'MO-12': ['rows-compression', 'cylinder.displacement'],
  'MO-13': ['rows-compression', 'cylinder.chamber-for-ratio'],
  'MO-14': ['rows-compression', 'cylinder.effective-ratio'],
  'MO-15': ['rows-compression', 'cylinder.cranking-pressure'],
  'MO-16': ['rows-compression', 'cylinder.mill-for-volume'],
  'MO-17': ['rows-compression', 'cylinder.intake-face'],
  'MO-19': ['rows-timing', 'cam.events-from-lobes'],
  'MO-20': ['rows-timing', 'cam.lobes-from-events'],
  'MO-21': ['rows-degreeing', 'crank.stop-method'],
  'MO-22': ['rows-timing', 'cam.events-from-lobes'],
  'MO-24': ['rows-timing', 'cam.lift-from-card'],
  'MO-25': ['rows-timing', 'valvetrain.valve-lift'],
  'MO-26': ['rows-rockers', 'valvetrain.rocker-sweep'],
  'MO-27': ['rows-rockers', 'valvetrain.preload-from-turns'],
  'MO-28': ['rows-rockers', 'valvetrain.collapsed-lifter'],
  'MO-30': ['rows-springs', 'valvetrain.spring-rate'],
  'MO-31': ['rows-springs', 'MO-31'],
  'MO-32': ['rows-springs', 'valvetrain.spring-loads'],
  'MO-33': ['rows-springs', 'valvetrain.spring-surge'],
  'MO-34': ['rows-springs', 'valvetrain.follow-force'],
  'MO-35': ['rows-valve-room', 'valvetrain.valve-to-piston'],
  'MO-38': ['rows-balance', 'MO-38'],
  'MO-39': ['rows-balance', 'MO-39'],
};
/** Rows that the combination does not answer; their calculations keep them (cases/*.json). */
const ELSEWHERE: Readonly<Record<string, string>> = {
  'MO-05': 'mean piston speed: no part is chosen by it here',
  'MO-06': 'sizes of an engine still to be designed, and volume along the stroke',
  'MO-07': 'where the dead centres of an offset pin lie: the combination takes them from the stop readings',
  'MO-18': 'an angled face has no single cut, and the sheet holds one head thickness',
  'MO-23': 'rise functions of textbooks: the lift from a card is the polynomial lobe of MO-24',
  'MO-29': 'pitches of threads: read with the sheet',
  'MO-36': 'which order fits which crank: judged when the sheet is read',
  'MO-37': 'fire intervals: judged when the sheet is read',
  'MO-40': 'marks on a damper: made at the bench, not chosen',
};
const ROWS = Array.from({ length: 40 }, (_, at) => `MO-${String(at + 1).padStart(2, '0')}`);

const textOf = (path: string): string => readFileSync(new URL(path, import.meta.url), 'utf8');
const CASES = '../../../../../cases/';
const cases = readdirSync(new URL(CASES, import.meta.url))
  .filter((name) => name.endsWith('.json'))
  .flatMap((name) => rowsOf({ cases: [], ...JSON.parse(textOf(`${CASES}${name}`)) }));
/** A test file without its tables of reasons. */
const testOf = (file: string): string =>
  textOf(`./${file}.test.ts`).replace(/^const (ASKED|ELSEWHERE)[\s\S]*?^};$/gm, '');

describe('rows of the mechanism reference', () => {
  it.each(ROWS)('%s is asked of the combination, or there is a reason why not', (row) => {
    const [asked, elsewhere] = [ASKED[row], ELSEWHERE[row]];
    expect([asked, elsewhere].filter((one) => one !== undefined)).toHaveLength(1);
    const own = cases.filter((one) => JSON.stringify(one).includes(row)).map(({ calculation }) => calculation);
    expect(own).not.toEqual([]);
    if (asked === undefined) return;
    const [file, asks] = asked;
    expect(testOf(file)).toContain(asks);
    if (/^[a-z]+\./.test(asks)) expect(own).toContain(asks);
  });
});

/** One cylinder whose piston weighs one kilogram, all else nothing: forces are accelerations. */
const single = (throwLength: string, rod: string, speed: string) =>
  shakingTurn(
    makeupWith(bareEngine(1), {
      stroke: 2 * si('length', throwLength),
      'rod-length': si('length', rod),
      'highest-speed': si('angular-speed', speed),
      'piston-mass': 1,
      'pin-mass': 0,
      'ring-mass': 0,
      'rod-small-end-mass': 0,
    }),
    3600,
  )!;
type Turn = ReturnType<typeof single>;
const up = ({ vectors }: Turn, key: string): readonly number[] => vectors.find((one) => one.key === key)!.up;

/** Crank angle in degrees at which the first of these forces changes its sign. */
function vanishes(turn: Turn, ...keys: readonly string[]): number {
  const sums = turn.angles.map((_, at) => keys.reduce((sum, key) => sum + up(turn, key)[at]!, 0));
  const after = sums.findIndex((force, at) => at > 0 && force > 0 !== sums[0]! > 0);
  const [before, now] = [sums[after - 1]!, sums[after]!];
  const share = before / (before - now);
  return ((turn.angles[after - 1]! + share * (turn.angles[after]! - turn.angles[after - 1]!)) * 180) / Math.PI;
}
const EXACT = ['whole-force'];
const TWO_TERMS = ['primary-force', 'secondary-force'];

describe('fastest piston: what shakes a single cylinder vanishes there', () => {
  it.each([
    ['MO-01', '1.6535 in', '6.024 in', EXACT, 75.6, 0.05],
    ['MO-02', '2 in', '6 in', EXACT, 73.1753, 0.0005],
    ['MO-03, exact', '0.3 m', '1 m', EXACT, 74.53, 0.005],
    ['MO-03, first and second order', '0.3 m', '1 m', TWO_TERMS, 75, 0.5],
    ['MO-04, exact', '0.1 m', '0.2 m', EXACT, 67.7, 0.005],
    ['MO-04, first and second order', '0.1 m', '0.2 m', TWO_TERMS, 68.529, 0.05],
  ] as const)('%s', (_, throwLength, rod, forces, degrees, tolerance) => {
    const found = vanishes(single(throwLength, rod, '1000 rpm'), ...forces);
    expect(Math.abs(found - degrees)).toBeLessThan(tolerance);
  });
});

it('MO-09: force at the dead centres of a kilogram at 6500 rpm, 3.480 in stroke, 5.700 in rod, in units of standard gravity', () => {
  const whole = up(single('1.740 in', '5.700 in', '6500 rpm'), 'whole-force');
  const [top, bottom] = [whole[0]! / 9.80665, whole[1800]! / 9.80665];
  expect(Math.abs(Math.abs(top) - 2725)).toBeLessThan(5);
  expect(Math.abs(Math.abs(bottom) - 1451)).toBeLessThan(3);
  expect(Math.sign(top)).toBe(-Math.sign(bottom));
});
