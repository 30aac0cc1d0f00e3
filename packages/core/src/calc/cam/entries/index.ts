import type { Calculation } from '../../catalogue/index.js';
import { advance } from './advance.js';
import { centreline } from './centreline.js';
import { eventsFromLobes } from './events-from-lobes.js';
import { lobesFromEvents } from './lobes-from-events.js';
import { seatWindows } from './seat-windows.js';

/** One file an entry, one line here. */
export const camCalculations: readonly Calculation[] = [
  lobesFromEvents,
  eventsFromLobes,
  advance,
  centreline,
  seatWindows,
];
