import { listed } from './compose.js';
import type { CrankPose } from './crank-pose.js';
import { within } from './geometry.js';

const NEAR = 0.05;
/** As long as the sentence gets: figures keep room for it, so that the page stands still while the crank turns. */
export const LONGEST_SENTENCE = 'next firing TDC: 16, in 719.9\u00b0';

/** "1 at firing TDC", or the next cylinder to get there and how far on. */
export function firingSentence({ poses }: CrankPose): string {
  const known = [...poses.values()].flatMap((pose) =>
    pose.phase === undefined ? [] : [{ cylinder: pose.cylinder, to: within(720 - pose.phase, 720) }],
  );
  if (known.length === 0) return 'firing order not stated';
  const now = known.filter((one) => one.to < NEAR || one.to > 720 - NEAR).map((one) => one.cylinder);
  if (now.length > 0) return `${listed(now)} at firing TDC`;
  const next = known.reduce((least, one) => (one.to < least.to ? one : least));
  return `next firing TDC: ${next.cylinder}, in ${Math.round(next.to * 10) / 10}\u00b0`;
}
