import { CONSUMABLES } from '../../consumables.js';
import type { Operation } from '../../model.js';
import { felt, value } from '../act.js';

/** O18: camshaft into the block. */
export const camshaft: Operation = {
  id: 'camshaft',
  key: 'O18',
  title: 'Put the camshaft in the block',
  phase: 'permanent-parts',
  chain: 'built-on',
  needs: ['cam-bearings', 'plugs-and-liners'],
  consumables: [CONSUMABLES.camJournal, CONSUMABLES.flatLobe, CONSUMABLES.roller, CONSUMABLES.lockedScrew],
  tools: ['long bolt as a handle', 'dial indicator'],
  cautions: [],
  mistakes: [
    { wrong: 'a lobe knocked against a bearing', cost: 'a chipped lobe or a scraped bearing' },
    { wrong: 'paste put on long before the start', cost: 'it runs off, and the lobe starts dry' },
  ],
  acts: [
    felt(
      'follower-bores-free',
      15,
      'Let each new follower fall down its bore by its own weight.',
      'Bores in which it hangs',
      { when: ['pushrod'] },
    ),
    felt(
      'cam-lubed',
      10,
      'Lube the journals; lobes by kind: paste for flat, oil for rollers.',
      'What was put on which',
      { when: ['pushrod'], badPause: 'the lube runs off an open cam: put it in now' },
    ),
    felt('cam-in', 15, 'Guide the cam in without touching a bearing.', 'Turns free at every bearing', {
      when: ['pushrod'],
    }),
    value('length', 'cam-float', 10, 'Fit plate or bumper; push and pull the cam against the dial.', 'End float', {
      when: ['pushrod'],
    }),
  ],
};
