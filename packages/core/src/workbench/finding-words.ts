/** What a finding says beyond its own limit: parts that are each good and do not fit together, where to read, on what it rests. */
import { type Assessment, FEATURE_RULES, type Finding, PROPERTIES, type Slot } from '../assess/index.js';
import { describeSource, sourceOf, toSourceKey } from '../sources/index.js';

/** Feature and place of the readings that a finding rests on, each once: `cylinder-bore/7`. */
function restsOn({ size, missing }: Finding): readonly string[] {
  const keys = [...(size?.parts.map((part) => part.key) ?? []), ...missing];
  const slots = keys.map((key) => key.split('/')).filter((parts) => parts.length === 3 && parts[0] !== 'gauge');
  return [...new Set(slots.map(([feature, place]) => `${feature}/${place}`))];
}

/** Findings about the parts themselves of which a clearance is made, those only that a printed limit judges. */
function partsOf({ findings }: Assessment, clearance: Finding): readonly Finding[] {
  const places = new Set(restsOn(clearance));
  return findings.filter((one) => {
    const property = PROPERTIES.get(one.property);
    return property?.made === 'size' && one.held.length > 0 && places.has(`${property.needs[0]}/${one.place}`);
  });
}

const usable = ({ verdict }: Finding): boolean => verdict === 'in' || verdict === 'near';

/**
 * A clearance past its limit although every part that makes it is within its own: worn parts that may each be used, but not
 * together. Undefined for everything else, and where a part has no limit or no size: nothing is said of what is not known.
 */
export function goodPartsBadFit(assessment: Assessment, finding: Finding): string | undefined {
  if (finding.verdict !== 'out' || PROPERTIES.get(finding.property)?.made !== 'pair') return undefined;
  const parts = partsOf(assessment, finding);
  const judged = new Set(parts.map(({ property, place }) => `${PROPERTIES.get(property)?.needs[0]}/${place}`));
  const known = restsOn(finding).length > 0 && restsOn(finding).every((one) => judged.has(one));
  if (!known || !parts.every(usable)) return undefined;
  const names = [...new Set(parts.map(({ title, placeName }) => `${title} of ${placeName}`))];
  return `Every part is within its own wear limit, the clearance is not: ${names.join(', ')} are each good, and together they are out`;
}

/** The reading to take for a finding: the first that is missing, the one that decides, else the first that formed it. */
export function whereToRead({ missing, again, size }: Finding): Slot | undefined {
  const keys = [...missing, ...(again ? [again.key] : []), ...(size?.parts.map((part) => part.key) ?? [])];
  return keys.find((key) => key.split('/').length === 3 && !key.startsWith('gauge/'));
}

const CATALOGUE_KEY = /^[a-z-]+\.[a-z-]+$/;

/** Keys of the bibliography as lines with their standing; an entry of the catalogue is named as such. */
export const sourceLines = (keys: readonly string[]): readonly string[] =>
  keys.map((key) => {
    const known = toSourceKey(key);
    if (known !== undefined) return describeSource(sourceOf(known));
    return CATALOGUE_KEY.test(key) ? `calculation ${key} of the catalogue` : key;
  });

const AREAS = new Map(FEATURE_RULES.map(({ kind }) => [kind.id, kind.area]));

/** Part of the engine to which a size belongs; a clearance stands with the part that runs in the other. */
export const areaOf = (property: string) =>
  AREAS.get(PROPERTIES.get(property)?.needs.at(-1) ?? property.split('.')[0] ?? '') ?? 'assembly';
