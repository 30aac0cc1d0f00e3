import { HAZARDS } from '../../hazards.js';
import type { Operation } from '../../model.js';
import { felt, list, value } from '../act.js';

/** O12: ratio, squish, room and cam position, while everything can still be changed. */
export const combinationMockUp: Operation = {
  id: 'combination-mock-up',
  key: 'O12',
  title: 'Try the whole combination',
  phase: 'trial-assembly',
  chain: 'free',
  needs: ['bearing-mock-up'],
  consumables: [],
  tools: ['dial bridge', 'burette', 'degree wheel and positive stop', 'checking springs', 'solid stand-in lifters', 'clay'],
  cautions: [HAZARDS.turning, HAZARDS.valvesMeet, HAZARDS.springs],
  mistakes: [
    { wrong: 'room tried on one cylinder only', cost: 'decks differ end to end and bank to bank' },
    { wrong: 'a hydraulic lifter that bleeds down in the trial', cost: 'room that is not there' },
    { wrong: 'dead centre taken from the highest reading', cost: 'a cam set degrees off' },
  ],
  acts: [
    list('aids-laid-out', 10, 'Lay out the aids of the trial, and book each one out.', 'Aid and number', { position: 'first' }),
    value('angle', 'trial-dead-centre', 20, 'Find dead centre by a positive stop from both sides.', 'Both stops, and the middle', { position: 'first' }),
    { id: 'combination-worksheet', minutes: 5, does: 'Read it on the trial assembly.', ask: 'The readings', answer: 'worksheet', worksheets: 'combination' },
    value('ratio', 'compression-figured', 5, 'Work out the compression ratio from the volumes that were read.', 'Ratio', { per: 'cylinder' }),
    value('length', 'squish-figured', 5, 'Work out piston to head with the gasket crushed.', 'Squish, and which gasket', { per: 'cylinder' }),
    value('length', 'liner-height-tried', 8, 'Hold the liner down as the manual says; read how far it stands proud.', 'Protrusion, and the step to its neighbour', { per: 'cylinder', when: ['wet-liners'] }),
    felt('crank-room-tried', 20, 'Turn it slowly: rods to cam, rails and liners, weights to skirts, pan, pickup.', 'The nearest place and its gap'),
    value('angle', 'cam-phase-tried', 30, 'Read the lobe by equal lifts on both sides of its top.', 'Centre of intake and exhaust, hint of a wrong key', { two: 'one turns, one reads' }),
    value('length', 'piston-room-tried', 8, 'Press the valve to the piston from well before the overlap to well after it.', 'Least room, and at which crank angle', { per: 'valve', two: 'one turns, one reads' }),
    value('length', 'spring-margin-tried', 5, 'At full lift: coils, and retainer to seal.', 'What is left before coils touch, and before the seal', { per: 'valve' }),
    value('length', 'pushrod-length-tried', 6, 'Try the length that leaves the narrowest stripe in the middle of the stem.', 'Length, and where the stripe lies', { per: 'valve', when: ['pushrod'] }),
    felt('drive-depth-tried', 10, 'Set the distributor home without its clamp: gear mesh, shaft in the pump.', 'How it meets gear and pump', { when: ['petrol'] }),
    felt('intake-fit-tried', 15, 'Set the intake on dry after the decks were cut.', 'Ports and bolt holes, gap at each end', { when: ['several-banks'] }),
    felt('combination-accepted', 20, 'Go through every figure of the trial and say what is kept.', 'What is accepted, and what is changed', { position: 'join' }),
  ],
};
