import { type RefObject, useEffect, useState } from 'react';
import { useRested } from './use-rested.js';

/** So far outside of the window an element counts as in sight, so that it is there when a hand scrolls to it. */
const NEAR = '200px 0px';
/** What is out of sight follows when it has been left alone for so long [ms]. */
const REST = 240;

/** Whether an element is on the screen or close to it. */
export function useInSight(element: RefObject<Element | null>): boolean {
  const [inSight, setInSight] = useState(true);
  useEffect(() => {
    const node = element.current;
    if (node === null) return;
    const watcher = new IntersectionObserver((seen) => setInSight(seen.some(({ isIntersecting }) => isIntersecting)), {
      rootMargin: NEAR,
    });
    watcher.observe(node);
    return () => watcher.disconnect();
  }, [element]);
  return inSight;
}

/** The value at once while it is in sight; out of sight as it was when it last rested, because nobody sees it move. */
export function useWhenSeen<T>(value: T, inSight: boolean): T {
  const rested = useRested(value, REST);
  return inSight ? value : rested;
}
