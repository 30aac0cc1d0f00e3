import type { Operation } from '../../model.js';
import { list, photo, signOff } from '../act.js';

/** O38: the record closed. */
export const signingOff: Operation = {
  id: 'sign-off',
  key: 'O38',
  title: 'Close the record and sign',
  phase: 'start-and-run-in',
  chain: 'in-turn',
  needs: ['leak-down'],
  consumables: [],
  tools: ['the record'],
  cautions: [],
  mistakes: [{ wrong: 'signed with things left open that nobody named', cost: 'the next person believes it' }],
  acts: [
    list('service-told', 10, 'Write down when oil, lash and bolts are due next.', 'Hours or date of each'),
    list('cautions-told', 10, 'Write down what the owner has to know.', 'Limits, fluids, habits'),
    photo('finished-photographed', 10, 'Photograph the finished engine from all six sides.', 'The photo'),
    signOff('signed-off', 10, 'Read every skip and open doubt; sign.', 'Words and name', {
      closes: true,
      mustDo: 'the work ends with a name',
    }),
  ],
};
