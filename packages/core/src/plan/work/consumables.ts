/** What goes on which surface. Common practice, no source; the sheet that comes with the part wins. */
import type { Consumable } from './model.js';

const row = (surface: string, use: string, mistake: string): Consumable => ({ surface, use, mistake });

export const CONSUMABLES = {
  shellBack: row(
    'shell back, housing, saddle',
    'dry, wiped clean',
    'oil behind the shell: it runs hot and crush feels wrong',
  ),
  shellFace: row(
    'shell face, journals, thrust faces',
    'assembly lube; clean oil where it starts within days',
    'dry spots, or lube drained away after weeks',
  ),
  flatLobe: row(
    'lobe and face of a flat lifter',
    'high-pressure paste',
    'put on weeks early, wiped off by long cranking, or used on rollers',
  ),
  roller: row(
    'roller lifter and lobe, lifter sides and bores',
    'engine oil',
    'paste in the bore keeps the lifter from turning',
  ),
  camJournal: row(
    'cam journals, distributor gear',
    'assembly lube; paste on the gear',
    'a dry gear wears in the first hours',
  ),
  pin: row('piston pin and bush', 'oil or assembly lube', 'a dry pin picks up'),
  bore: row(
    'rings, skirts, bores',
    'light oil, or as the ring maker says',
    'grooves flooded; an anti-friction additive before the rings have bedded',
  ),
  crankBolt: row(
    'rod and main bolts, thread and under the head',
    'the lubricant that the torque value was given for',
    'value and lubricant from different sheets',
  ),
  blindHead: row(
    'head bolt in a blind hole',
    'light oil on thread and under the head; hole empty and dry',
    'liquid in the hole: false torque or a cracked hole',
  ),
  waterHead: row(
    'head bolt into water',
    'flexible thread sealer, oil under the head; the value must allow for it',
    'a seep, or sealer in every hole',
  ),
  yieldBolt: row('bolt tightened to yield', 'new; lubricant as the manual says', 'used a second time'),
  headGasket: row('head gasket and its faces', 'dry unless its maker says otherwise', 'sealer on a coated gasket'),
  taperPlug: row(
    'taper gallery plug',
    'thread sealant, the first thread left clear',
    'a strand in the gallery; over-tight splits the casting',
  ),
  cupPlug: row('cup or core plug', 'hardening or anaerobic sealer on the rim', 'driven in crooked'),
  rearCap: row(
    'rear main cap faces and corners',
    'anaerobic or silicone only where the design shows it; the seat of the cap dry',
    'sealer under the cap changes the clearance',
  ),
  seal: row(
    'seal lip and outside',
    'oil or grease on the lip; thin sealer outside where it is bare metal',
    'a dry lip burns; a bare outside leaks',
  ),
  lockedScrew: row(
    'cam gear, flywheel, thrust plate, pump screws',
    'medium locker on a clean dry thread',
    'locker on an oily thread',
  ),
  intakeBolt: row('intake bolt into valley or water', 'thread sealer', 'oil or water weeps along the thread'),
  endSeal: row(
    'ends of the intake, corners of the pan',
    'silicone bead of 3 to 6 mm at the joints, within its skin time',
    'squeezed-off silicone blocks the pickup',
  ),
  sparkPlug: row(
    'spark plug thread',
    'dry as a rule; anti-seize only with a lower value',
    'over-tightened in aluminium',
  ),
  rockerPivot: row(
    'rocker pivots, pushrod ends, valve tips',
    'assembly lube or paste',
    'a dry start before oil reaches the top',
  ),
  pumpGears: row('oil pump gears', 'petroleum jelly or assembly lube', 'a dry pump does not lift oil'),
  stem: row('valve stem', 'oil', 'a dry stem picks up in its guide'),
} as const satisfies Record<string, Consumable>;
