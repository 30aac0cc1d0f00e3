import { describe, expect, it } from 'vitest';
import published from '../../../../cases/valve-sets.json' with { type: 'json' };
import { gudgeon } from '../memory-io.suite.js';

async function json(...argv: string[]) {
  const said = await gudgeon(['valves', ...argv, '--json']);
  expect(said).toMatchObject({ code: 0, err: [] });
  return JSON.parse(said.out);
}

describe('gudgeon valves --json', () => {
  const printed = published.cases.filter((row) => row.twoStopPlanPrintedInFull);
  it.each(printed)('$case: answers the printed two-stop list (cases/valve-sets.json)', async ({ order, stops }) => {
    const plan = await json('--order', order.join(','));
    const found = plan.stops.map(({ margins: _, ...stop }: { margins: unknown }) => stop);
    expect(found).toEqual(stops);
  });

  it('has exactly the parts of its contract, and a margin for each valve that is set', async () => {
    const plan = await json('--order', '1,3,4,2');
    expect(Object.keys(plan)).toEqual(['assumed', 'stops', 'permitted', 'refused']);
    expect(plan.stops[0]).toEqual({
      crankDegrees: 0,
      intake: [1, 2],
      exhaust: [1, 3],
      margins: [
        { cylinder: 1, valve: 'intake', degrees: 105 },
        { cylinder: 1, valve: 'exhaust', degrees: 100 },
        { cylinder: 2, valve: 'intake', degrees: 145 },
        { cylinder: 3, valve: 'exhaust', degrees: 145 },
      ],
    });
    expect(plan.permitted).toEqual([
      { crankDegrees: 0, intake: [1, 2], exhaust: [1, 3] },
      { crankDegrees: 360, intake: [3, 4], exhaust: [2, 4] },
    ]);
    expect(plan.refused).toEqual([]);
  });

  it('says that the cam card, the margin and even firing were assumed', async () => {
    const { assumed } = await json('--order', '1-3-4-2');
    expect(assumed).toHaveLength(3);
    expect(assumed.join('\n')).toMatch(/cam card unknown.*35 BTDC.*75 ABDC.*80 BBDC.*35 ATDC/);
    expect(assumed.join('\n')).toMatch(/margin taken as 5 degrees/);
  });

  it('assumes nothing when all is given', async () => {
    const flags = ['--intervals', '180,180,180,180', '--cam', 'io=30,ic=70,eo=70,ec=30', '--margin', '10'];
    expect((await json('--order', '1,3,4,2', ...flags)).assumed).toEqual([]);
  });

  it('plans over the stops given, and names a valve that none of them permits', async () => {
    const plan = await json('--order', '1,3,4,2', '--stops', '0,90');
    expect(plan.stops.map(({ crankDegrees }: { crankDegrees: number }) => crankDegrees)).toEqual([0, 90]);
    expect(plan.refused).toContainEqual({
      cylinder: 2,
      valve: 'exhaust',
      reason: 'exhaust 2 at crank 0 (phase 180): off its base circle, it opened 80 degrees ago',
    });
  });

  it('refuses the exhaust of 2 at the second of three stops when it opens 95 degrees before bottom dead centre (V5)', async () => {
    const second = async (eo: number) => {
      const cam = `io=30,ic=70,eo=${eo},ec=30`;
      return (await json('--order', '1,3,7,2,6,5,4,8', '--stops', '0,360,450', '--cam', cam)).permitted[1];
    };
    expect((await second(70)).exhaust).toContain(2);
    expect((await second(95)).exhaust).not.toContain(2);
  });

  it('widens events at a lift and says so', async () => {
    const { assumed } = await json('--order', '1', '--cam', 'io=0,ic=40,eo=45,ec=-5,at=0.050in', '--margin', '5');
    expect(assumed).toEqual([
      'intake events are at 1.27 mm lift: widened by 25 degrees on each side (common practice, no source)',
      'exhaust events are at 1.27 mm lift: widened by 25 degrees on each side (common practice, no source)',
    ]);
  });

  it('takes the widening from advertised durations when they are given', async () => {
    const cam = 'io=0,ic=40,eo=45,ec=-5,at=1mm,inAdv=270,exAdv=280';
    const { assumed } = await json('--order', '1', '--cam', cam, '--margin', '5');
    expect(assumed.join('\n')).toMatch(/intake .* widened by 25 .*\n.*exhaust .* widened by 30 /);
  });

  it('takes uneven intervals', async () => {
    const plan = await json('--order', '1,2', '--intervals', '270,450');
    const all = plan.stops.flatMap((stop: { intake: number[]; exhaust: number[] }) => [
      ...stop.intake,
      ...stop.exhaust,
    ]);
    expect(all.sort()).toEqual([1, 1, 2, 2]);
  });
});

