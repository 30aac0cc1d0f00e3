/**
 * A general rule of wear for what no maker's limit decides. It is advice, never a limit: the verdict does not rest on it.
 * Source: bibliography `general-wear` (trade map O07 [R65]).
 */
import type { Engine, Window } from '../../engine/index.js';
import { inch } from '../../quantity/index.js';
import type { InspectionPlan, Place } from '../model.js';
import type { SizeEntry } from '../sizes/index.js';

interface WearRule {
  readonly property: string;
  /** What it may wear, as a share of a length of the engine, or as an amount [m]. */
  readonly allowed:
    | { readonly share: number; readonly of: 'diameter' | 'stroke' }
    | { readonly amount: number }
    | { readonly timesNew: number };
  /** From the end of the new window, else the nominal size; or from nothing, for a shape. */
  readonly from: 'new' | 'nothing';
  /** Feature whose nominal size is the diameter; the size's own when left out. */
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
export const GENERAL_WEAR_SOURCE = 'general-wear';
const NAME = 'general wear rule of one military manual';

/** What the general rule says of a size; undefined where it has none, or where the size when new is not known. */
export function generalWear(
  engine: Engine,
  plan: InspectionPlan,
  { property, place, sense }: Pick<SizeEntry, 'property' | 'place' | 'sense'>,
  value: number,
  fresh: Window<number> | undefined,
): { readonly words: string; readonly source: string } | undefined {
  const rule = RULES.get(property);
  if (rule === undefined) return undefined;
  const shrinks = sense === 'shaft';
  const start = rule.from === 'nothing' ? 0 : ((shrinks ? fresh?.low : fresh?.high) ?? nominalOf(place));
  const allowed = allowedBy(rule, engine, plan, place, fresh);
  if (start === undefined || allowed === undefined) return undefined;
  const worn = shrinks ? start - value : value - start;
  return { words: `${worn <= allowed ? 'within' : 'beyond'} a ${NAME}, as advice`, source: GENERAL_WEAR_SOURCE };
}

const nominalOf = ({ expected }: Place): number | undefined => expected?.nominal;

function allowedBy(
  { allowed, diameterOf }: WearRule,
  engine: Engine,
  plan: InspectionPlan,
  place: Place,
  fresh: Window<number> | undefined,
): number | undefined {
  if ('amount' in allowed) return allowed.amount;
  if ('timesNew' in allowed) return fresh?.high === undefined ? undefined : allowed.timesNew * fresh.high;
  const length = allowed.of === 'stroke' ? engine.crankTrain.stroke?.value : diameter(plan, place, diameterOf);
  return length === undefined ? undefined : allowed.share * length;
}
/** Nominal diameter: of the place itself, else of the feature that the rule goes by. */
function diameter(plan: InspectionPlan, place: Place, feature: string | undefined): number | undefined {
  if (feature === undefined) return nominalOf(place);
  const of = plan.features.find(({ kind }) => kind.id === feature)?.places;
  return nominalOf(of?.find(({ id }) => id === place.id) ?? of?.[0] ?? place);
}
