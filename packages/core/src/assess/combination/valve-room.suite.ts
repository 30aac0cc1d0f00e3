/** For tests: an invented engine whose valve room can be worked out. */
import { degrees, kilograms, mm, rpm, squareMillimetres } from '../../quantity/index.js';
import { camEngine } from './degreeing.suite.js';
import type { Makeup } from './model.js';
import { makeupWith } from './rows.suite.js';

export const ROOM_FIGURES: Readonly<Record<string, number>> = {
  stroke: mm(88),
  'rod-length': mm(145),
  'compression-height': mm(32),
  'gasket-thickness': mm(1),
  'deck-clearance': mm(0.2),
  crown: 0,
  'valve-angle': degrees(20),
  'valve-drop': mm(5),
  'lobe-duration@intake': degrees(266),
  'lobe-duration@exhaust': degrees(266),
  'valve-lash': 0,
};
export const HOT_FIGURES: Readonly<Record<string, number>> = {
  'piston-mass': kilograms(0.4),
  'pin-mass': kilograms(0.1),
  'ring-mass': kilograms(0.03),
  'rod-small-end-mass': kilograms(0.15),
  'rod-section': squareMillimetres(200),
  'highest-speed': rpm(6500),
};
export const roomMakeup = (more: Readonly<Record<string, number | undefined>> = {}): Makeup =>
  makeupWith(camEngine(), { ...ROOM_FIGURES, ...more });
