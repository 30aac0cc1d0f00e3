import { formatQuantity } from '../../../quantity/index.js';
import type { CamEvents } from '../events.js';

/** Events in words: a negative one is said from the other side, so that nobody meets "-5 after top". */
export function eventWords(events: CamEvents): string {
  return [
    `intake opens ${side(events.intakeOpens, 'before', 'after')} top`,
    `intake closes ${side(events.intakeCloses, 'after', 'before')} bottom`,
    `exhaust opens ${side(events.exhaustOpens, 'before', 'after')} bottom`,
    `exhaust closes ${side(events.exhaustCloses, 'after', 'before')} top`,
  ].join('; ');
}

function side(angle: number, usual: string, other: string): string {
  const shown = formatQuantity('angle', Math.abs(angle), 'deg', 2).replace(/\.?0+ /, ' ');
  return `${shown} ${angle < -ROUNDING ? other : usual}`;
}
const ROUNDING = 1e-9;
