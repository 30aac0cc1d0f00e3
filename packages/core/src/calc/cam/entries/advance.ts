import { degrees } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { advanced } from '../events.js';
import { eventWords } from './event-words.js';
import { eventOutputs, events } from './inputs.js';

export const advance = defineCalculation({
  id: 'cam.advance',
  subject: 'cam',
  title: 'Events after advancing or retarding the cam',
  summary: 'Every event of one cam that carries both sets of lobes, after it is turned against the crank.',
  inputs: {
    ...events,
    advance: {
      kind: 'angle',
      symbol: 'adv',
      meaning: 'cam turned ahead, crank angle; negative retards',
      unit: 'deg',
      range: { from: degrees(-90), to: degrees(90) },
    },
  },
  outputs: eventOutputs,
  formula: 'IO + adv; IC − adv; EO + adv; EC − adv',
  assumptions: ['One camshaft carries intake and exhaust lobes.'],
  sources: ['derived-here'],
  example: {
    inputs: {
      intakeOpens: '20 deg',
      intakeCloses: '60 deg',
      exhaustOpens: '60 deg',
      exhaustCloses: '20 deg',
      advance: '5 deg',
    },
    outputs: { intakeOpens: '25 deg', intakeCloses: '55 deg', exhaustOpens: '65 deg', exhaustCloses: '15 deg' },
    from: 'reference row MO-19',
  },
  compute: (v) => {
    const moved = advanced(v, v.advance);
    return answer({ ...moved, inWords: eventWords(moved) });
  },
});
