/**
 * D04: undersize of the main journals and of the crankpins, each group for itself. Alternatives side by side: polish and keep, each
 * undersize for which there are shells.
 */
import type { Alternative, Assessment, Decision } from '../model.js';
import { GROUPS, type Group, shellsOf } from './bearings-of.js';
import { crankAsIs } from './crank-as-is.js';
import { grindAllowance, grindTo, type WornJournal } from './crank-grind.js';
import { cutBefore } from './cut-before.js';
import { type Decider, decided, notMeasured, placesOf, type Question, waiting } from './decision.js';
import type { LengthWords } from './length-words.js';
import { smallest, stationValues } from './measured-at.js';
import { undersizesOf } from './shell-walls.js';

export const crankUndersize: Decider = (assessment, words) =>
  GROUPS.filter((group) => placesOf(assessment, group.journal).length > 0).map((group) =>
    groupDecision(assessment, group, words),
  );

const questionOf = (group: Group): Question => ({
  id: 'crank-undersize',
  scope: group.id,
  title: group.id === 'main' ? 'Main journals' : 'Crankpins',
  question: `To which size are the ${group.journals} ground?`,
  area: 'crankshaft',
  sources: ['undersize-walls', 'shop-practice', 'derived-here'],
});

function groupDecision(assessment: Assessment, group: Group, words: LengthWords): Decision {
  const question = questionOf(group);
  const shells = shellsOf(assessment.engine, group);
  const journals = placesOf(assessment, group.journal);
  const worn = journals.flatMap((place): readonly WornJournal[] => {
    const least = smallest(stationValues(assessment, group.journal, place));
    return least === undefined ? [] : [{ place, smallest: least }];
  });
  const missing = [
    ...notMeasured(assessment, group.journal, `${group.journal}.diameter`),
    ...(shells.length === 0 ? [`shells for the ${group.journals}: the sheet lists none that can be had (stock)`] : []),
  ];
  if (missing.length > 0) return waiting(question, missing);
  const cuts = undersizesOf(shells).filter((one) => one > 0);
  const grinds = cuts.map((undersize) => grindTo({ assessment, group, worn, words }, undersize));
  const near = ({ verdict }: Alternative) => verdict === 'near';
  const alternatives = [
    crankAsIs(assessment, group, cutBefore(assessment, group.journal, 'shaft', undersizesOf(shells)), words),
    ...grinds.filter((one) => !near(one)),
    ...grinds.filter(near),
  ];
  const allowance = grindAllowance(assessment);
  return decided(question, {
    alternatives,
    proof: proofOf(alternatives, grinds),
    working: [
      ...worn.map(
        ({ place, smallest: one }) => `${place.name}: smallest ${words.sure(one.value, one.u)} (${one.station.name}).`,
      ),
      `Grinding allowance ${words.length(allowance.value)} on diameter (${allowance.from}).`,
    ],
    cautions: ['Keep the fillet radius of the crank maker, and clean the oilways after grinding.'],
  });
}

function proofOf(alternatives: readonly Alternative[], grinds: readonly Alternative[]): string {
  const best = alternatives.find((one) => one.possible);
  if (best === undefined) return 'No undersize for which there are shells serves: each is shown with its reason.';
  const at = grinds.indexOf(best);
  if (at < 0) return 'Nothing needs to be ground: every journal is inside its limits.';
  if (at === 0) return 'It is the smallest undersize for which there are shells.';
  return grinds
    .slice(0, at)
    .map((one) => `${one.words}: ${one.against.join(' ') || 'the chance that every journal cleans up is below 95 %.'}`)
    .join(' ');
}
