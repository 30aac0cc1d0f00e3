import { describe, expect, it } from 'vitest';
import { makeupOf, shakingTurn, springCurve } from '../../../assess/index.js';
import { engineOf, read } from '../../../engine/load/try-sheets.suite.js';
import { rpm } from '../../../quantity/index.js';
import { shapeBox } from '../../extent.js';
import { plotCsv, plotFigure, plotWords, roundPaths, shakingPlot, springPlot, valueAt } from '../index.js';
import { fieldOf, LAPTOP_PLOT, PHONE_PLOT } from '../plot-figure.js';

const vee = makeupOf(engineOf(read('sheets/quernside-51-v8.yaml')));
const four = makeupOf(engineOf(read('sheets/pellgarth-t4-twin-cam.yaml')));

describe('spring load against the load needed', () => {
  const curve = springCurve(vee, 'intake', [rpm(4600), rpm(5400)]);
  if ('missing' in curve) throw new Error(curve.missing.map(({ key }) => key).join());

  it('is drawn over the lobe, with the speed at which the gear would part', () => {
    const plot = springPlot(curve, 'metric');
    expect(plot.curves.map(({ id }) => id)).toEqual(['spring', 'needed-1', 'needed-2', 'lift']);
    expect(plot.description).toContain('too weak at 5400 r/min');
    expect(plot.description).not.toContain('4600 r/min and');
    expect(plot.description).toMatch(/would leave the lobe at 4\d{3} r\/min/);
    // Nose: 2·C2·L·ω²/b² with C2 = −2.5, L = 7.35 × 1.55 mm, b = 128°, 4600 r/min and 278.77 g: 738.3 N by hand.
    expect(valueAt(plot.curves[1]!, 0)).toBeCloseTo(738.3, 0);
    expect(plotWords(plot)).toContain('nose');
    expect(plotFigure(plot).shapes.length).toBeGreaterThan(20);
  });

  it('keeps the names of marks and limits off its frame, on a phone too', () => {
    const plot = springPlot(curve, 'metric');
    for (const size of [PHONE_PLOT, LAPTOP_PLOT]) {
      const { left, right, top, bottom } = fieldOf(plot, size);
      const nose = plotFigure(plot, size).shapes.find((one) => one.kind === 'label' && one.text === 'nose');
      if (nose === undefined) throw new Error('no name at the nose');
      const box = shapeBox(nose);
      for (const edge of [top, bottom]) expect(box.top > edge || box.bottom < edge).toBe(true);
      for (const edge of [left, right]) expect(box.left > edge || box.right < edge).toBe(true);
    }
  });

  it('writes the numbers of the crank so far apart that none runs into the next, with 0 among them', () => {
    const plot = springPlot(curve, 'metric');
    const numbers = plotFigure(plot, PHONE_PLOT).shapes.filter(
      (one) => one.kind === 'label' && /^-?\d+$/.test(one.text) && one.anchor === 'middle',
    );
    // Eight steps of 45° on 100 mm: every second one.
    expect(numbers.map((one) => one.kind === 'label' && one.text)).toEqual(['-180', '-90', '0', '90', '180']);
    const boxes = numbers.map(shapeBox);
    for (const [n, box] of boxes.slice(1).entries()) expect(box.left).toBeGreaterThan(boxes[n]!.right);
  });

  it('shows the same in inches', () => {
    const [metric, inch] = [springPlot(curve, 'metric'), springPlot(curve, 'inch')];
    expect(valueAt(inch.curves[0]!, 0)! * 4.4482216).toBeCloseTo(valueAt(metric.curves[0]!, 0)!, 3);
    expect(inch.right?.unit).toBe('in');
    expect(plotCsv(inch).split('\r\n')[0]).toContain('needed at 4600 r/min (lbf)');
  });

  it('names what is missing instead of a curve', () => {
    const bare = makeupOf(engineOf(read('sheets/transcribed/sm-ohv-v8-99x92.yaml')));
    const found = springCurve(bare, 'intake');
    expect('missing' in found && found.missing.map(({ key }) => key)).toContain('valve-mass');
  });
});

describe('what shakes over a turn', () => {
  it('of an inline four the secondary force goes up twice a turn and never sideways', () => {
    const turn = shakingTurn(four)!;
    const plot = shakingPlot(turn, 'force', 'metric')!;
    const secondary = plot.curves.find(({ id }) => id === 'secondary-force')!;
    for (const angle of [0, 90, 180, 270]) expect(valueAt(secondary, angle)).toBeCloseTo(valueAt(secondary, 0)!, 6);
    expect(valueAt(secondary, 45)!).toBeLessThan(1e-6 * valueAt(secondary, 0)!);
    const path = roundPaths(turn, 'force', 'metric').find(({ key }) => key === 'secondary-force')!;
    for (const { across } of path.points) expect(Math.abs(across)).toBeLessThan(1e-9 * path.most);
  });

  it('of a right-angled vee of eight balanced by half nothing of first order is left', () => {
    const turn = shakingTurn(vee)!;
    const [couple] = roundPaths(turn, 'torque', 'metric');
    const alone = shakingTurn(makeupOf(vee.engine, undefined, [], new Map([['balance-factor', 0]])))!;
    const [without] = roundPaths(alone, 'torque', 'metric');
    expect(couple?.key).toBe('primary-couple');
    // The bank offset leaves a couple that no counterweight of the crank can take: a small part of the whole.
    expect(couple!.most).toBeLessThan(0.2 * without!.most);
    expect(shakingPlot(turn, 'torque', 'inch')?.left.unit).toBe('lbf·ft');
  });
});
