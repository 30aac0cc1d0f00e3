import type { InspectionLimit, Window } from '../../engine/index.js';

/** What the part measures when new; undefined where the sheet prints only a wear limit or only words. */
export function newWindow(limit: InspectionLimit): Window<number> | undefined {
  return limit.whenNew?.window;
}

/**
 * Window [SI] in which a worn part may still be used.
 *
 * The sheet's form decides: `absolute` and `clearance` are windows already. `change-from-new` becomes a size here, counted from
 * the end of the new window at which wear begins: a hole may grow past the largest new size, a shaft shrink below the smallest, and a
 * size that wears neither way may leave the window at both ends. The part's own size when new is not known, so
 * this is the widest reading of the words; a part that was made at the other end has then worn by the whole tolerance more.
 *
 * Undefined: no wear limit is printed, or a change is printed without the new size it counts from.
 * Source: the three forms of trade-map.md section 3; the manuals under sheets/transcribed print all of them.
 */
export function wearWindow(
  limit: InspectionLimit,
  sense: 'hole' | 'shaft' | 'neither',
  fresh: Window<number> | undefined = newWindow(limit),
): Window<number> | undefined {
  const { wear } = limit;
  if (wear === undefined) return undefined;
  if (wear.form !== 'change-from-new') return wear.window;
  if (fresh === undefined) return undefined;
  const { low, high } = opened(fresh, sense, wear.change);
  if (low === undefined && high === undefined) return undefined;
  return { ...(low === undefined ? {} : { low }), ...(high === undefined ? {} : { high }) };
}

/** One printed figure is both ends of the window. */
function opened(fresh: Window<number>, sense: 'hole' | 'shaft' | 'neither', change: number): Window<number> {
  const worn = {
    ...(fresh.low === undefined || sense === 'hole' ? {} : { low: fresh.low - change }),
    ...(fresh.high === undefined || sense === 'shaft' ? {} : { high: fresh.high + change }),
  };
  return {
    ...(sense === 'hole' && fresh.low !== undefined ? { low: fresh.low } : {}),
    ...(sense === 'shaft' && fresh.high !== undefined ? { high: fresh.high } : {}),
    ...worn,
  };
}
