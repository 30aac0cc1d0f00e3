import type { Engine } from '../engine/index.js';
import { caseOutline } from './case-outline.js';
import type { Point, Shape } from './figure.js';
import { CENTRE, caseRadius, inBank, type View } from './front-frame.js';
import { at, polar } from './geometry.js';
import { centreCross, circle, line, polygon, roundedRectangle } from './shapes.js';
import type { DrawnSizes } from './sizes.js';

export function engineCase(view: View): readonly Shape[] {
  const { sizes, bankAngles } = view;
  const wall = sizes.bore * 0.11;
  const inner = caseRadius(sizes);
  return [
    ...oilPan(view),
    ...bankAngles.flatMap((bank) => headOutline(view, bank)),
    ...caseOutline(bankAngles, sizes.bore / 2 + wall, inner + wall, sizes.deck).map((points) =>
      polygon(points, 'visible', { fill: 'metal', part: 'block' }),
    ),
    ...caseOutline(bankAngles, sizes.bore / 2, inner, sizes.deck).map((points) =>
      polygon(points, 'visible', { fill: 'void', part: 'block' }),
    ),
    ...bankAngles.flatMap((bank) => [
      line(inBank(bank, sizes.deck, -sizes.bore * 0.68), inBank(bank, sizes.deck, sizes.bore * 0.68), 'visible', {
        part: 'deck',
      }),
      line(inBank(bank, 0, 0), inBank(bank, sizes.deck + sizes.bore * 0.75, 0), 'centre'),
    ]),
  ];
}

/** The pan hangs below the crank whatever the banks do. */
function oilPan({ sizes }: View): readonly Shape[] {
  const half = caseRadius(sizes) * 0.86;
  const bottom = caseRadius(sizes) + sizes.bore * 0.42;
  const points = [at(-half, half * 0.5), at(-half * 0.9, bottom), at(half * 0.9, bottom), at(half, half * 0.5)];
  return [polygon(points, 'visible', { fill: 'metal', part: 'oil pan' })];
}

export function headOutline(view: View, bank: number): readonly Shape[] {
  const { sizes } = view;
  const { bore, deck } = sizes;
  const place = (points: readonly Point[]) => points.map((p) => inBank(bank, deck - p.y, p.x));
  const head = place(roundedRectangle(-bore * 0.66, -bore * 0.62, bore * 1.32, bore * 0.62, bore * 0.05));
  const cover = place(roundedRectangle(-bore * 0.52, -bore * 0.92, bore * 1.04, bore * 0.36, bore * 0.14));
  const chamber = place([
    at(-bore * 0.42, 0),
    at(-bore * 0.1, -bore * 0.17),
    at(bore * 0.1, -bore * 0.17),
    at(bore * 0.42, 0),
  ]);
  return [
    polygon(cover, 'visible', { fill: 'metal', part: 'cover' }),
    polygon(head, 'visible', { fill: 'metal', part: 'head' }),
    polygon(chamber, 'thin', { fill: 'void', part: 'chamber' }),
    ...overheadCams(view, bank),
  ];
}

/** How many cams stand over a bank: the sheet does not say, so two for four or more valves over buckets or fingers. */
export function camsPerHead(engine: Engine): number {
  const gear = engine.valveGear;
  if (gear === undefined || gear.kind === 'pushrod') return 0;
  return gear.kind !== 'overhead-rocker' && gear.intakeValves + gear.exhaustValves >= 4 ? 2 : 1;
}

function overheadCams(view: View, bank: number): readonly Shape[] {
  const { bore, deck } = view.sizes;
  const spread = { 0: [], 1: [0], 2: [-0.27, 0.27] }[camsPerHead(view.engine)] ?? [];
  return spread.flatMap((across) => camEnd(inBank(bank, deck + bore * 0.74, bore * across), bore * 0.13, view));
}

/** The end of a camshaft with its key: the key turns once for two turns of the crank. */
export function camEnd(centre: Point, radius: number, { crank }: View): readonly Shape[] {
  const phase = crank.poses.get(1)?.phase ?? 0;
  return [
    circle(centre, radius, 'visible', { fill: 'void', part: 'cam' }),
    circle(polar(centre, radius * 0.55, (crank.sense * phase) / 2), radius * 0.2, 'thin', {
      fill: 'mark',
      part: 'cam',
    }),
    ...centreCross(centre, radius * 1.3),
  ];
}

export function blockCam(view: View): readonly Shape[] {
  const { sizes, bankAngles, engine } = view;
  if (engine.valveGear?.kind !== 'pushrod') return [];
  return camEnd(blockCamPlace(sizes, bankAngles), sizes.bore * 0.2, view);
}

/** In the vee, below the crank of an opposed engine, beside the cylinders of an inline one: where room is. */
function blockCamPlace(sizes: DrawnSizes, bankAngles: readonly number[]): Point {
  const away = caseRadius(sizes) + sizes.bore * 0.36;
  const [low, high] = [Math.min(...bankAngles), Math.max(...bankAngles)];
  if (bankAngles.length < 2) return inBank(low, sizes.throw + sizes.bore * 0.35, -sizes.bore * 0.86);
  if (high - low > 150) return at(0, away * 0.98);
  const needed = (sizes.bore * 0.61 + sizes.bore * 0.24) / Math.sin((((high - low) / 2) * Math.PI) / 180);
  return polar(CENTRE, Math.min(Math.max(away, needed), sizes.deck), (low + high) / 2);
}
