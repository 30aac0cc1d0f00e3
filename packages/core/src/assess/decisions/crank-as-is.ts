/** Keeping the journals: polish only, where each is inside its limits for size, roundness and taper. */
import type { Alternative, Assessment } from '../model.js';
import type { Group } from './bearings-of.js';
import { blocked, figure, possible, worstVerdict } from './decision.js';
import type { LengthWords } from './length-words.js';

export function crankAsIs({ engine, findings }: Assessment, group: Group, words: LengthWords): Alternative {
  const own = findings.filter(({ property, held }) => held.length > 0 && property.startsWith(`${group.journal}.`));
  const verdict = worstVerdict(own.map((one) => one.verdict));
  const sized = own.flatMap(({ size, title, placeName }) => (size === undefined ? [] : [{ size, title, placeName }]));
  const named = {
    id: 'as-is',
    words: `Polish the ${group.journals} and keep their size`,
    verdict,
    figures: [...new Set(sized.map(({ title }) => title))].map((title) => {
      const worst = sized.filter((one) => one.title === title).reduce((a, b) => (b.size.value > a.size.value ? b : a));
      return figure(`Largest ${title}`, `${words.sure(worst.size.value, worst.size.u)}, ${worst.placeName}`);
    }),
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
  return possible({ ...named, orders: [order] });
}
