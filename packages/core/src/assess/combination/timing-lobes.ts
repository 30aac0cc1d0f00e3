/** The lobe of a card as a curve, and where it stands. */
import { type CardDuration, lobeFromCard, type PolynomialLobe } from '../../calc/cam/index.js';
import type { ValveKind } from '../../engine/index.js';
import type { Angle, Length } from '../../quantity/index.js';
import type { Look } from './look.js';
import { figure } from './makeup.js';

export interface CardLobe {
  /** Lift at the lobe over crank angle. */
  readonly lobe: PolynomialLobe;
  /** Which durations of the card it meets. */
  readonly meets: 'both durations' | 'one duration' | 'duration and stated fullness';
  /** Crank angle of its nose after the top dead centre of overlap: before it negative. */
  readonly nose: number;
}
/** Exponents p, p + 2, p + 4 of the modelled lobe. */
const STEP = 2;
/** Where two durations find it, the first exponent given to the search counts for nothing. */
const FIRST = 6;

/** Crank angle of a centreline after the top dead centre of overlap: an exhaust lobe stands before it. */
export const signedCentreline = (kind: ValveKind, centreline: number): number =>
  kind === 'intake' ? centreline : -centreline;

/** The lobe of a kind of valve; undefined where lift, duration or centreline are lacking, which are then noted. */
export function cardLobe(look: Look, kind: ValveKind, lacking: string): CardLobe | undefined {
  const peak = look.need('lobe-lift', lacking);
  const centreline = look.need('centreline-wanted', lacking);
  const shape = peak === undefined ? undefined : shapeOf(look, kind, peak as Length, lacking);
  if (shape === undefined || centreline === undefined) return undefined;
  return { ...shape, nose: signedCentreline(kind, centreline) - look.planned('cam-advance') };
}

function shapeOf(look: Look, kind: ValveKind, peak: Length, lacking: string): Omit<CardLobe, 'nose'> | undefined {
  const seat = look.read('lobe-duration');
  const atLift = look.read('duration-at-lift');
  const lift = atLift === undefined ? undefined : look.read('checking-lift');
  const ends: readonly CardDuration[] = [
    ...(seat === undefined ? [] : [{ lift: 0 as Length, duration: seat as Angle }]),
    ...(atLift === undefined || lift === undefined ? [] : [{ lift: lift as Length, duration: atLift as Angle }]),
  ];
  const [only, second] = ends;
  if (only === undefined) {
    look.lack('lobe-duration', lacking);
    return undefined;
  }
  const stated = figure(look.makeup, 'lobe-fullness', kind)?.origin !== 'assumed';
  const both = second === undefined || stated ? undefined : fitted(peak, ends, FIRST);
  if (both !== undefined) return { lobe: both, meets: 'both durations' };
  const first = look.need('lobe-fullness', lacking);
  const lobe = first === undefined ? undefined : fitted(peak, [only], first);
  return lobe && { lobe, meets: stated ? 'duration and stated fullness' : 'one duration' };
}

/** Lobes of the cards that were last asked for: a slider that moves the cam asks for the same ones again and again. */
const KEPT = 400;
const kept = new Map<string, PolynomialLobe | undefined>();

function fitted(peak: Length, card: readonly CardDuration[], first: number): PolynomialLobe | undefined {
  const key = JSON.stringify([peak, card, first]);
  if (!kept.has(key)) {
    if (kept.size >= KEPT) kept.clear();
    const found = lobeFromCard(peak, card, first, STEP);
    kept.set(key, found.ok ? found.value.lobe : undefined);
  }
  return kept.get(key);
}
