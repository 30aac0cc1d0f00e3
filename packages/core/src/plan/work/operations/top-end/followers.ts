import { CONSUMABLES } from '../../consumables.js';
import { HAZARDS } from '../../hazards.js';
import type { Operation } from '../../model.js';
import { felt, register } from '../act.js';

/** O29: followers and pushrods, or overhead camshafts. */
export const followers: Operation = {
  id: 'followers',
  key: 'O29',
  title: 'Fit followers and pushrods, or the overhead camshafts',
  phase: 'top-end',
  chain: 'built-on',
  needs: ['heads-on'],
  consumables: [CONSUMABLES.flatLobe, CONSUMABLES.roller, CONSUMABLES.rockerPivot, CONSUMABLES.camJournal],
  tools: ['position register', 'lamp', 'paint pen'],
  cautions: [HAZARDS.valvesMeet],
  mistakes: [
    { wrong: 'a used follower on another lobe', cost: 'lobe and follower are eaten' },
    { wrong: 'pushrod not in its cup when the rocker is tightened', cost: 'the lifter is pulled apart' },
  ],
  acts: [
    felt(
      'lifters-prepared',
      15,
      'Soak or bleed the lifters, or leave them, as their maker says.',
      'What was done, and by whose word',
      { when: ['hydraulic'] },
    ),
    register(
      'follower-in',
      2,
      'Lube the follower by its kind and fit it to its own place.',
      'From which place or new; rollers guided, oil hole',
      { per: 'valve' },
    ),
    felt(
      'roller-guided',
      1,
      'Fit guide or link, so that the roller runs along its lobe.',
      'Which way the link looks; the lifter cannot turn',
      { per: 'valve', when: ['pushrod', 'roller-followers'] },
    ),
    felt('follower-turns', 1, 'Turn the engine; watch the follower turn on its lobe.', 'Turns, or stands still', {
      per: 'valve',
      when: ['pushrod', 'flat-followers'],
    }),
    register(
      'pushrod-in',
      2,
      'See through the pushrod; set it in the cup, the right end up.',
      'From which place or new; end; seated',
      { per: 'valve', when: ['pushrod'] },
    ),
    felt(
      'cam-laid-in',
      10,
      'Crank off dead centre; lube and lay the camshaft in its bearings.',
      'Lobes where they lift least; marks',
      { per: 'camshaft', when: ['overhead-cam'], badPause: 'springs bend a cam that lies loose: draw the caps down' },
    ),
    {
      id: 'cam-caps-tightened',
      minutes: 20,
      per: 'camshaft',
      joint: 'cam-caps',
      does: 'Draw the cam caps down evenly, by number and arrow.',
      ask: 'Value and where it is from; turns free or not',
      answer: 'value',
      asked: 'torque',
      when: ['overhead-cam'],
    },
  ],
};
