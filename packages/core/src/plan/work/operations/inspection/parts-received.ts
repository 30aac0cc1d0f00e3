import type { Operation } from '../../model.js';
import { felt, list, value } from '../act.js';

/** O10: what came is what was ordered. */
export const partsReceived: Operation = {
  id: 'parts-received',
  key: 'O10',
  title: 'Check the parts that came',
  phase: 'inspection',
  chain: 'free',
  needs: ['parts-choice'],
  consumables: [],
  tools: ['micrometer', 'scale', 'spring tester', 'the old parts to compare with'],
  cautions: [],
  mistakes: [{ wrong: 'a part believed because it is new', cost: 'found in the trial, or after it' }],
  acts: [
    list('parts-counted', 30, 'Count what came against the order.', 'What came, what is short', {
      position: 'first',
      awaits: 'parts',
    }),
    {
      id: 'new-part-worksheet',
      minutes: 4,
      does: 'Measure the new part.',
      ask: 'The readings',
      answer: 'worksheet',
      worksheets: 'new-parts',
    },
    value(
      'length',
      'new-piston-read',
      4,
      'Measure the new piston at its own height.',
      'Skirt, and weight with its pin',
      { per: 'cylinder' },
    ),
    list('shells-read', 15, 'Read size and code on the back of every shell.', 'Code at each position'),
    list(
      'rings-told-apart',
      15,
      'Lay each ring set to its bore; find top, second and marks.',
      'Set, marks, which way up',
    ),
    felt(
      'cam-held-against-card',
      15,
      'Measure two lobes of the new cam, or the one that stays.',
      'Lift read and lift on the card',
    ),
    felt(
      'gasket-held-against',
      10,
      'Lay the gasket on block and head: every hole, the fire ring clear of bore and valve.',
      'Holes that do not meet',
      { per: 'head' },
    ),
    felt(
      'bolts-told-apart',
      15,
      'Sort the new bolts by length against the bolt card.',
      'Lengths that differ from the old',
    ),
    list('parts-accepted', 10, 'Say which parts go back.', 'Parts accepted, parts sent back', { position: 'join' }),
  ],
};
