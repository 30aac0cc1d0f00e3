/** Bringing housings back into their window before shells are chosen. */
import type { Alternative, Assessment } from '../model.js';
import type { Group } from './bearings-of.js';
import { blocked, figure, limitAt, origin, placesText, possible } from './decision.js';
import { closed } from './judged.js';
import type { LengthWords } from './length-words.js';
import type { ShellPlace } from './shell-positions.js';

/** Order for the housings that are past their limits; all mains are cut in one line, a big end by itself. */
export function lineUp(
  assessment: Assessment,
  group: Group,
  loose: readonly ShellPlace[],
  words: LengthWords,
): Alternative {
  const where = placesText(loose.map(({ place }) => place));
  const operation =
    group.id === 'main' ? 'cut the caps and hone all mains in line' : 'cut the cap and hone the big end';
  const named = { id: 'resize-housings', words: `Bring the housing of ${where} back to size`, verdict: 'in' as const };
  const targets = loose.flatMap(({ place }) => {
    const asked = limitAt(assessment, `${group.housing}.diameter`, place.id, 'new');
    const window = asked && closed(asked.window);
    return asked && window ? [{ place: place.id, name: place.name, window, from: origin(asked.limit) }] : [];
  });
  const figures = targets.map(({ name, window, from }) => figure(name, `${words.window(window)} (${from})`));
  if (targets.length < loose.length)
    return blocked({ ...named, verdict: 'no data', figures, against: ['The sheet prints no window for the housing.'] });
  return possible({
    ...named,
    figures,
    against:
      group.id === 'main'
        ? ['It moves the crank toward the cam by what is cut off the caps.']
        : ['It shortens the rod by part of what is cut off.'],
    orders: [
      {
        id: `${group.id}-housings/all`,
        operation,
        part: group.id === 'main' ? 'cylinder block' : 'connecting rods',
        property: `${group.housing}.diameter`,
        places: targets.map(({ place }) => place),
        measured: 'length',
        targets: targets.map(({ place, window }) => ({ place, window })),
        with: 'caps on and tightened through all stages',
        notes: [],
      },
    ],
  });
}
