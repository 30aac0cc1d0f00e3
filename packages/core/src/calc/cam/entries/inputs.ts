/** Inputs that several entries of this subject share. */
import { degrees } from '../../../quantity/index.js';

const event = { kind: 'angle', unit: 'deg', range: { from: degrees(-180), to: degrees(180) } } as const;

export const events = {
  intakeOpens: { ...event, symbol: 'IO', meaning: 'intake opens before top dead centre (negative: after)' },
  intakeCloses: { ...event, symbol: 'IC', meaning: 'intake closes after bottom dead centre (negative: before)' },
  exhaustOpens: { ...event, symbol: 'EO', meaning: 'exhaust opens before bottom dead centre (negative: after)' },
  exhaustCloses: { ...event, symbol: 'EC', meaning: 'exhaust closes after top dead centre (negative: before)' },
} as const;

export const duration = { kind: 'angle', unit: 'deg', range: { above: 0, below: degrees(720) } } as const;

const shownEvent = { kind: 'angle', unit: 'deg', places: 2 } as const;
export const eventOutputs = {
  intakeOpens: { ...shownEvent, symbol: 'IO', meaning: 'intake opens before top dead centre (negative: after)' },
  intakeCloses: { ...shownEvent, symbol: 'IC', meaning: 'intake closes after bottom dead centre (negative: before)' },
  exhaustOpens: { ...shownEvent, symbol: 'EO', meaning: 'exhaust opens before bottom dead centre (negative: after)' },
  exhaustCloses: { ...shownEvent, symbol: 'EC', meaning: 'exhaust closes after top dead centre (negative: before)' },
  inWords: { kind: 'text', symbol: 'events', meaning: 'the same in words, with negative events turned round' },
} as const;
