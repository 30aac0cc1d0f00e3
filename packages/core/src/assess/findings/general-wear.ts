/**
 * A general rule of wear for what no maker's limit decides. It is advice, never a limit: the verdict does not rest on it.
 * Source: bibliography `general-wear` (trade map O07 [R65]).
 */
import type { Engine, Window } from '../../engine/index.js';
import { inch } from '../../quantity/index.js';
import type { InspectionPlan, Place } from '../model.js';
import type { PlannedSize } from '../sizes/index.js';
import type { LimitWindow } from './limit-windows.js';

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
    perDiameter('rod-bearing.clearance', 0.0005, 'new', 'big-end-bore'),
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

/** The general rule on one engine. */
export class GeneralWear {
  readonly #engine: Engine;
  readonly #diameters = new Map<string, number>();

  constructor(engine: Engine, plan: InspectionPlan) {
    this.#engine = engine;
    for (const { kind, places } of plan.features)
      for (const { id, expected } of places)
        if (expected !== undefined) this.#diameters.set(`${kind.id}/${id}`, expected.nominal);
  }

  /** What the rule says of a size; undefined where it has none, or where the size when new is not known. */
  of({ property, place, sense }: PlannedSize, value: number, windows: readonly LimitWindow[]): Advice | undefined {
    const rule = RULES.get(property);
    if (rule === undefined) return undefined;
    const fresh = windows.find(({ against }) => against === 'new')?.window;
    const shrinks = sense === 'shaft';
    const start = rule.from === 'nothing' ? 0 : ((shrinks ? fresh?.low : fresh?.high) ?? place.expected?.nominal);
    const allowed = this.#allowed(rule, place, fresh);
    if (start === undefined || allowed === undefined) return undefined;
    const worn = shrinks ? start - value : value - start;
    return { words: `${worn <= allowed ? 'within' : 'beyond'} a ${NAME}, as advice`, source: SOURCE };
  }

  #allowed({ allowed, diameterOf }: WearRule, place: Place, fresh: Window<number> | undefined): number | undefined {
    if ('amount' in allowed) return allowed.amount;
    if ('timesNew' in allowed) return fresh?.high === undefined ? undefined : allowed.timesNew * fresh.high;
    const own = diameterOf === undefined ? place.expected?.nominal : this.#diameters.get(`${diameterOf}/${place.id}`);
    const length = allowed.of === 'stroke' ? this.#engine.crankTrain.stroke?.value : own;
    return length === undefined ? undefined : allowed.share * length;
  }
}
