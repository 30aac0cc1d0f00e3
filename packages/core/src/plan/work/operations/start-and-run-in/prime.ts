import { CONSUMABLES } from '../../consumables.js';
import { HAZARDS } from '../../hazards.js';
import type { Operation } from '../../model.js';
import { felt, list, value } from '../act.js';

/** O33: oil everywhere before it turns; the valve covers go on once oil was seen under them. */
export const prime: Operation = {
  id: 'prime',
  key: 'O33',
  title: 'Fill it and prime it until oil is seen everywhere',
  phase: 'start-and-run-in',
  chain: 'built-on',
  needs: ['pump-and-pan', 'ignition'],
  consumables: [CONSUMABLES.pumpGears, CONSUMABLES.endSeal],
  tools: ['priming shaft or pressure tank', 'oil gauge', 'drain tray', 'the list of valves'],
  cautions: [HAZARDS.dryStart, HAZARDS.turning, HAZARDS.leftInside],
  mistakes: [
    { wrong: 'pump turned the wrong way', cost: 'nothing comes, and a good pump is blamed' },
    { wrong: 'distributor back in a tooth off', cost: 'the timing that was set is gone' },
  ],
  acts: [
    list('plugs-counted-again', 5, 'Count drain, gallery and sender plugs from outside.', 'Number and place of each'),
    value('volume', 'oil-filled', 10, 'Fill the oil; read the stick.', 'Amount, grade, level', {
      mustDo: 'nothing may turn without oil',
    }),
    felt('filter-filled', 5, 'Fill the filter; wet its seal; fit it.', 'Filled, or cannot be filled as it hangs'),
    value(
      'pressure',
      'primed',
      20,
      'Drive the pump the right way; turn the crank a quarter turn at a time.',
      'Pressure, and how long it took',
      {
        two: 'one drives the pump, one watches',
        mustDo: 'a dry start wipes shells and lobes',
        badPause: 'oil drains back from what was primed',
      },
    ),
    felt('oil-at-valve', 1, 'Look for oil at this rocker or cam lobe.', 'Came, and how', { per: 'valve' }),
    felt(
      'drive-home',
      10,
      'Put the distributor home again without moving the crank.',
      'Rotor where the photo shows it; shaft in the pump',
      { when: ['petrol'] },
    ),
    list('covers-counted', 3, 'Count tools and rags; look into each cover.', 'Counted out and counted in'),
    {
      id: 'covers-tightened',
      minutes: 10,
      joint: 'valve-covers',
      does: 'Close the valve covers.',
      ask: 'Value and where it is from',
      answer: 'value',
      asked: 'torque',
      closes: true,
    },
  ],
};
