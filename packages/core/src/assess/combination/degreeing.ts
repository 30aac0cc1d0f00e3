/** Degreeing: from readings of wheel and indicator in any order to centreline, durations and what the card says, lobe by lobe. */
import { lobeLift, USUAL_CHECKING_LIFT } from '../../calc/cam/index.js';
import type { ValveId } from '../../engine/index.js';
import { sameValve, valveKey } from '../../engine/index.js';
import { type Part, together } from './answering.js';
import { degreedFigures, wantedMiddle } from './degreeing-figures.js';
import { curveOf, type FittedLobe, fitOf, suspectsOf } from './degreeing-lobe.js';
import type { CamReading, DegreeingAnswer, LobeCurve, LobeDegreed } from './degreeing-model.js';
import { nextReadings } from './degreeing-next.js';
import { byEqualLifts, type Paired } from './degreeing-pairs.js';
import { atTheLobe, placed, usualMiddle } from './degreeing-place.js';
import { separations } from './degreeing-separation.js';
import { degreedCautions, degreedWorking } from './degreeing-words.js';
import { Look } from './look.js';
import type { Makeup } from './model.js';
import { cardLobe } from './timing-lobes.js';
import { type DeadCentre, type StopReading, trueDeadCentre, WHEEL_DOUBT, wheelAtTopOf } from './true-dead-centre.js';

export interface DegreeingOptions {
  /** `alike` (default) mirrors one flank on the other; `unlike` lets them differ. */
  readonly flanks?: 'alike' | 'unlike';
}
const SOURCES = ['crank.stop-method', 'cam.centreline-from-pairs', 'cam.centreline-from-lobe', 'cam.lift-from-card'];
const ASSUMED_WHEEL =
  'wheel readings are taken as good to a quarter of a degree either way: common practice, no source';

/**
 * What the readings tell of every lobe that was read, and the separation of the lobes of one cylinder.
 *
 * `readings` and `stops` in any order; repeats count as further readings. Angles count from each lobe's own top dead centre of overlap, found by
 * the stop on one cylinder and the firing order for the others. Without a stop the wheel's own zero counts as the top of cylinder 1: then the doubt of
 * a centreline is not known, and no verdict rests on it.
 */
export function degreeing(
  makeup: Makeup,
  readings: readonly CamReading[],
  stops: readonly StopReading[] = [],
  options: DegreeingOptions = {},
): DegreeingAnswer {
  const deadCentre = trueDeadCentre(stops);
  const each = lobesOf(readings).map((lobe) => {
    const own = readings.filter((one) => sameValve(one.lobe, lobe));
    return oneLobe(makeup, lobe, own, deadCentre, options);
  });
  const lobes = each.flatMap(({ degreed }) => degreed ?? []);
  const top: Part = {
    figures: deadCentre?.figures ?? [],
    computed: [],
    working: deadCentre?.working ?? [],
    cautions: deadCentre?.cautions ?? (readings.length > 0 ? [NO_STOP] : []),
  };
  const answer = together([top, ...each.map(({ part }) => part), separations(makeup, lobes)], SOURCES);
  return {
    ...answer,
    assumed: readings.length > 0 ? [...answer.assumed, ASSUMED_WHEEL] : answer.assumed,
    ...(deadCentre && { deadCentre }),
    lobes,
  };
}
const NO_STOP =
  'no stop readings: the wheel’s own zero is taken as the top of cylinder 1, and how true it is, is not known';

/** Lobes that were read, in the order of the engine's cylinders, intake first. */
function lobesOf(readings: readonly CamReading[]): readonly ValveId[] {
  const byKey = new Map(readings.map(({ lobe }) => [valveKey(lobe), lobe]));
  const rank = ({ cylinder, kind, index }: ValveId) => 100 * cylinder + (kind === 'intake' ? 0 : 10) + index;
  return [...byKey.values()].sort((a, b) => rank(a) - rank(b));
}

