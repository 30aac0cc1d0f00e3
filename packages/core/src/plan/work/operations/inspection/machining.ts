import { HAZARDS } from '../../hazards.js';
import type { Operation } from '../../model.js';
import { felt, list, value } from '../act.js';

const CUT = 'metal that is cut stays off';

/** O08: what the shop cuts, and what came back. */
export const machining: Operation = {
  id: 'machining',
  key: 'O08',
  title: 'Decide what is machined, order it, measure what comes back',
  phase: 'inspection',
  chain: 'free',
  needs: ['parts-choice'],
  consumables: [],
  tools: ['the written order', 'torque plate and its bolts', 'the parts that it must fit'],
  cautions: [HAZARDS.metalGone, HAZARDS.dust],
  mistakes: [
    { wrong: 'an order without numbers', cost: 'two meanings of "reconditioned", and a quarrel' },
    { wrong: 'bored before the pistons were in hand', cost: 'a clearance that nobody chose' },
    { wrong: 'mains honed after the bores', cost: 'bores no longer square to the crank' },
  ],
  acts: [
    list('sizes-decided', 30, 'Settle size, tolerance and finish of every cut.', 'Each line with what it must fit', {
      position: 'first',
    }),
    list(
      'order-written',
      20,
      'Write the order and give a copy with the parts.',
      'Lines, plate, gasket and bolts used, who decides in doubt',
      { position: 'first' },
    ),
    felt(
      'fasteners-final',
      20,
      'Put main and rod fasteners of the final type in, as they will stay.',
      'Type and lubricant in each',
    ),
    list('block-machined', 5, 'Shop: decks, bores and seats of the block cut.', 'What was cut, by how much', {
      awaits: 'shop',
      noReturn: CUT,
    }),
    value(
      'length',
      'mains-honed',
      5,
      'Shop: main bores honed in line, with the final fasteners.',
      'Size at the ends and in the middle; skip where not needed',
      { awaits: 'shop', noReturn: CUT },
    ),
    list('rods-resized', 5, 'Shop: big ends resized on the final bolts.', 'Size of each; skip where not needed', {
      awaits: 'shop',
      noReturn: CUT,
    }),
    list('crank-ground', 5, 'Shop: crank ground or polished.', 'Size of each journal, fillets', {
      awaits: 'shop',
      noReturn: CUT,
    }),
    list('head-machined', 5, 'Shop: seats, guides and face of the head.', 'What was cut, by how much', {
      per: 'head',
      awaits: 'shop',
      noReturn: CUT,
    }),
    value(
      'length',
      'bore-honed',
      5,
      'Shop: bore honed to its own piston, with plate and studs on.',
      'Size and finish',
      { per: 'cylinder', awaits: 'shop', noReturn: CUT },
    ),
    felt(
      'work-measured',
      60,
      'Measure again what came back, with your own gauges, against the order.',
      'Lines that do not agree',
      { position: 'join' },
    ),
  ],
};
