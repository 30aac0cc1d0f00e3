/** A finding as a row or tile: value, doubt, limit with its origin, verdict, and what explains it. */
import { type Finding, type Held, PROPERTIES, type VerdictWord } from '../assess/index.js';
import { sourceLines, whereToRead } from './finding-words.js';
import type { FindingView, ShownIn } from './measure-views.js';
import { shownFigure, shownWindow } from './shown-figures.js';

/**
 * The limit that decides: the wear limit where one is printed, unless the size is near or past that end of the new range which wear
 * leaves open; else the new range.
 */
export function deciding(finding: Finding): Held | undefined {
  const { held, verdict, size } = finding;
  const worn = held.find((one) => one.against === 'wear');
  const fresh = held.find((one) => one.against === 'new');
  if (worn !== undefined && size !== undefined && worn.verdict === verdict)
    return towardWear(finding, worn, size.value);
  if (worn === undefined || fresh === undefined || size === undefined) return worn ?? fresh;
  const { low, high } = fresh.window;
  const end = (nearEnd: 'low' | 'high', distance: number): Held => ({ ...fresh, verdict, nearEnd, distance });
  if (worn.window.low === undefined && low !== undefined) return end('low', size.value - low);
  if (worn.window.high === undefined && high !== undefined) return end('high', high - size.value);
  return worn;
}

/**
 * How far a part may still wear: a hole to the high end of its wear window, a shaft to the low one. The other end, from which it was made,
 * matters only when the size is near or past it.
 */
function towardWear({ property }: Finding, worn: Held, value: number): Held {
  const sense = PROPERTIES.get(property)?.sense;
  const { low, high } = worn.window;
  if (worn.verdict !== 'in') return worn;
  if (sense === 'hole' && high !== undefined) return { ...worn, nearEnd: 'high', distance: high - value };
  if (sense === 'shaft' && low !== undefined) return { ...worn, nearEnd: 'low', distance: value - low };
  return worn;
}

/** Worst first. Not measured is worse than good: no data never counts as in. */
const ORDER: readonly VerdictWord[] = ['out', 'check again', 'near', 'no data', 'in'];
/** The worst of several verdicts; `no data` of none. */
export const worstVerdict = (verdicts: readonly VerdictWord[]): VerdictWord =>
  ORDER.find((verdict) => verdicts.includes(verdict)) ?? 'no data';

/** Share of a doubt as whole per cent. */
const share = (part: number): string => `${Math.round(part * 100)} %`;

function distanceWords({ measured }: Finding, held: Held, shownIn: ShownIn): string | undefined {
  if (held.distance === undefined) return undefined;
  const figure = shownFigure(measured, Math.abs(held.distance), shownIn);
  const outside = held.verdict === 'out';
  const beyond = held.nearEnd === 'low' ? 'below' : 'above';
  const against = held.against === 'wear' ? 'wear limit' : `${held.nearEnd === 'low' ? 'low' : 'high'} limit`;
  return outside ? `${figure} ${beyond} the ${against}` : `${figure} from the ${against}`;
}

/** What must hold of a limit besides its figures: the printed form where it is no plain size. */
function wearWords(finding: Finding, held: Pick<Held, 'window' | 'limit'>, shownIn: ShownIn): string {
  const window = shownWindow(finding.measured, held.window, shownIn);
  const printed = held.limit.wear;
  return printed?.form === 'change-from-new' ? `${window} (${printed.text} from new)` : window;
}

/**
 * Turns a finding into what a screen shows. Values are in the device's unit; the stored ones are not touched. `words`: what is said of
 * it where more than the finding itself is known.
 */
export function findingView(finding: Finding, shownIn: ShownIn, words = finding.words): FindingView {
  const { size, measured, again, advice } = finding;
  const limits = size === undefined ? (finding.ahead ?? []) : finding.held;
  const fresh = limits.find((one) => one.against === 'new');
  const worn = limits.find((one) => one.against === 'wear');
  const held = deciding(finding);
  const distance = size && held && distanceWords(finding, held, shownIn);
  return {
    key: finding.key,
    property: finding.property,
    title: finding.title,
    place: finding.placeName,
    verdict: finding.verdict,
    value: size === undefined ? '' : shownFigure(measured, size.value, shownIn),
    doubt: size?.u === undefined ? '' : `±${shownFigure(measured, 2 * size.u, shownIn)}`,
    limit: fresh === undefined ? '' : shownWindow(measured, fresh.window, shownIn),
    ...(worn && { wearLimit: wearWords(finding, worn, shownIn) }),
    origin: (held ?? worn ?? fresh)?.limit.from.text ?? '',
    ...(distance !== undefined && { distance }),
    ...(held?.nearEnd !== undefined && { nearEnd: held.nearEnd }),
    words: advice === undefined ? words : words.replace(`; ${advice.words}`, ''),
    ...(advice && {
      advice: { words: advice.words.replace(/, as advice$/, ''), source: sourceLines([advice.source]).join('; ') },
    }),
    ...(again && { again: { slot: again.key, words: `${again.name}: ${share(again.share)} of the doubt is its` } }),
    // Worked out when a number is opened: on a sheet of a hundred sizes nobody opens more than a few.
    get working() {
      return size?.working ?? [];
    },
    get sources() {
      return sourceLines(size?.sources ?? []);
    },
    get cautions() {
      return size?.cautions ?? [];
    },
    get slot() {
      return whereToRead(finding);
    },
  };
}
