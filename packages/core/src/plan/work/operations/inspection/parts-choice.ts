import type { Operation } from '../../model.js';
import { list } from '../act.js';

/** O09: which parts, as one combination. */
export const partsChoice: Operation = {
  id: 'parts-choice',
  key: 'O09',
  title: 'Choose the parts as one combination, and order them',
  phase: 'inspection',
  chain: 'in-turn',
  needs: ['measuring', 'crack-test'],
  consumables: [],
  tools: ['parts book', 'the sheets that come with the fasteners'],
  cautions: [],
  mistakes: [
    { wrong: 'hydraulic lifters on a cam made for solid ones', cost: 'a train that rattles or holds valves open' },
    { wrong: 'stiff springs on a new flat cam', cost: 'the lobe is wiped in the run-in' },
    { wrong: 'the gasket of a sister casting', cost: 'water holes closed, a hot corner' },
  ],
  acts: [
    list(
      'combination-chosen',
      40,
      'Settle piston, gasket, cam and springs together.',
      'Ratio, squish and room that were aimed at',
    ),
    list(
      'pistons-chosen',
      15,
      'Choose the one size in which all bores clean up and pistons can be had.',
      'Size, rings, pins',
    ),
    list('bearings-chosen', 15, 'Choose shells by journal and housing.', 'Size or grade at each position'),
    list('valve-train-chosen', 15, 'Choose followers to the cam, springs to both.', 'What goes with what'),
    list(
      'fasteners-chosen',
      15,
      'Choose studs and bolts; keep the sheet with their torque and lubricant.',
      'Kind, value and lubricant of each joint',
    ),
    list(
      'seals-and-gaskets-chosen',
      15,
      'Choose gaskets and seals by the casting number.',
      'Part and for which casting',
    ),
    list('parts-ordered', 20, 'Order, and keep what was ordered.', 'Supplier, numbers, prices'),
  ],
};
