/** The chamber's area at the head face, from whichever of three things was measured. */
import { type Area, done, type Outcome } from '../../../quantity/index.js';
import { type Caution, type Conflict, conflict, type Values } from '../../catalogue/index.js';
import { areaOfTrial, circleOfPerimeter } from '../milling.js';
import { room, size, surface } from './inputs.js';

export const areaInputs = {
  perimeter: {
    ...size('P', 'length of the chamber’s edge on the head face, taken as a circle; or give area, or trial cut'),
    optional: true,
  },
  area: { ...surface('A', 'area of the chamber at the head face, by tracing'), optional: true },
  trialCut: { ...size('c1', 'a cut that was made'), optional: true },
  trialReduction: { ...room('ΔV1', 'by how much that cut made the chamber smaller'), optional: true },
} as const;

export interface ChamberArea {
  readonly area: Area;
  readonly cautions: readonly Caution[];
}
const CIRCLE = {
  code: 'circle-of-perimeter',
  text: 'a circle encloses the most for its edge: for any other chamber the true cut is larger',
};

/** Area from exactly one of the three ways. */
export function chamberArea(v: Values<typeof areaInputs>): Outcome<ChamberArea, Conflict> {
  const trial = v.trialCut !== undefined || v.trialReduction !== undefined;
  const ways = [v.perimeter !== undefined, v.area !== undefined, trial].filter((one) => one).length;
  if (ways !== 1) {
    return conflict(Object.keys(areaInputs), 'exactly one is needed: perimeter, area, or trialCut with trialReduction');
  }
  if (v.perimeter !== undefined) return done({ area: circleOfPerimeter(v.perimeter), cautions: [CIRCLE] });
  if (v.area !== undefined) return done({ area: v.area, cautions: [] });
  if (v.trialCut === undefined || v.trialReduction === undefined) {
    return conflict(['trialCut', 'trialReduction'], 'a trial needs both the cut and what it took away');
  }
  return done({ area: areaOfTrial(v.trialReduction, v.trialCut), cautions: [] });
}
