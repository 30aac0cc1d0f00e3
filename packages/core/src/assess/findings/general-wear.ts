/**
 * A general rule of wear for what no maker's limit decides. It is advice, never a limit: the verdict does not rest on it.
 * Source: bibliography `general-wear` (trade map O07 [R65]).
 */
import type { Engine, Window } from '../../engine/index.js';
import { inch } from '../../quantity/index.js';
import { keyOf, type PlannedSize } from '../sizes/index.js';
import type { LimitWindow } from './limit-windows.js';

interface WearRule {
  readonly property: string;
  /** What it may wear, as a share of a length of the engine, or as an amount [m]. */
  readonly allowed:
    | { readonly share: number; readonly of: 'diameter' | 'stroke' }
    | { readonly amount: number }
    | { readonly timesNew: number };
  /** From the size when new, or from nothing, for a shape. */
  readonly from: 'new' | 'nothing';
  /** Feature whose measured diameter counts; the size itself when left out. */
  readonly diameterOf?: string;
}
const perDiameter = (property: string, share: number, from: WearRule['from'], diameterOf?: string): WearRule => ({
  property,
  allowed: { share, of: 'diameter' },
  from,
  ...(diameterOf !== undefined && { diameterOf }),
});

const RULES: ReadonlyMap<string, WearRule> = new Map(
  [
    perDiameter('cylinder-bore.diameter', 0.001, 'new'),
    { property: 'cylinder-bore.taper', allowed: { share: 0.0005, of: 'stroke' }, from: 'nothing' } as const,
    perDiameter('piston-skirt.diameter', 0.0005, 'new'),
    { property: 'piston-pin.diameter', allowed: { amount: inch(0.001) }, from: 'new' } as const,
    perDiameter('pin-bore.diameter', 0.0005, 'new'),
    perDiameter('small-end-bore.diameter', 0.0005, 'new'),
    perDiameter('main-bearing.clearance', 0.0005, 'new', 'main-journal'),
    perDiameter('rod-bearing.clearance', 0.0005, 'new', 'crankpin'),
    perDiameter('main-journal.out-of-round', 0.0004, 'nothing', 'main-journal'),
    perDiameter('crankpin.out-of-round', 0.0004, 'nothing', 'crankpin'),
    { property: 'main-journal.taper', allowed: { timesNew: 2 }, from: 'nothing' } as const,
    { property: 'crankpin.taper', allowed: { timesNew: 2 }, from: 'nothing' } as const,
    { property: 'crank-end-float.float', allowed: { amount: inch(0.005) }, from: 'new' } as const,
    perDiameter('cam-journal.diameter', 0.0005, 'new'),
    { property: 'valve-stem.diameter', allowed: { amount: inch(0.001) }, from: 'new' } as const,
    { property: 'valve-guide.diameter', allowed: { amount: inch(0.0015) }, from: 'new' } as const,
    { property: 'seat-width.width', allowed: { timesNew: 1.15 }, from: 'nothing' } as const,
  ].map((rule): [string, WearRule] => [rule.property, rule]),
);
const SOURCE = 'general-wear';
const NAME = 'general wear rule of one military manual';

export interface Advice {
  readonly words: string;
  /** Key of the bibliography. */
  readonly source: string;
}

/** What is measured, by the key of the size. */
export type SizesByKey = ReadonlyMap<string, { readonly value: number }>;

/** Size when new, toward the end at which wear begins: as printed; of a bore else the nominal one of the sheet. */
function newSize(
  engine: Engine,
  { property, sense }: PlannedSize,
  fresh: Window<number> | undefined,
): number | undefined {
  const printed = sense === 'shaft' ? fresh?.low : fresh?.high;
  return printed ?? (property === 'cylinder-bore.diameter' ? engine.crankTrain.bore?.value : undefined);
}

/** What the general rule says of a size; undefined where it has none, or where it starts from a size when new that is not known. */
export function generalWear(
  engine: Engine,
  planned: PlannedSize,
  value: number,
  windows: readonly LimitWindow[],
  sizes: SizesByKey,
): Advice | undefined {
  const rule = RULES.get(planned.property);
  if (rule === undefined) return undefined;
  const fresh = windows.find(({ against }) => against === 'new')?.window;
  const start = rule.from === 'nothing' ? 0 : newSize(engine, planned, fresh);
  const allowed = allowedBy(rule, engine, planned, value, fresh, sizes);
  if (start === undefined || allowed === undefined) return undefined;
  const worn = planned.sense === 'shaft' ? start - value : value - start;
  return { words: `${worn <= allowed ? 'within' : 'beyond'} a ${NAME}, as advice`, source: SOURCE };
}

function allowedBy(
  { allowed, diameterOf }: WearRule,
  engine: Engine,
  planned: PlannedSize,
  value: number,
  fresh: Window<number> | undefined,
  sizes: SizesByKey,
): number | undefined {
  if ('amount' in allowed) return allowed.amount;
  if ('timesNew' in allowed) return fresh?.high === undefined ? undefined : allowed.timesNew * fresh.high;
  const diameter = diameterOf === undefined ? value : diameterAt(planned, diameterOf, sizes);
  const length = allowed.of === 'stroke' ? engine.crankTrain.stroke?.value : diameter;
  return length === undefined ? undefined : allowed.share * length;
}
/** Diameter of the shaft or hole that a size goes by, as measured at its own place. */
function diameterAt({ ways }: PlannedSize, feature: string, sizes: SizesByKey): number | undefined {
  const figures = ways.flatMap((way) => way.figures);
  const at = figures.find(({ place }) => place.kind.id === feature)?.place.place.id;
  return at === undefined ? undefined : sizes.get(keyOf(`${feature}.diameter`, at))?.value;
}
