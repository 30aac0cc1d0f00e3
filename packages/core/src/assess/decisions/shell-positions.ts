/** Bearings with all that shells are chosen by. */
import type { InspectionLimit } from '../../engine/index.js';
import type { Assessment, Place } from '../model.js';
import { awaited } from './back-from-shop.js';
import { type Group, type Position, positionsOf } from './bearings-of.js';
import { findingAt, limitAt, notMeasured } from './decision.js';
import { type Closed, closed } from './judged.js';
import { less, measuredAt, type Sure } from './measured-at.js';

export interface ShellPlace {
  readonly place: Place;
  readonly housing: Sure;
  readonly journal: Sure;
  /** Housing less journal: room for two walls and the clearance. */
  readonly room: Sure;
  readonly asked: Closed;
  readonly limit: InspectionLimit;
  /** Housing past its limits: shells would not be held. */
  readonly noCrush: boolean;
}
export interface ShellPlaces {
  readonly places: readonly ShellPlace[];
  readonly missing: readonly string[];
}

/** Bearings of a group whose housing, journal and clearance are known, and what is lacking at the others. */
export function shellPlaces(assessment: Assessment, group: Group): ShellPlaces {
  const housing = `${group.housing}.diameter`;
  const journal = `${group.journal}.diameter`;
  const positions = positionsOf(assessment, group);
  const unlimited = positions.filter(({ place }) => {
    const asked = limitAt(assessment, group.clearance, place.id, 'new');
    return asked === undefined || closed(asked.window) === undefined;
  });
  const missing = [
    ...notMeasured(assessment, group.housing, housing),
    ...notMeasured(assessment, group.journal, journal),
    ...awaited(assessment, group.housing),
    ...awaited(assessment, group.journal),
    ...(unlimited.length > 0
      ? [
          `clearance of ${unlimited.length === positions.length ? `the ${group.id} bearings` : unlimited.map(({ place }) => place.name).join(', ')}: the sheet prints no window with both ends`,
        ]
      : []),
  ];
  const places = positions.flatMap((position): readonly ShellPlace[] => {
    const asked = limitAt(assessment, group.clearance, position.place.id, 'new');
    const window = asked && closed(asked.window);
    const { hole, shaft } = sizesOf(assessment, group, position);
    if (!asked || !window || !hole || !shaft) return [];
    const noCrush = [housing, `${group.housing}.out-of-round`].some(
      (property) => findingAt(assessment, property, position.place.id)?.verdict === 'out',
    );
    return [
      {
        place: position.place,
        housing: hole,
        journal: shaft,
        room: less(hole, shaft),
        asked: window,
        limit: asked.limit,
        noCrush,
      },
    ];
  });
  return { places, missing };
}

/** Housing square to its parting line and the journal at its largest, as the oil clearance is formed everywhere. */
function sizesOf(assessment: Assessment, group: Group, { place, journal }: Position) {
  return {
    hole: measuredAt(assessment, group.housing, place, 'mean', ({ id }) => id.includes('vertical')),
    shaft: measuredAt(assessment, group.journal, journal, 'largest'),
  };
}
