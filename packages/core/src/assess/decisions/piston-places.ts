/** Bores and pistons with all that they are brought together by. */
import type { InspectionLimit } from '../../engine/index.js';
import type { Assessment, Place } from '../model.js';
import { awaited } from './back-from-shop.js';
import { limitAt, notMeasured, placesOf } from './decision.js';
import { type Closed, closed } from './judged.js';
import { measuredAt, type Sure } from './measured-at.js';

export interface BorePlace {
  readonly place: Place;
  /** At its smallest, as the piston clearance is formed everywhere. */
  readonly bore: Sure;
  readonly asked: Closed;
  readonly limit: InspectionLimit;
}
/** A measured piston, by the cylinder that it is tagged with. */
export interface TaggedPiston {
  readonly place: Place;
  readonly size: Sure;
}
export interface PistonPlaces {
  readonly bores: readonly BorePlace[];
  readonly pistons: readonly TaggedPiston[];
  readonly missing: readonly string[];
}

/** Finished bores, measured pistons, and what is lacking: a bore that was sent away counts only when it was measured again. */
export function pistonPlaces(assessment: Assessment): PistonPlaces {
  const bores = placesOf(assessment, 'cylinder-bore').flatMap((place): readonly BorePlace[] => {
    const asked = limitAt(assessment, 'piston.clearance', place.id, 'new');
    const window = asked && closed(asked.window);
    const bore = measuredAt(assessment, 'cylinder-bore', place, 'smallest');
    return asked && window && bore ? [{ place, bore, asked: window, limit: asked.limit }] : [];
  });
  const pistons = placesOf(assessment, 'piston-skirt').flatMap((place): readonly TaggedPiston[] => {
    const size = measuredAt(assessment, 'piston-skirt', place, 'mean');
    return size ? [{ place, size }] : [];
  });
  const unlimited = placesOf(assessment, 'cylinder-bore').filter((place) => {
    const asked = limitAt(assessment, 'piston.clearance', place.id, 'new');
    return asked === undefined || closed(asked.window) === undefined;
  });
  return {
    bores,
    pistons,
    missing: [
      ...awaited(assessment, 'cylinder-bore'),
      ...notMeasured(assessment, 'cylinder-bore', 'cylinder-bore.diameter'),
      ...notMeasured(assessment, 'piston-skirt', 'piston-skirt.diameter'),
      ...(unlimited.length > 0
        ? [
            `piston clearance: the sheet prints no window with both ends for ${unlimited.map(({ name }) => name).join(', ')}`,
          ]
        : []),
    ],
  };
}
