/** What a finding says beyond its own limit: parts that are each good and do not fit together, where to read, on what it rests. */
import { type Assessment, FEATURE_RULES, type Finding, PROPERTIES, parseSlot, type Slot } from '../assess/index.js';
import { describeSource, sourceOf, toSourceKey } from '../sources/index.js';
import { placeWords } from './slot-names.js';

const AREAS = new Map(FEATURE_RULES.map(({ kind }) => [kind.id, kind.area]));
/** A size rests on readings and on what its gauges and the temperature add; only readings are slots. */
const isSlot = (key: string): boolean => AREAS.has(parseSlot(key)?.feature ?? '');

/** Feature and place of the readings that a finding rests on, each once: `cylinder-bore/7`. */
function restsOn({ size, missing }: Finding): readonly string[] {
  const keys = [...(size?.parts.map((part) => part.key) ?? []), ...missing].filter(isSlot);
  return [...new Set(keys.map((key) => key.split('/').slice(0, 2).join('/')))];
}

const partOf = ({ property, place }: Finding): string => `${PROPERTIES.get(property)?.needs[0]}/${place}`;

/** Findings about the parts themselves of which a clearance is made, those only that a printed limit judges. */
function partsOf({ findings }: Assessment, parts: readonly string[]): readonly Finding[] {
  return findings.filter(
    (one) => PROPERTIES.get(one.property)?.made === 'size' && one.held.length > 0 && parts.includes(partOf(one)),
  );
}

const usable = ({ verdict }: Finding): boolean => verdict === 'in' || verdict === 'near';

/**
 * A clearance past its limit although every part that makes it is within its own: worn parts that may each be used, but not
 * together. Undefined for everything else, and where a part has no limit or no size: nothing is said of what is not known.
 */
export function goodPartsBadFit(assessment: Assessment, finding: Finding): string | undefined {
  if (finding.verdict !== 'out' || PROPERTIES.get(finding.property)?.made !== 'pair') return undefined;
  const parts = restsOn(finding);
  const judged = partsOf(assessment, parts);
  const known = parts.length > 1 && parts.every((part) => judged.some((one) => partOf(one) === part));
  if (!known || !judged.every(usable)) return undefined;
  const names = parts.map((part) => nameOf(assessment, part));
  return `Every part is within its own wear limit, the clearance is not: ${names.join(' and ')} are each good, together they are out`;
}

/** "bore of cylinder 7". */
function nameOf({ plan }: Assessment, part: string): string {
  const [id, at] = part.split('/');
  const feature = plan.features.find(({ kind }) => kind.id === id);
  const place = feature?.places.find((one) => one.id === at);
  return feature && place ? placeWords({ feature, place }) : part;
}

/** The reading to take for a finding: the first that is missing, the one that decides, else the first that formed it. */
export function whereToRead({ missing, again, size }: Finding): Slot | undefined {
  const keys = [...missing, ...(again ? [again.key] : []), ...(size?.parts.map((part) => part.key) ?? [])];
  return keys.find(isSlot);
}

const CATALOGUE_KEY = /^[a-z-]+\.[a-z-]+$/;

/** Keys of the bibliography as lines with their standing; an entry of the catalogue is named as such. */
export const sourceLines = (keys: readonly string[]): readonly string[] =>
  keys.map((key) => {
    const known = toSourceKey(key);
    if (known !== undefined) return describeSource(sourceOf(known));
    return CATALOGUE_KEY.test(key) ? `calculation ${key} of the catalogue` : key;
  });

/** Part of the engine to which a size belongs; a clearance stands with the part that runs in the other. */
export const areaOf = (property: string) =>
  AREAS.get(PROPERTIES.get(property)?.needs.at(-1) ?? property.split('.')[0] ?? '') ?? 'assembly';
