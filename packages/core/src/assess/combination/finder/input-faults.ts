/** What is wrong with an input before anything is searched, and the words for it. */
import { sizeValue } from './choices.js';
import type { FinderFault, FinderInput } from './model.js';

/** First number of a plain value that is not finite, with where it stands. */
function notFinite(given: unknown, where: string): string | undefined {
  if (typeof given === 'number') return Number.isFinite(given) ? undefined : where;
  if (given === null || typeof given !== 'object') return undefined;
  for (const [key, own] of Object.entries(given)) {
    const found = notFinite(own, Array.isArray(given) ? `${where} ${Number(key) + 1}` : `${where}.${key}`);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** First fault of an input that shows without computing. */
export function inputFault({ fixed, offer, wanted, keep }: FinderInput): FinderFault | undefined {
  const where = notFinite(fixed, 'fixed') ?? notFinite(offer, 'offer') ?? notFinite(wanted, 'wanted');
  if (where !== undefined) return { code: 'not-a-number', where };
  if (!Number.isInteger(keep)) return { code: 'not-a-number', where: 'keep' };
  if (fixed.cylinders.length === 0 || !(sizeValue(fixed.stroke) > 0)) return { code: 'no-cylinders' };
  for (const [what, window] of Object.entries({
    'compression ratio': wanted.ratio,
    quench: wanted.quench,
    preload: wanted.preload,
  })) {
    const { low, high } = window ?? {};
    if (low !== undefined && high !== undefined && low > high) return { code: 'window-upside-down', what, low, high };
  }
  const shift = wanted.intakeShift;
  if (shift !== undefined && shift < 0)
    return { code: 'window-upside-down', what: 'intake face off its fit', low: -shift, high: shift };
  return undefined;
}

/** One clear line: what is wrong, where, and what is valid. */
export function describeFinderFault(fault: FinderFault): string {
  switch (fault.code) {
    case 'not-a-number':
      return `${fault.where}: not a number; finite numbers are valid`;
    case 'no-options':
      return `${fault.choice}: the list is empty; name at least one, or leave the choice out`;
    case 'steps-unusable':
      return `${fault.choice}: the steps cannot be made; a step above 0, an end not below the start and at most ${fault.most} steps are valid`;
    case 'window-upside-down':
      return `${fault.what}: the lower limit ${fault.low} is above the upper limit ${fault.high}`;
    case 'no-cylinders':
      return 'at least one cylinder and a stroke above 0 are needed';
    case 'missing':
      return fault.missing.map(({ what, for: purpose }) => `${what} is needed for ${purpose}`).join('; ');
    case 'lobe-unusable':
      return `${fault.valve} lobe: no lobe has these durations or readings`;
    case 'crank-cannot-turn':
      return 'the rod is too short for this stroke: the crank could not turn';
    case 'unsearchable':
      return fault.text;
  }
}
