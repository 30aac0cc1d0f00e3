/** How far a slider goes to either side of a figure, and in which steps: what parts on a bench differ by (common practice, no source). */
import type { FigureKindOf } from '../../engine/index.js';
import { cubicCentimetres, degrees, mm, type QuantityKind } from '../../quantity/index.js';
import type { ShownIn } from '../measure-views.js';
import { systemOf } from './shown.js';

type Ends = readonly [low: number, high: number];

/** From nothing upward. */
const UP_TO: Readonly<Record<string, number>> = {
  'head-cut': mm(1.5),
  'deck-cut': mm(1),
  'spring-shim': mm(3),
  'valve-lash': mm(1),
  'balance-factor': 1,
};
/** To either side. */
const ASIDE: Readonly<Record<string, number>> = {
  bore: mm(1.5),
  stroke: mm(6),
  'rod-length': mm(10),
  'compression-height': mm(2),
  'deck-height': mm(1),
  'deck-clearance': mm(1.5),
  'gasket-thickness': mm(1),
  'spring-installed-height': mm(4),
  'cam-advance': degrees(12),
  'intake-closes': degrees(20),
  'rocker-ratio': 0.25,
  'lobe-fullness': 3,
};
const BY_QUANTITY: Partial<Readonly<Record<QuantityKind, number>>> = {
  length: mm(3),
  volume: cubicCentimetres(15),
  angle: degrees(15),
};
/** As a share of the figure. */
const SHARE: Partial<Readonly<Record<QuantityKind, number>>> = {
  area: 0.2,
  force: 0.4,
  stiffness: 0.4,
  mass: 0.4,
  ratio: 0.2,
  'angular-speed': 0.5,
};

/** Ends of a slider about a figure; undefined for what nobody changes by hand. Values that the figure cannot have are left out. */
export function sliderEnds({ key, quantity, sign }: FigureKindOf, base: number): Ends | undefined {
  const most = UP_TO[key];
  if (most !== undefined) return [0, Math.max(most, 2 * base)];
  const share = SHARE[quantity];
  const aside = ASIDE[key] ?? BY_QUANTITY[quantity] ?? (share === undefined ? undefined : share * Math.abs(base));
  if (aside === undefined || aside === 0) return undefined;
  const low = base - aside;
  // A part of no size at all is no part: a tenth of it is the least that is tried.
  const least = sign === 'positive' ? Math.max(low, base / 10) : sign === 'not-negative' ? Math.max(low, 0) : low;
  return [least, base + aside];
}

const STEPS: Readonly<Record<ReturnType<typeof systemOf>, Partial<Readonly<Record<QuantityKind, number>>>>> = {
  metric: { length: 0.01, area: 10, force: 5, stiffness: 0.1 },
  inch: { length: 0.0005, area: 0.01, force: 1, stiffness: 1 },
};
const ALIKE: Partial<Readonly<Record<QuantityKind, number>>> = {
  volume: 0.1,
  angle: 0.5,
  ratio: 0.01,
  mass: 1,
  'angular-speed': 50,
};

/** One step of a slider in the unit in which the figure is shown. */
export const sliderStep = (quantity: QuantityKind, shownIn: ShownIn): number =>
  ALIKE[quantity] ?? STEPS[systemOf(shownIn)][quantity] ?? 0.01;
