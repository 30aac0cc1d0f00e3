/** A wrong import on purpose: scripts/arrows.mjs fails unless the rules catch it. */
export { cylinders } from '../engine/cylinders.js';
