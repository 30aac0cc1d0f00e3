/** Inputs that the entries of this subject share, and the card made of them. */
import { type Angle, degrees } from '../../../quantity/index.js';
import { DEFAULT_MARGIN } from '../timing.js';
import type { ValveCard } from '../types.js';

const event = (symbol: string, meaning: string) =>
  ({
    kind: 'angle',
    symbol,
    meaning: `${meaning}, seat to seat; negative on the other side of the dead centre`,
    unit: 'deg',
    range: { from: degrees(-180), to: degrees(180) },
  }) as const;

export const camEvents = {
  intakeOpens: event('IO', 'intake opens before top dead centre'),
  intakeCloses: event('IC', 'intake closes after bottom dead centre'),
  exhaustOpens: event('EO', 'exhaust opens before bottom dead centre'),
  exhaustCloses: event('EC', 'exhaust closes after top dead centre'),
} as const;

/** The same events where an engine without a cam card is answered as well. */
export const camEventsIfKnown = {
  intakeOpens: { ...camEvents.intakeOpens, optional: true },
  intakeCloses: { ...camEvents.intakeCloses, optional: true },
  exhaustOpens: { ...camEvents.exhaustOpens, optional: true },
  exhaustCloses: { ...camEvents.exhaustCloses, optional: true },
} as const;

export const margin = {
  kind: 'angle',
  symbol: 'm',
  meaning: 'least crank angle from opening and from closing at which a valve is set',
  unit: 'deg',
  range: { from: degrees(0), below: degrees(360) },
  default: degrees(DEFAULT_MARGIN),
} as const;

type MaybeEvents = { readonly [N in keyof typeof camEvents]: Angle | undefined };

/** A card of all four events, no card when none is given, undefined when only some are. */
export function cardOf(given: MaybeEvents): { readonly cam?: ValveCard } | undefined {
  const { intakeOpens, intakeCloses, exhaustOpens, exhaustCloses } = given;
  const all = [intakeOpens, intakeCloses, exhaustOpens, exhaustCloses];
  if (all.every((one) => one === undefined)) return {};
  if (intakeOpens === undefined || intakeCloses === undefined) return undefined;
  if (exhaustOpens === undefined || exhaustCloses === undefined) return undefined;
  return { cam: { basis: 'seat', events: { intakeOpens, intakeCloses, exhaustOpens, exhaustCloses } } };
}
