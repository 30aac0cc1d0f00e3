/** What is known of valve springs and their heights, for choosing shims. */
import { bindMargin, rateFromLoads, valveLift } from '../../calc/valvetrain/index.js';
import type { InspectionLimit, Window } from '../../engine/index.js';
import { type Force, type Length, parseQuantity, type Stiffness } from '../../quantity/index.js';
import type { Assessment, Place } from '../model.js';
import { limitAt, sizeAt } from './decision.js';

export const HEIGHT = 'installed-height.height';
export interface SpringSeen {
  readonly place: Place;
  readonly height: number;
  readonly u: number | undefined;
  /** Heights that the sheet prints. */
  readonly window: Window<number> | undefined;
  /** Load and height on the tester, and the rate; absent where a load or its height is not known. */
  readonly tested?: { readonly load: Force; readonly testHeight: Length; readonly rate: Stiffness };
  readonly seatLoad?: Window<number>;
  readonly lift?: number;
  readonly bind?: number;
}

/** Height at which a load was taken: the row says so ("load at 42.0 mm"). */
function testHeight(limit: InspectionLimit | undefined): Length | undefined {
  const words = limit?.what.match(/\bat\s+([\d.,/]+\s*(?:mm|in|inch|"))/)?.[1];
  const read = words === undefined ? undefined : parseQuantity('length', words);
  return read?.ok ? read.value.value : undefined;
}

/** Valve lift of the sheet [m]: lobe lift and rocker ratio, without lash; absent where one is not printed. */
function printedLift({ engine }: Assessment, kind: 'intake' | 'exhaust'): Length | undefined {
  const lobe = engine.cam?.lobeLift?.[kind]?.value;
  const ratio = engine.valveGear?.kind === 'overhead-bucket' ? 1 : engine.valveGear?.ratio?.value;
  if (lobe === undefined || ratio === undefined) return undefined;
  return valveLift(lobe, ratio as Parameters<typeof valveLift>[1], 0 as Length);
}

function testedAt(assessment: Assessment, place: string): SpringSeen['tested'] {
  const limitOf = (property: string) =>
    limitAt(assessment, property, place, 'new')?.limit ?? limitAt(assessment, property, place, 'wear')?.limit;
  const [low, high] = ['spring-load-closed.load', 'spring-load-open.load'].map((property) => ({
    load: sizeAt(assessment, property, place)?.value,
    height: testHeight(limitOf(property)),
  }));
  if (low?.load === undefined || low.height === undefined || high?.load === undefined || high.height === undefined)
    return undefined;
  const fit = rateFromLoads([low.height, high.height], [low.load as Force, high.load as Force]);
  if (fit === undefined || fit.rate <= 0) return undefined;
  return { load: low.load as Force, testHeight: low.height, rate: fit.rate };
}

/** One spring; undefined where its installed height is not measured. */
export function springSeen(assessment: Assessment, place: Place): SpringSeen | undefined {
  const height = sizeAt(assessment, HEIGHT, place.id);
  if (height === undefined) return undefined;
  const tested = testedAt(assessment, place.id);
  const seatLoad = limitAt(assessment, 'spring-load-closed.load', place.id, 'new')?.window;
  const lift = place.valve && printedLift(assessment, place.valve.kind);
  const bind = sizeAt(assessment, 'spring-bind-height.height', place.id)?.value;
  return {
    place,
    height: height.value,
    u: height.u,
    window: limitAt(assessment, HEIGHT, place.id, 'new')?.window,
    ...(tested && { tested }),
    ...(seatLoad && { seatLoad }),
    ...(lift !== undefined && { lift }),
    ...(bind !== undefined && { bind }),
  };
}

/** Room left before the coils touch at full lift [m]; undefined where lift or bind height is not known. */
export const roomToBind = ({ lift, bind }: SpringSeen, height: number): number | undefined =>
  lift === undefined || bind === undefined ? undefined : bindMargin(height as Length, lift as Length, bind as Length);
