/** Numbers of one degreed lobe, held against its card. */
import { USUAL_CHECKING_LIFT } from '../../calc/cam/index.js';
import { conformance } from '../../calc/metrology/index.js';
import { valveKey } from '../../engine/index.js';
import { formatQuantity, inch } from '../../quantity/index.js';
import { judged } from '../decisions/judged.js';
import { type FittedLobe, fitAt, LIFT_DOUBT } from './degreeing-lobe.js';
import type { LobeDegreed, PlacedReading } from './degreeing-model.js';
import type { Look } from './look.js';
import type { AnsweredFigure } from './model.js';
import { signedCentreline } from './timing-lobes.js';
import { WHEEL_DOUBT } from './true-dead-centre.js';

/** How near to the card builders bring a cam. */
export const CENTRELINE_AIM = Math.PI / 180;
const AIM_FROM = 'one degree either way of the card, builders’ aim: common practice, no source';
/** Lifts at which cams are compared, besides that of the card. */
const COMPARED = [USUAL_CHECKING_LIFT, inch(0.2)];
const SAME_LIFT = 1e-6;

/** What the centreline of a lobe should be, as crank angle after its own top of overlap; undefined where nobody says. */
export function wantedMiddle(look: Look, kind: LobeDegreed['lobe']['kind']): number | undefined {
  const wanted = look.read('centreline-wanted');
  return wanted === undefined ? undefined : signedCentreline(kind, wanted) - look.planned('cam-advance');
}

/** A value against its aim; without a doubt no verdict rests on it. */
export function againstAim(value: number, u: number | undefined, aim: number, from: string): Partial<AnsweredFigure> {
  const limit = { low: -aim, high: aim };
  return {
    limit: { ...limit, from },
    verdict: judged({ value, u }, limit),
    ...(u !== undefined && { inside: conformance(value, u, limit).inside }),
  };
}

export function degreedFigures(
  look: Look,
  degreed: LobeDegreed,
  readings: readonly PlacedReading[],
  fitted: FittedLobe | undefined,
): readonly AnsweredFigure[] {
  const { lobe, middle } = degreed;
  const of = { valve: valveKey(lobe), kind: lobe.kind, cylinder: lobe.cylinder } as const;
  if (middle === undefined) return [];
  const { value, u } = middle;
  const known = u === undefined ? {} : { u };
  const wanted = wantedMiddle(look, lobe.kind);
  const later = wanted === undefined ? undefined : value - wanted;
  const side = lobe.kind === 'intake' ? 'after' : 'before';
  return [
    {
      key: 'centreline',
      name: `centreline, ${side} top`,
      quantity: 'angle',
      value: signedCentreline(lobe.kind, value),
      ...known,
      ...of,
    },
    ...(later === undefined
      ? []
      : [
          {
            key: 'later-than-card',
            name: 'later than wanted (earlier negative)',
            quantity: 'angle',
            value: later,
            ...known,
            ...of,
            ...againstAim(later, u, CENTRELINE_AIM, AIM_FROM),
          } as const,
        ]),
    ...(fitted === undefined ? [] : [...durations(look, readings, fitted, of), ...peak(look, fitted, of)]),
  ];
}

type Of = Pick<AnsweredFigure, 'valve' | 'kind' | 'cylinder'>;

/** Durations at the card's lift and at those at which cams are compared, as far as the readings go down. */
function durations(
  look: Look,
  readings: readonly PlacedReading[],
  { options }: FittedLobe,
  of: Of,
): readonly AnsweredFigure[] {
  const ofCard = look.read('checking-lift');
  const others = COMPARED.filter((lift) => ofCard === undefined || Math.abs(lift - ofCard) > SAME_LIFT);
  const lifts = [...(ofCard === undefined ? [] : [ofCard]), ...others];
  const printed = look.read('duration-at-lift');
  return lifts.flatMap((lift) => {
    const found = fitAt(readings, lift, options.flanks);
    if (found === undefined) return [];
    const { duration, durationUncertainty } = found.fit;
    // Both ends are read: each moves with the wheel.
    const u = Math.max(durationUncertainty ?? 0, (WHEEL_DOUBT * Math.SQRT2) / Math.sqrt(found.used.length / 2));
    const words = formatQuantity('length', lift, 'mm', 2);
    const own: AnsweredFigure = {
      key: `duration-at-${words.replace(' ', '')}`,
      name: `duration at ${words} of lobe lift`,
      quantity: 'angle',
      value: duration,
      u,
      ...of,
    };
    if (lift !== ofCard || printed === undefined) return [own];
    const longer: AnsweredFigure = {
      ...own,
      key: 'longer-than-card',
      name: 'longer than the card',
      value: duration - printed,
    };
    return [own, longer];
  });
}

function peak(look: Look, { fit }: FittedLobe, of: Of): readonly AnsweredFigure[] {
  const scatter = fit.doubtAt(fit.peakAngle);
  const u = scatter === undefined ? undefined : Math.max(scatter, LIFT_DOUBT);
  const own: AnsweredFigure = {
    key: 'peak-lift',
    name: 'highest lobe lift',
    quantity: 'length',
    value: fit.peakLift,
    ...(u !== undefined && { u }),
    ...of,
  };
  const printed = look.read('lobe-lift');
  if (printed === undefined) return [own];
  return [own, { ...own, key: 'higher-than-card', name: 'higher than the card', value: fit.peakLift - printed }];
}