describe('gudgeon valves with a sheet', () => {
  const sheet = `gudgeon: 1
name: Invented four
invented: true
layout:
  form: inline
  cylinders: [1, 2, 3, 4]
  firingOrder: 1-3-4-2
cam:
  basis: seat
  events: { io: 30 deg BTDC, ic: 70 deg ABDC, eo: 70 deg BBDC, ec: 30 deg ATDC }
`;

  it('takes order and cam card from it', async () => {
    const said = await gudgeon(['valves', 'four.yaml', '--json'], { 'four.yaml': sheet });
    expect(said).toMatchObject({ code: 0, err: [] });
    const plan = JSON.parse(said.out);
    expect(plan.assumed.join()).not.toContain('cam card');
    expect(plan.stops[0]).toMatchObject({ intake: [1, 2], exhaust: [1, 3], margins: [{ degrees: 110 }, {}, {}, {}] });
  });

  it('lets the flags win over it', async () => {
    const argv = ['valves', '-', '--cam', 'io=10,ic=50,eo=50,ec=10', '--json'];
    const plan = JSON.parse((await gudgeon(argv, { '-': sheet })).out);
    expect(plan.stops[0].margins[0]).toEqual({ cylinder: 1, valve: 'intake', degrees: 130 });
  });

  it('refuses a sheet that prints no firing order, and says how to give one', async () => {
    const silent = sheet.replace(/ *firingOrder: .*\n/, '');
    expect((await gudgeon(['valves', '-', '--json'], { '-': silent })).err).toEqual([
      expect.stringMatching(/^standard input: the sheet prints no firing order; give one with --order/),
    ]);
    expect(await gudgeon(['valves', '-', '--order', '1,3,4,2', '--json'], { '-': silent })).toMatchObject({ code: 0 });
    const short = await gudgeon(['valves', '-', '--order', '1,3,2'], { '-': silent });
    expect(short.err).toEqual(['--order: 3 cylinders given; the engine of the sheet has 4']);
  });

  it('names each fault of a sheet with its line', async () => {
    const said = await gudgeon(['valves', 'four.yaml'], { 'four.yaml': sheet.replace('1-3-4-2', '1-3-3-2') });
    expect(said.code).toBe(2);
    expect(said.err.length).toBeGreaterThan(0);
    for (const line of said.err) expect(line).toMatch(/^four\.yaml(:\d+)?: /);
  });
});

describe('gudgeon valves refuses with exit code 2 and one line a problem', () => {
  it.each([
    [[], /give a sheet, or a firing order/],
    [['--order', '1,3,2,4,4'], /cylinder 4 stands more than once/],
    [['--order', '1,8,4,3,6,5,7'], /cylinder 2 is missing/],
    [['--order', '1,x'], /"x" is not a cylinder number/],
    [['--order', '1,2', '--intervals', '300,300'], /add up to 600 degrees; 720 is needed/],
    [['--order', '1', '--cam', 'io=1,ic=2,eo=3'], /ec is missing/],
    [['--order', '1', '--cam', 'io=1,ic=2,eo=3,ec=4,zz=5'], /"zz=5" is not understood/],
    [['--order', '1', '--cam', 'io=1,ic=2,eo=3,ec=4,io=5'], /io stands twice/],
    [['--order', '1', '--cam', 'io=1,ic=2,eo=3,ec=4,at=0.05'], /not a lift with its unit/],
    [['--order', '1', '--cam', 'io=1,ic=2,eo=3,ec=4,inAdv=200'], /used together, and with at= only/],
    [['--order', '1', '--cam', 'io=400,ic=2,eo=3,ec=4'], /intake opens \(BTDC\) at 400 degrees; -180 to 180 is valid/],
    [['--order', '1', '--cam', 'io=-90,ic=-90,eo=3,ec=4'], /intake valve would be open for 0 degrees/],
    [['--order', '1', '--margin', 'five'], /--margin: "five" is not a number of degrees/],
    [['--order', '1', '--margin', '-1'], /margin: -1 degrees; 0 to below 360 is valid/],
    [['--order', '1', '--stops', '0,720'], /stops: 720 is not a crank angle from 0 to below 720/],
    [['none.yaml'], /none\.yaml: no such file/],
  ])('%j', async (argv, line) => {
    const said = await gudgeon(['valves', ...argv]);
    expect(said.code).toBe(2);
    expect(said.out).toBe('');
    expect(said.err).toHaveLength(1);
    expect(said.err[0]).toMatch(line);
  });

  it('names all problems of one call', async () => {
    const said = await gudgeon(['valves', '--order', '1,1', '--intervals', '1,2', '--cam', 'io=1,ic=2,eo=3,ec=999']);
    expect(said.err).toHaveLength(3);
  });
});

describe('gudgeon valves reads', () => {
  it.each(['1,3,4,2', ' 1, 3 ,4,2 ', '1-3-4-2', '1 3 4 2'])('a firing order written as "%s"', async (order) => {
    const { out } = await gudgeon(['valves', '--order', order, '--json']);
    expect(JSON.parse(out).stops[0]).toMatchObject({ crankDegrees: 0, intake: [1, 2], exhaust: [1, 3] });
  });
});

describe('gudgeon valves for a reader', () => {
  it('says where to stop, what is seen there, what to set and how tight it is', async () => {
    const { out, code } = await gudgeon(['valves', '--order', '1,8,4,3,6,5,7,2']);
    expect(code).toBe(0);
    expect(out).toContain('Stop 1: 0 degrees (a dead centre mark)');
    expect(out).toContain('cylinder 1 at its firing dead centre, valves of 6 rocking');
    expect(out).toContain('Stop 2: 360 degrees, turn forward 360');
    expect(out).toMatch(/intake {4}1 2 5 7\n {2}exhaust {3}1 3 4 8\n {2}tightest {2}\w+ \d, 55 degrees/);
    expect(out).toContain('Assumed: cam card unknown');
  });
});
