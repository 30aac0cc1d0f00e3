import type { Point, Touch } from '@gudgeon/core/drawing';

const directions: Readonly<Record<string, Point>> = {
  ArrowRight: { x: 1, y: 0 },
  ArrowLeft: { x: -1, y: 0 },
  ArrowDown: { x: 0, y: 1 },
  ArrowUp: { x: 0, y: -1 },
};

/** The next place in the direction of an arrow key: the nearest one ahead, sideways distance counting double. */
export function neighbour(touches: readonly Touch[], from: Touch, key: string): Touch | undefined {
  const way = directions[key];
  if (!way) return undefined;
  let best: { readonly touch: Touch; readonly cost: number } | undefined;
  for (const touch of touches) {
    const dx = touch.centre.x - from.centre.x;
    const dy = touch.centre.y - from.centre.y;
    const ahead = dx * way.x + dy * way.y;
    if (ahead <= 1e-6) continue;
    const cost = ahead + 2 * Math.abs(dx * way.y - dy * way.x);
    if (!best || cost < best.cost) best = { touch, cost };
  }
  return best?.touch;
}

/** The place that a finger meant: the nearest within its reach or the finger's own width [figure millimetres]. */
export function touchAt(touches: readonly Touch[], at: Point, finger: number): Touch | undefined {
  let best: { readonly touch: Touch; readonly away: number } | undefined;
  for (const touch of touches) {
    const away = Math.hypot(touch.centre.x - at.x, touch.centre.y - at.y);
    if (away <= Math.max(touch.reach, finger) && (!best || away < best.away)) best = { touch, away };
  }
  return best?.touch;
}
