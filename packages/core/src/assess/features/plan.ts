import type { Engine } from '../../engine/index.js';
import type { Feature, FeatureKind, InspectionPlan, Place } from '../model.js';
import type { Anatomy } from './anatomy.js';
import { anatomyOf } from './anatomy-of.js';
import { expectedOf } from './expected/expected-of.js';
import type { FeatureRule } from './rule.js';
import { FEATURE_RULES } from './rules.js';

/**
 * Everything that this engine has to be measured, in the order in which a person walks round it: first what vanishes when it comes apart,
 * then block, crankshaft, rods, pistons, rings, camshaft, followers, heads, valves and springs. Which features there are follows from
 * the sheet: the layout, the valve gear, the liners, and every limit that names one. Each place carries the
 * size that is to be expected there and why. What the sheet leaves open stands in `assumptions` and `missing`.
 */
export function inspectionPlan(engine: Engine): InspectionPlan {
  const known = MADE.get(engine);
  if (known !== undefined) return known;
  const plan = makePlan(engine);
  MADE.set(engine, plan);
  return plan;
}

/** An engine does not change; its plan is made once, since every entry asks for it again. */
const MADE = new WeakMap<Engine, InspectionPlan>();

function makePlan(engine: Engine): InspectionPlan {
  const anatomy = anatomyOf(engine);
  const features = FEATURE_RULES.filter((rule) => rule.has(anatomy) || anatomy.asked.has(rule.kind.id))
    .map((rule) => featureIn(anatomy, rule))
    .filter(({ places }) => places.length > 0);
  return { features, missing: anatomy.missing, assumptions: anatomy.assumptions };
}

function featureIn(anatomy: Anatomy, rule: FeatureRule): Feature {
  const kind: FeatureKind = { ...rule.kind, ...rule.fitted?.(anatomy) };
  return { kind, places: rule.places(anatomy).map((place) => withExpected(anatomy, kind, place)) };
}

function withExpected(anatomy: Anatomy, kind: FeatureKind, place: Place): Place {
  const expected = expectedOf(anatomy, kind, place);
  return expected === undefined ? place : { ...place, expected };
}
