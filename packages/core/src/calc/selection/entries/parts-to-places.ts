import { answer, defineCalculation, reversedEnds } from '../../catalogue/index.js';
import { partsToPlaces } from '../parts-to-places.js';
import {
  goal,
  noParts,
  parts,
  partsAnswer,
  partsOutputs,
  places,
  proofOf,
  signedLength,
  target,
  tooMany,
  windowOf,
} from './fit-inputs.js';
import { fromOne } from './lists.js';

export const partsToPlacesEntry = defineCalculation({
  id: 'selection.parts-to-places',
  subject: 'selection',
  title: 'Which part goes where: pistons to bores, or any parts to places',
  summary:
    'The best of all ways to give each place a part of its own, by sum, worst deviation or spread of the fits, with a proof.',
  inputs: {
    places,
    parts,
    target,
    lowest: { ...signedLength('c₁', 'lowest fit accepted; left out: any'), optional: true },
    highest: { ...signedLength('c₂', 'highest fit accepted; left out: any'), optional: true },
    goal,
  },
  outputs: {
    ...partsOutputs,
    left: { kind: 'count', symbol: 'rest', meaning: 'parts that stay on the bench, by their number', list: true },
  },
  formula: 'f = A − b; minimise Σ|f − c|, or max|f − c| and then Σ|f − c|, or max f − min f; c₁ ≤ f ≤ c₂',
  assumptions: [
    'Sizes were measured at the points where the fit is meant, such as the piston at its gauge point.',
    'Every part may go into every place whose fit is accepted.',
    'Fits are compared in whole nanometres; ends belong to the window.',
  ],
  sources: ['assignment-duality', 'hopcroft-karp', 'hall-set', 'balanced-assignment'],
  example: {
    inputs: {
      places: ['80.010 mm', '80.020 mm', '80.014 mm'],
      parts: ['79.980 mm', '79.970 mm', '79.975 mm'],
      target: '0.040 mm',
    },
    outputs: { partOf: [2, 1, 3], fits: ['0.0400 mm', '0.0400 mm', '0.0390 mm'], total: '0.0010 mm' },
    from: 'hand arithmetic: the sum of bores less pistons less targets is −0.001 mm, so no total is below 0.001 mm',
  },
  compute: (v) => {
    const fault = reversedEnds(v, ['lowest', 'highest']) ?? tooMany({ places: v.places, parts: v.parts });
    if (fault) return fault;
    const found = partsToPlaces({ ...v, window: windowOf(v.lowest, v.highest) });
    if (!found.ok) return noParts(['places', 'parts', 'target', 'lowest', 'highest'], found.fault);
    const plan = found.value;
    const left = [...v.parts.keys()].filter((part) => !plan.partOf.includes(part));
    return answer({ ...partsAnswer(plan, proofOf(plan, v.goal)), left: fromOne(left) });
  },
});
