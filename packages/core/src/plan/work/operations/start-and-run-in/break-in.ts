import { HAZARDS } from '../../hazards.js';
import type { Operation } from '../../model.js';
import { felt, photo, value } from '../act.js';

/** O35: run-in of cam and rings. */
export const breakIn: Operation = {
  id: 'break-in',
  key: 'O35',
  title: 'Run it in',
  phase: 'start-and-run-in',
  chain: 'in-turn',
  needs: ['first-start'],
  consumables: [],
  tools: ['clock', 'gauges for oil, coolant and speed', 'filter cutter', 'magnet'],
  cautions: [HAZARDS.exhaustGas, HAZARDS.hot],
  mistakes: [
    { wrong: 'idled, or stopped often, on a new flat cam', cost: 'a lobe is wiped' },
    { wrong: 'both springs of a pair in the run-in', cost: 'more load than a new lobe takes' },
  ],
  acts: [
    felt(
      'followers-turn-running',
      3,
      'Watch pushrods or followers turn while it runs.',
      'Which one stands still, or all turn',
      { when: ['flat-followers', 'pushrod'] },
    ),
    value(
      'time',
      'run-in-step',
      25,
      'Run it as this line says; read oil, coolant and speed on the way.',
      'Time, speed, oil pressure, temperatures',
      { per: 'run-in' },
    ),
    felt('run-in-leaks', 5, 'Walk round it warm.', 'Where it leaks, or dry'),
    photo(
      'filter-cut',
      20,
      'Change oil and filter; cut the filter open; draw a magnet through the oil.',
      'Photo of the pleats, and what the magnet held',
    ),
  ],
};
