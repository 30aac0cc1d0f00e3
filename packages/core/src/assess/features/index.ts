export { BETWEEN, type Between } from './between.js';
export { inspectionPlan } from './plan.js';
export { senseOf } from './rule.js';
export { FEATURE_RULES } from './rules.js';
export { featureOf, parseSlot, placeOf, type SlotParts, slotName, slotOf, slotsOf, stationOf } from './slots.js';
