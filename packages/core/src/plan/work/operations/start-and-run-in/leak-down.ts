import { CONSUMABLES } from '../../consumables.js';
import { HAZARDS } from '../../hazards.js';
import type { Operation } from '../../model.js';
import { felt, value } from '../act.js';

/** O37: compression and leakage of the fresh engine. */
export const leakDown: Operation = {
  id: 'leak-down',
  key: 'O37',
  title: 'Take compression and leakage as the base for later years',
  phase: 'start-and-run-in',
  chain: 'free',
  needs: ['re-check'],
  consumables: [CONSUMABLES.sparkPlug],
  tools: ['compression gauge', 'leak-down tester', 'warm engine'],
  cautions: [HAZARDS.air, HAZARDS.hot],
  mistakes: [{ wrong: 'piston not right at dead centre', cost: 'the crank kicks round' }],
  acts: [
    value(
      'pressure',
      'compression-read',
      4,
      'All plugs out, throttle open: crank it as the sheet says.',
      'Pressure, and how many strokes',
      { per: 'cylinder' },
    ),
    value(
      'ratio',
      'leakage-read',
      6,
      'At firing dead centre, crank held: read the loss and listen.',
      'Loss, and where it is heard',
      { per: 'cylinder' },
    ),
    felt(
      'cylinders-compared',
      10,
      'Hold the cylinders against each other and against the sheet’s rule.',
      'Lowest of highest; neighbours that are low; what wet changed',
      { position: 'join' },
    ),
  ],
};
