import { HAZARDS } from '../../hazards.js';
import type { Operation } from '../../model.js';
import { felt, list, value } from '../act.js';

/** O34: ready, and started. */
export const firstStart: Operation = {
  id: 'first-start',
  key: 'O34',
  title: 'Make ready and start it for the first time',
  phase: 'start-and-run-in',
  chain: 'built-on',
  needs: ['prime'],
  consumables: [],
  tools: ['oil gauge', 'timing lamp', 'extinguisher', 'water for the radiator', 'telephone and first aid'],
  cautions: [HAZARDS.start, HAZARDS.exhaustGas, HAZARDS.hot],
  mistakes: [
    { wrong: 'long cranking with timing or fuel not ready', cost: 'the paste is wiped off the lobes' },
    { wrong: 'left to idle on new flat lifters', cost: 'lobes gone in minutes' },
    { wrong: 'steps read between fuel and crank', cost: 'fuel pools and burns' },
  ],
  acts: [
    value('volume', 'coolant-filled', 15, 'Fill the coolant and let the air out.', 'Amount and mixture'),
    felt('throttle-returns', 5, 'Work throttle and stop; feel them come back.', 'Comes back by itself, stop works'),
    list(
      'roles-told',
      5,
      'Say who holds the key, who watches for fire and leaks, and the one word that stops all.',
      'Who does what, and the word',
      { two: 'first start', mustDo: 'nobody starts a new engine alone' },
    ),
    felt(
      'extinguisher-held',
      2,
      'A second person takes the extinguisher in hand and stands clear of the fan.',
      'Who holds it, charge seen',
      { mustDo: 'fuel can flash at the first start' },
    ),
    list(
      'stop-rule-told',
      2,
      'Agree on the seconds without oil pressure after which it is stopped.',
      'Seconds, and what else stops it',
      { mustDo: 'without pressure each second costs the bearings' },
    ),
    felt('timing-nipped', 5, 'See that timing stands and clamp holds; fuel on last.', 'Mark and clamp', {
      badPause: 'fuel is on: start, or shut it off',
    }),
    value('time', 'started', 3, 'Start it.', 'Seconds of cranking', {
      two: 'first start',
      noReturn: 'the first turn under power begins the run-in',
      badPause: 'it must not stand at idle on new lobes',
    }),
    value(
      'pressure',
      'pressure-seen',
      1,
      'Look at the gauge at once; stop where nothing shows.',
      'Pressure, and after how many seconds',
      { mustDo: 'revolutions only after oil pressure', badPause: 'keep to the run-in speed' },
    ),
    felt(
      'first-leaks-seen',
      5,
      'Walk round it: fuel, water, oil, knock.',
      'Where it leaks or knocks, or dry and quiet',
    ),
  ],
};
