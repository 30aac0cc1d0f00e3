import type { WorkActView } from '@gudgeon/core/workbench';

const bare = (does: string): string => does.replace(/[.:]$/, '');

/** "Put the cap on, main 3" */
export const actName = ({ does, place }: Pick<WorkActView, 'does' | 'place'>): string =>
  place === '' ? bare(does) : `${bare(does)}, ${place}`;

/** "about 5 min": a usual length, never a limit. */
export const lengthWords = (minutes: number): string => {
  const whole = Math.max(1, Math.round(minutes));
  return whole < 90 ? `about ${whole} min` : `about ${Math.round(whole / 30) / 2} h`;
};

/** Acts that are left out together: the places of one worksheet, or of one rule. */
export function groupOf({ id, answer }: Pick<WorkActView, 'id' | 'answer'>): string {
  const end = answer === 'worksheet' ? id.indexOf('/') : id.indexOf('@');
  return end < 0 ? id : id.slice(0, end);
}

/** Places of the screens of the work. */
export const workPlace = (job: string): string => `/engine/${job}/work`;
export const operationPlace = (job: string, operation: string): string => `${workPlace(job)}/${operation}`;
export const benchPlace = (job: string, act?: string): string =>
  `/engine/${job}/bench${act === undefined ? '' : `/${encodeURIComponent(act)}`}`;
