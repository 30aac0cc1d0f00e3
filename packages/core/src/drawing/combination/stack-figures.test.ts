import { describe, expect, it } from 'vitest';
import { shapeBox } from '../extent.js';
import type { Shape } from '../figure.js';
import { type StackedPart, sharesFigure, stackFigure, turningForce } from './index.js';

const part = (name: string, volume?: number): StackedPart => ({
  part: name,
  name,
  words: volume === undefined ? 'not known' : `${volume} cm3`,
  ...(volume !== undefined && { volume }),
});
const bandOf = (shapes: readonly Shape[], name: string) => {
  const band = shapes.find((one) => one.kind === 'polyline' && one.closed && one.part === name);
  if (band === undefined) throw new Error(`no band ${name}`);
  const { top, bottom } = shapeBox(band);
  return { top, bottom, height: bottom - top, role: band.kind === 'polyline' ? band.role : undefined };
};

describe('the stack over a piston', () => {
  it('draws each part as high as its share, the head above', () => {
    const { shapes } = stackFigure({
      title: 't',
      whole: '',
      parts: [part('chamber', 60), part('gasket', 20), part('deck', 20)],
    });
    const [chamber, gasket, deck] = ['chamber', 'gasket', 'deck'].map((name) => bandOf(shapes, name));
    expect(chamber!.height / gasket!.height).toBeCloseTo(3, 9);
    expect(gasket!.top).toBeCloseTo(chamber!.bottom, 9);
    expect(deck!.top).toBeCloseTo(gasket!.bottom, 9);
    expect(bandOf(shapes, 'head').bottom).toBeCloseTo(chamber!.top, 9);
  });
  it('lets a dome rise from below into the room, with a broken edge', () => {
    const { shapes, description } = stackFigure({
      title: 't',
      whole: '',
      parts: [part('chamber', 80), part('other', -20)],
    });
    const [chamber, dome] = [bandOf(shapes, 'chamber'), bandOf(shapes, 'other')];
    expect(dome.bottom).toBeCloseTo(chamber.bottom, 9);
    expect(dome.height / chamber.height).toBeCloseTo(0.25, 9);
    expect(dome.role).toBe('hidden');
    expect(description).toContain('other: -20 cm3, fills room.');
  });
  it('keeps the place of a part that is not known, without a band', () => {
    const { shapes, description } = stackFigure({
      title: 't',
      whole: 'the whole is not known',
      parts: [part('chamber')],
    });
    expect(shapes.some((one) => one.kind === 'polyline' && one.part === 'chamber')).toBe(false);
    expect(shapes.filter((one) => one.kind === 'label' && one.part === 'chamber').map(({ state }) => state)).toEqual([
      'missing',
      'missing',
    ]);
    expect(description).toContain('chamber: not known. the whole is not known.');
  });
});

describe('shares of a bobweight', () => {
  it('are bars as long as their shares', () => {
    const parts = [0.5, 0.25].map((share, at) => ({ part: `p${at}`, name: `p${at}`, share, words: '' }));
    const { shapes } = sharesFigure({ title: 't', whole: 'w', parts });
    const wide = (name: string) => {
      const box = shapeBox(shapes.find((one) => one.kind === 'polyline' && one.part === name)!);
      return box.right - box.left;
    };
    expect(wide('p0') / wide('p1')).toBeCloseTo(2, 9);
  });
});

describe('a shaking force in the round', () => {
  const path = (key: string, most: number) => ({
    key,
    name: key,
    unit: 'N',
    most,
    points: [0, 90, 180, 270].map((angle) => ({
      angle,
      across: most * Math.sin((angle * Math.PI) / 180),
      up: most * Math.cos((angle * Math.PI) / 180),
    })),
  });
  it('puts up on the page what is up in the engine, and says what is balanced', () => {
    const { shapes, description } = turningForce({ title: 't', paths: [path('primary', 200), path('secondary', 0)] });
    const tip = shapes.find((one) => one.kind === 'polyline' && one.part === 'primary');
    expect(tip?.kind === 'polyline' && tip.points[0]!.y).toBeLessThan(0);
    expect(shapes.some((one) => one.kind === 'polyline' && one.part === 'secondary')).toBe(false);
    expect(description).toBe('primary: 200 N at most. secondary: balanced.');
  });
  it('of an engine that is balanced by its layout draws no path', () => {
    const { shapes, description } = turningForce({ title: 't', paths: [path('primary', 0)] });
    expect(shapes.some(({ part: own }) => own === 'primary')).toBe(false);
    expect(description).toContain('balanced by the layout');
  });
});
