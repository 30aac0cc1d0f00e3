/** The name of a slot for a person. */
import type { Engine } from '../engine/index.js';

/** "cylinder bore 3, top thrust" of `cylinder-bore/3/top-thrust`. */
export function slotName(_: Engine, slot: string): string {
  const [feature = '', place = '', station = ''] = slot.split('/').map((part) => part.replaceAll('-', ' '));
  return `${feature} ${place}, ${station}`;
}
