/** Tear-down registers: what came from where, which bolt belongs in which hole, photos by what they show. */
import type { Bench } from '../bench.js';
import type { RegistersView } from '../work-views.js';
import { fastenerRows } from './fastener-register.js';
import { partRows } from './part-register.js';
import { photoRows } from './photo-register.js';
import { groundOf } from './work-ground.js';

/** All registers of the engine, whole. */
export function registersView(bench: Bench): RegistersView {
  const ground = groundOf(bench);
  return { parts: partRows(ground), fasteners: fastenerRows(ground), photos: photoRows(ground) };
}
