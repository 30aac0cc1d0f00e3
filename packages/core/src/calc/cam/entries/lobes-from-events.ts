import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { lobesFromEvents as find } from '../events.js';
import { events } from './inputs.js';

const shown = { kind: 'angle', unit: 'deg', places: 2 } as const;

export const lobesFromEvents = defineCalculation({
  id: 'cam.lobes-from-events',
  subject: 'cam',
  title: 'Durations, centrelines, separation and overlap from events',
  summary: 'Reads a cam card given as four events.',
  inputs: events,
  outputs: {
    intakeDuration: { ...shown, symbol: 'di', meaning: 'intake duration, crank angle' },
    exhaustDuration: { ...shown, symbol: 'de', meaning: 'exhaust duration, crank angle' },
    intakeCentreline: { ...shown, symbol: 'ICL', meaning: 'middle of the intake event after top, crank angle' },
    exhaustCentreline: { ...shown, symbol: 'ECL', meaning: 'middle of the exhaust event before top, crank angle' },
    separation: { ...shown, symbol: 'LSA', meaning: 'between the lobe middles, CAM angle' },
    overlap: { ...shown, symbol: 'overlap', meaning: 'both valves open, crank angle; negative: both closed' },
    advance: { ...shown, symbol: 'advance', meaning: 'ahead of split overlap, crank angle' },
  },
  formula:
    'd = O + 180° + C; ICL = di/2 − IO; ECL = de/2 − EC; LSA = (ICL + ECL)/2; overlap = IO + EC; advance = LSA − ICL',
  assumptions: [
    'All four events at the same lift.',
    'The middle of an unsymmetric event is not the point of highest lift.',
  ],
  sources: ['cam-terms'],
  example: {
    inputs: { intakeOpens: '20 deg', intakeCloses: '60 deg', exhaustOpens: '60 deg', exhaustCloses: '20 deg' },
    outputs: {
      intakeDuration: '260 deg',
      exhaustDuration: '260 deg',
      intakeCentreline: '110 deg',
      exhaustCentreline: '110 deg',
      separation: '110 deg',
      overlap: '40 deg',
      advance: '0 deg',
    },
    from: 'reference row MO-19',
  },
  compute: (v) => {
    const found = find(v);
    if (found.ok) return answer({ ...found.value });
    const { valve } = found.fault;
    return conflict([`${valve}Opens`, `${valve}Closes`], `these events leave the ${valve} valve no open time`);
  },
});
