import type { Calculation } from '../../catalogue/index.js';
import { advance } from './advance.js';
import { cardCheck } from './card-check.js';
import { centreShift } from './centre-shift.js';
import { centreline } from './centreline.js';
import { centrelineFromLobe } from './centreline-from-lobe.js';
import { centrelineFromPairs } from './centreline-from-pairs.js';
import { eventsFromLobes } from './events-from-lobes.js';
import { eventsFromTable } from './events-from-table.js';
import { indicatorError } from './indicator-error.js';
import { liftFromCard } from './lift-from-card.js';
import { liftSpline } from './lift-spline.js';
import { lobesFromEvents } from './lobes-from-events.js';
import { offsetChoice } from './offset-choice.js';
import { offsetPart } from './offset-part.js';
import { polynomialLobe } from './polynomial-lobe.js';
import { riseFunction } from './rise-function.js';
import { seatWindows } from './seat-windows.js';

/** One file an entry, one line here. */
export const camCalculations: readonly Calculation[] = [
  lobesFromEvents,
  eventsFromLobes,
  advance,
  centreline,
  centrelineFromPairs,
  centrelineFromLobe,
  eventsFromTable,
  liftSpline,
  liftFromCard,
  polynomialLobe,
  riseFunction,
  indicatorError,
  offsetPart,
  offsetChoice,
  centreShift,
  cardCheck,
  seatWindows,
];
