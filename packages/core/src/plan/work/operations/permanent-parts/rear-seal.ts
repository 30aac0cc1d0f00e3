import { CONSUMABLES } from '../../consumables.js';
import type { Operation } from '../../model.js';
import { felt } from '../act.js';

/** O20: rear seal. */
export const rearSeal: Operation = {
  id: 'rear-seal',
  key: 'O20',
  title: 'Fit the rear seal',
  phase: 'permanent-parts',
  chain: 'built-on',
  needs: ['crankshaft'],
  consumables: [CONSUMABLES.seal, CONSUMABLES.rearCap],
  tools: ['seal driver or guide', 'lamp'],
  cautions: [],
  mistakes: [{ wrong: 'lip looking outward', cost: 'the engine comes out again' }],
  acts: [
    felt(
      'rear-seal-told',
      5,
      'Tell lip and outside; wet the lip; see which way it looks.',
      'Lip to the oil, or dry by its maker',
    ),
    felt('rear-seal-in', 15, 'Push it in square over a guide.', 'Depth all round; lip not folded', {
      noReturn: 'a seal that was driven is not used again',
    }),
    felt('rear-corners-sealed', 5, 'Seal corners and ends only where the design shows it.', 'What was put where'),
  ],
};