interface OneLobe {
  readonly degreed?: LobeDegreed;
  readonly part: Part;
}

function oneLobe(
  makeup: Makeup,
  lobe: ValveId,
  readings: readonly CamReading[],
  deadCentre: DeadCentre | undefined,
  { flanks = 'alike' }: DegreeingOptions,
): OneLobe {
  const look = new Look(makeup, lobe);
  const card = cardLobe(look, lobe.kind, 'difference from the card');
  const wheelAtTop = wheelAtTopOf(makeup, deadCentre ?? { top: 0, cylinder: 1 }, lobe.cylinder);
  if (wheelAtTop === undefined) {
    look.lack('firing-order', `top dead centre of cylinder ${lobe.cylinder} from that of another`);
    return { part: { figures: [], computed: [noted(look)] } };
  }
  const expected = card?.nose ?? usualMiddle(lobe);
  const put = placed(atTheLobe(look, readings), wheelAtTop, expected);
  const wanted = wantedMiddle(look, lobe.kind);
  const checkingLift = look.read('checking-lift') ?? USUAL_CHECKING_LIFT;
  const fitted = fitOf(put, checkingLift, flanks);
  const paired = byEqualLifts(put);
  const middle = middleOf(fitted, paired, deadCentre);
  const suspects = fitted === undefined ? [] : suspectsOf(put, fitted);
  const degreed: LobeDegreed = {
    lobe,
    stage: fitted !== undefined ? 'whole-lobe' : paired !== undefined ? 'equal-lifts' : 'too-few',
    readings: put,
    ...(middle && { middle }),
    ...(wanted !== undefined && { wanted }),
    pairs: paired?.pairs ?? [],
    ...(fitted && { checkedAt: fitted.options.checkingLift }),
    ...(fitted === undefined ? { curve: [], band: [] } : curveOf(fitted)),
    residuals:
      fitted === undefined ? [] : fitted.used.map(({ angle }, at) => [angle / DEGREE, fitted.fit.residuals[at]!]),
    card: card === undefined ? [] : cardCurve(card),
    suspects,
    next: nextReadings(put, fitted, { wheelAtTop, middle: middle?.value ?? expected }),
  };
  return {
    degreed,
    part: {
      figures: degreedFigures(look, degreed, put, fitted),
      computed: [noted(look)],
      working: degreedWorking(makeup, degreed),
      cautions: degreedCautions(makeup, degreed, fitted, checkingLift),
    },
  };
}

const noted = (look: Look) => ({
  values: new Map(),
  used: [...look.used.values()],
  missing: [...look.missing.values()],
});

/**
 * The whole lobe before equal lifts. The readings' own doubt is that of the fit, but never less than that of a wheel read so many times; the dead
 * centre comes on top.
 */
function middleOf(
  fitted: FittedLobe | undefined,
  paired: Paired | undefined,
  zero: DeadCentre | undefined,
): LobeDegreed['middle'] {
  const found =
    fitted !== undefined
      ? { value: fitted.fit.centreline, own: fitted.fit.standardUncertainty ?? 0, count: fitted.used.length }
      : paired && {
          value: paired.middle.centreline,
          own: paired.middle.standardUncertainty ?? 0,
          count: 2 * paired.pairs.length,
        };
  if (found === undefined) return undefined;
  const uOfReadings = Math.max(found.own, WHEEL_DOUBT / Math.sqrt(found.count));
  return { value: found.value, uOfReadings, ...(zero && { u: Math.hypot(uOfReadings, zero.u) }) };
}

const DEGREE = Math.PI / 180;
function cardCurve({ lobe, nose }: NonNullable<ReturnType<typeof cardLobe>>): LobeCurve {
  const lift = lobeLift(lobe);
  const half = Math.ceil(lobe.halfDuration / DEGREE);
  const middle = nose / DEGREE;
  return Array.from({ length: 2 * half + 1 }, (_, at) => [middle + at - half, lift((at - half) * DEGREE)]);
}
