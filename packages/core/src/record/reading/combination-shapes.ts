/** The shape of what is recorded about the combination, version 1. */
import type { CombinationData, StatedReading } from '../combination-data.js';
import { count, filledText, finite, type Guard, object, oneOf, optional } from './guards.js';
import { NAME, name, reading, reason, valve } from './pieces.js';

const stated: Guard<StatedReading> = object<StatedReading>({
  text: filledText(NAME),
  value: finite,
  unit: oneOf('m', 'm2', 'm3', 'rad', 'rad/s', 'N', 'N/m', 'kg', 'kg/m3', 'Pa', 'K', '1/K', '1'),
});

export const COMBINATION_SHAPES: { readonly [K in keyof CombinationData]: Guard<CombinationData[K]> } = {
  'dead-centre-read': object<CombinationData['dead-centre-read']>({ cylinder: count, first: reading, second: reading }),
  'cam-read': object<CombinationData['cam-read']>({
    lobe: valve,
    wheel: reading,
    lift: reading,
    at: oneOf('lifter', 'valve'),
    sense: optional(oneOf('opening', 'closing')),
  }),
  'pushrod-tried': object<CombinationData['pushrod-tried']>({
    valve,
    length: reading,
    width: reading,
    offset: optional(reading),
  }),
  'valve-room-read': object<CombinationData['valve-room-read']>({
    valve,
    room: reading,
    method: oneOf('clay', 'drop'),
    wheel: optional(reading),
  }),
  'figure-stated': object<CombinationData['figure-stated']>({ key: name, reading: stated, why: reason }),
};
