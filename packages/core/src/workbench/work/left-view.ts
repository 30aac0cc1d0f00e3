import type { WorkStanding } from '../../plan/index.js';
import type { LeftView } from '../work-views.js';
import { givenOf } from './work-ground.js';

/** The card of whoever stopped last, line by line; undefined where work has gone on since, or none was written. */
export function leftView({ left }: WorkStanding): LeftView | undefined {
  if (left === undefined) return undefined;
  const { halfDone, loose, missing, uncovered, doubt } = left.data;
  const lines = [
    { about: 'half done', text: halfDone },
    { about: 'loose', text: loose },
    { about: 'missing', text: missing },
    { about: 'not oiled or covered', text: uncovered },
    { about: 'in doubt', text: doubt },
  ];
  return { ...givenOf(left), lines: lines.filter(({ text }) => text.trim() !== '') };
}
