/** Keeping the journals: polish only, where each is inside its limits for size, roundness and taper. */
import type { Alternative, Assessment } from '../model.js';
import type { Group } from './bearings-of.js';
import { blocked, possible, worstVerdict } from './decision.js';
import type { LengthWords } from './length-words.js';
import { undersizeText } from './shell-walls.js';
import { worstFigures } from './worst-figures.js';

/** The printed diameters hold for a standard crank: one that was `ground` before is judged by shape, and by its clearance when shells are chosen. */
export function crankAsIs(
  { engine, findings }: Assessment,
  group: Group,
  ground: number,
  words: LengthWords,
): Alternative {
  const own = findings.filter(
    ({ property, held }) =>
      held.length > 0 &&
      property.startsWith(`${group.journal}.`) &&
      !(ground > 0 && property === `${group.journal}.diameter`),
  );
  const verdict = worstVerdict(own.map((one) => one.verdict));
  const named = {
    id: 'as-is',
    words: `Polish the ${group.journals} and keep their size`,
    verdict,
    figures: worstFigures(own, words),
  };
  const against = [
    ...own
      .filter((one) => one.verdict !== 'in' && one.verdict !== 'near')
      .map(({ title, placeName, words: why }) => `${title}, ${placeName}: ${why}.`),
    ...(own.length === 0 ? [`The sheet prints no limit for the ${group.journals}.`] : []),
  ];
  if (against.length > 0) return blocked({ ...named, against });
  const finish = engine.machining?.journalFinish;
  const order = {
    id: `${group.id}-journals/all`,
    operation: 'polish',
    part: `crankshaft, ${group.journals}`,
    places: [],
    ...(finish === undefined ? {} : { finish }),
    notes: ['In the sense of rotation last. Take nothing off the size.'],
  };
  const before = `Ground before to ${undersizeText(ground, words)}: shape decides, and the clearance with such shells.`;
  return possible({ ...named, orders: [order], against: ground > 0 ? [before] : [] });
}
