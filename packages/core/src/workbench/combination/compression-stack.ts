/** The stack of one cylinder with the words that stand beside each part. */
import { type CylinderStack, figure, PART_NAMES, type RoomPart } from '../../assess/index.js';
import type { StackedPart, StackShown } from '../../drawing/combination/index.js';
import type { ShownIn } from '../measure-views.js';
import { shownQuantity } from './shown.js';
import type { Tried } from './tried.js';

/** Without these there is no ratio: they keep their place in the drawing while they are not known. */
const NEEDED: readonly RoomPart[] = ['chamber', 'gasket', 'deck', 'piston'];
const ORDER = Object.keys(PART_NAMES) as readonly RoomPart[];

export function stackShown(tried: Tried, stack: CylinderStack, deck: number | undefined, shownIn: ShownIn): StackShown {
  const { cylinder, parts, clearance, swept } = stack;
  const downfilled = parts.some(({ part }) => part === 'piston') && !parts.some(({ part }) => part === 'deck');
  const shown = ORDER.flatMap((part): StackedPart | readonly StackedPart[] => {
    const known = parts.find((one) => one.part === part);
    if (known === undefined && (!NEEDED.includes(part) || (part === 'deck' && downfilled))) return [];
    const name = known?.name ?? PART_NAMES[part];
    if (known === undefined) return { part, name, words: 'not known' };
    const height =
      part === 'gasket' ? figure(tried, 'gasket-thickness', cylinder)?.value : part === 'deck' ? deck : undefined;
    return {
      part,
      name,
      volume: known.volume,
      words: [
        ...(height === undefined ? [] : [shownQuantity('length', height, shownIn)]),
        shownQuantity('volume', known.volume, shownIn),
        ...(known.share === undefined ? [] : [`${(known.share * 100).toFixed(1)} %`]),
      ].join(', '),
    };
  });
  const whole =
    clearance === undefined ? 'the whole is not known' : `together ${shownQuantity('volume', clearance, shownIn)}`;
  const sweeps = swept === undefined ? '' : `; swept ${shownQuantity('volume', swept, shownIn)}`;
  return { title: `Cylinder ${cylinder}, piston at the top`, parts: shown, whole: `${whole}${sweeps}` };
}
