import { describe, expect, it } from 'vitest';
import { gudgeon } from '../memory-io.suite.js';

const piston = { stroke: '3.480 in', rodLength: '5.700 in', crankAngle: '90 deg' };

describe('gudgeon calc', () => {
  it('lists every calculation with its title', async () => {
    const { code, out } = await gudgeon(['calc', '--list']);
    expect(code).toBe(0);
    expect(out).toMatch(/^crank\.motion +Piston position, speed and acceleration$/m);
  });

  it('lists them as JSON with what each takes and gives', async () => {
    const { out } = await gudgeon(['calc', '--list', '--json']);
    const pages = JSON.parse(out);
    const motion = pages.find((page: { id: string }) => page.id === 'crank.motion');
    expect(motion.inputs[0]).toMatchObject({ name: 'stroke', kind: 'length', required: true });
    expect(motion.schema.required).toContain('rodLength');
  });

  it('computes from a file and answers in engineering unit and in the unit that was typed', async () => {
    const { code, out } = await gudgeon(['calc', 'crank.motion', '--input', 'in.json', '--json'], {
      'in.json': JSON.stringify(piston),
    });
    expect(code).toBe(0);
    const { id, outputs, working, sources } = JSON.parse(out);
    expect(id).toBe('crank.motion');
    // Drop at 90 deg from Heywood's formula (reference row MO-08): 2.0121 in.
    expect(outputs.drop.unit).toBe('mm');
    expect(outputs.drop.value).toBeCloseTo(2.0121 * 25.4, 2);
    expect(outputs.drop.text).toMatch(/^2\.01207 in$/);
    expect(working.map((line: { line: string }) => line.line)).toContain(
      'S = 3.480 in   printed stroke: twice the crank throw',
    );
    expect(sources[0]).toMatchObject({ key: 'derived-here', standing: 'derived' });
  });

  it('reads standard input and takes { value, unit }', async () => {
    const stdin = JSON.stringify({ ...piston, stroke: { value: 88.392, unit: 'mm' } });
    const { code, out } = await gudgeon(['calc', 'crank.motion', '--input', '-', '--display', 'inch'], { '-': stdin });
    expect(code).toBe(0);
    expect(out).toMatch(/piston below its highest point: x = 2\.01207 in/);
  });

  it('says one line a problem and ends with 2', async () => {
    const stdin = JSON.stringify({ stroke: '-3.480 in', rodLength: 5.7, crankAngle: '90 thou', colour: 'red' });
    const { code, out, err } = await gudgeon(['calc', 'crank.motion', '--input', '-'], { '-': stdin });
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toEqual([
      'colour: no such input; this calculation takes stroke, rodLength, pinOffset, crankAngle, crankSpeed',
      'stroke: -3.480 in given; valid is above 0 in and at most 118.11 in',
      'rodLength: "5.7" has no unit: a length needs one, such as mm, in, thou, µm.',
      'crankAngle: "thou" is a unit of length, but an angle is needed: use deg, turn, rad.',
    ]);
  });

  it('refuses a rod shorter than the throw with the length that it needs', async () => {
    const stdin = JSON.stringify({ ...piston, rodLength: '1.5 in' });
    const { code, err } = await gudgeon(['calc', 'crank.motion', '--input', '-'], { '-': stdin });
    expect(code).toBe(2);
    expect(err).toEqual([
      'stroke 3.480 in, rodLength 1.5 in, pinOffset 0 mm: the crank could not turn; rodLength must be above 1.74 in',
    ]);
  });

  it.each([
    ['no file', ['calc', 'crank.motion', '--input', 'none.json'], /^none\.json: no such file$/],
    ['a file that is not JSON', ['calc', 'crank.motion', '--input', 'bad.json'], /^bad\.json: not JSON/],
    ['an empty file', ['calc', 'crank.motion', '--input', 'empty.json'], /^empty\.json: empty/],
    ['a list in place of names', ['calc', 'crank.motion', '--input', 'list.json'], /^the inputs must be one object/],
    [
      'an unknown calculation',
      ['calc', 'crank.colour', '--input', 'list.json'],
      /^no calculation is named "crank\.colour"; near: crank\./,
    ],
    ['no calculation', ['calc'], /^calc: name a calculation/],
    ['an unknown command', ['paint'], /paint/],
    ['an unknown option', ['calc', '--paint'], /--paint/],
    ['a seed that is no number', ['calc', 'crank.motion', '--seed', 'x'], /whole number/],
  ])('ends with 2 and a line of text for %s', async (_, argv, line) => {
    const files = { 'bad.json': '{ "stroke": ', 'empty.json': ' ', 'list.json': '[1]' };
    const { code, out, err } = await gudgeon(argv, files);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err.join('\n')).toMatch(line);
    expect(err.join('\n')).not.toMatch(/\n +at |undefined|NaN/);
  });

  it('shows the doubt with its shares, and the same figures for the same seed', async () => {
    const stdin = JSON.stringify({ stroke: '86.00 ±0.02 mm', crankSpeed: '3600 ±10 rpm' });
    const argv = ['calc', 'crank.mean-piston-speed', '--input', '-', '--uncertainty', '--json'];
    const first = await gudgeon(argv, { '-': stdin });
    const again = await gudgeon(argv, { '-': stdin });
    const other = await gudgeon([...argv, '--seed', '7'], { '-': stdin });
    expect(first.out).toBe(again.out);
    expect(first.out).not.toBe(other.out);
    const { uncertainty } = JSON.parse(first.out).outputs.meanSpeed;
    // A product: relative uncertainties add in squares (JCGM 100, 5.1.6).
    expect(uncertainty.standard).toBeCloseTo(10.32 * Math.hypot(0.02 / 86, 10 / 3600), 6);
    expect(uncertainty.contributions[0].input).toBe('crankSpeed');
  });

  it('says that the doubt is not known when no input states one', async () => {
    const stdin = JSON.stringify(piston);
    const { out } = await gudgeon(['calc', 'crank.motion', '--input', '-', '--uncertainty', '--json'], { '-': stdin });
    const { outputs, cautions } = JSON.parse(out);
    expect(outputs.drop.uncertainty).toBeUndefined();
    expect(cautions[0].text).toContain('not known');
  });

  it('shows the data sheet of a calculation when no input is given', async () => {
    const { code, out } = await gudgeon(['calc', 'fasteners.preload-band']);
    expect(code).toBe(0);
    expect(out).toContain('Formula: F = T·(1 ± w)/arm(μ)');
    expect(out).toMatch(/^ {2}thread: thread with its pitch; /m);
  });

  it('answers help with 0', async () => {
    const { code, out } = await gudgeon(['--help']);
    expect(code).toBe(0);
    expect(out).toContain('calc');
  });
});
