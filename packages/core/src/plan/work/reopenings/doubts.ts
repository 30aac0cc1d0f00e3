import { type ReopeningRule, rule } from './rule.js';

/** Nothing was changed, but it cannot be relied on. */
export const DOUBTS: readonly ReopeningRule[] = [
  rule(
    'dead-centre-doubted',
    'engine',
    'Wheel or pointer slipped',
    'every angle counts from there',
    'dead-centre-found',
  ),
  rule(
    'valve-doubted',
    'valve',
    'The setting of a valve is in doubt',
    'it may be another valve that was set',
    'valve-set',
  ),
  rule(
    'lube-stood-long',
    'engine',
    'It stood for weeks on its assembly lube',
    'paste runs off the lobes, oil drains from what was primed',
    'follower-in',
    'primed',
  ),
];
