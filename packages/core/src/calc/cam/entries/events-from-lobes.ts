import { type Angle, degrees } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { eventsOf } from '../events.js';
import { eventWords } from './event-words.js';
import { duration, eventOutputs } from './inputs.js';

const centre = { kind: 'angle', unit: 'deg', range: { above: 0, below: degrees(180) } } as const;

export const eventsFromLobes = defineCalculation({
  id: 'cam.events-from-lobes',
  subject: 'cam',
  title: 'Events from durations, separation and installed centreline',
  summary: 'Turns a cam card given as durations and angles into four events; negative events are kept.',
  inputs: {
    intakeDuration: { ...duration, symbol: 'di', meaning: 'intake duration, crank angle' },
    exhaustDuration: { ...duration, symbol: 'de', meaning: 'exhaust duration, crank angle' },
    separation: { ...centre, symbol: 'LSA', meaning: 'between the lobe middles, CAM angle' },
    intakeCentreline: { ...centre, symbol: 'ICL', meaning: 'installed intake centreline after top, crank angle' },
  },
  outputs: {
    ...eventOutputs,
    exhaustCentreline: {
      kind: 'angle',
      symbol: 'ECL',
      meaning: 'exhaust centreline before top, crank angle',
      unit: 'deg',
      places: 2,
    },
    overlap: { kind: 'angle', symbol: 'overlap', meaning: 'IO + EC; negative: both closed', unit: 'deg', places: 2 },
  },
  formula: 'IO = di/2 − ICL; IC = di/2 + ICL − 180°; ECL = 2·LSA − ICL; EO = de/2 + ECL − 180°; EC = de/2 − ECL',
  assumptions: [
    'Events belong to the lift at which the durations were taken.',
    'Separation is in cam angle, all else in crank angle.',
  ],
  sources: ['cam-terms'],
  example: {
    inputs: {
      intakeDuration: '214 deg',
      exhaustDuration: '224 deg',
      separation: '112 deg',
      intakeCentreline: '107 deg',
    },
    outputs: {
      intakeOpens: '0 deg',
      intakeCloses: '34 deg',
      exhaustOpens: '49 deg',
      exhaustCloses: '-5 deg',
      overlap: '-5 deg',
      inWords:
        'intake opens 0 deg before top; intake closes 34 deg after bottom; exhaust opens 49 deg before bottom; exhaust closes 5 deg before top',
    },
    from: 'reference row MO-22',
  },
  compute: (v) => {
    const events = eventsOf(v);
    return answer({
      ...events,
      inWords: eventWords(events),
      exhaustCentreline: (2 * v.separation - v.intakeCentreline) as Angle,
      overlap: (events.intakeOpens + events.exhaustCloses) as Angle,
    });
  },
});
