import type { Engine, InspectionLimit } from '../../engine/index.js';
import { propertiesOfLimit } from './property-of-limit.js';
import { loadHeight } from './scope-words.js';

export type LimitIndex = ReadonlyMap<string, readonly InspectionLimit[]>;

/** Rows of one sheet are read once; the index hangs on the list itself. */
const READ = new WeakMap<readonly InspectionLimit[], LimitIndex>();

/**
 * Rows of the sheet by the size that they limit. Two loads of one spring that say neither open nor closed are told apart by their
 * heights: the lower height is the open valve.
 */
export function indexOfLimits(engine: Engine): LimitIndex {
  const known = READ.get(engine.limits);
  if (known !== undefined) return known;
  const index = new Map<string, InspectionLimit[]>();
  for (const limit of engine.limits) {
    for (const property of propertiesIn(engine, limit)) {
      const rows = index.get(property);
      if (rows === undefined) index.set(property, [limit]);
      else rows.push(limit);
    }
  }
  READ.set(engine.limits, index);
  return index;
}

function propertiesIn(engine: Engine, limit: InspectionLimit): readonly string[] {
  const properties = propertiesOfLimit(limit);
  if (properties[0] !== 'spring-load-closed.load' || limit.property !== undefined) return properties;
  return isLowerOfTwo(engine, limit) ? ['spring-load-open.load'] : properties;
}

function isLowerOfTwo(engine: Engine, limit: InspectionLimit): boolean {
  if (/closed|installed|fitted/.test(limit.what)) return false;
  const own = loadHeight(limit)?.value;
  if (own === undefined) return false;
  return engine.limits.some((other) => {
    const height = loadHeight(other)?.value;
    return other.part === limit.part && other.quantity === 'force' && height !== undefined && height > own;
  });
}
