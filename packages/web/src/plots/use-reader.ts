import { type Plot, placesAlong } from '@gudgeon/core/drawing/plots';
import { type KeyboardEvent, useState } from 'react';

/** Steps with which a reader crosses a long curve by arrow keys; Shift takes every point. */
const STRIDES = 40;

/** Where on a plot a person reads, by finger and by keyboard. */
export function useReader(plot: Plot) {
  // All places are gathered for a hand that reads, not with every step of a slider.
  const begin = plot.marks.find((mark) => mark.y !== undefined)?.x ?? firstPlace(plot);
  const [asked, setAsked] = useState<number>();
  const at = asked === undefined ? begin : Math.min(Math.max(asked, plot.x.from), plot.x.to);

  const goTo = (x: number) => setAsked(nearest(placesAlong(plot), x) ?? x);
  const onKeyDown = (event: KeyboardEvent) => {
    const places = placesAlong(plot);
    const here = places.indexOf(nearest(places, at) ?? at);
    const next = places[placeAfter(event.key, here, places.length, event.shiftKey)];
    if (next === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    setAsked(next);
  };
  return { at, goTo, onKeyDown };
}

const firstPlace = ({ curves, x }: Plot): number => {
  const starts = curves.flatMap(({ points }) => points[0]?.[0] ?? []);
  return starts.length === 0 ? x.from : Math.min(...starts);
};

/** Number of the place to which a key leads; below zero for a key that leads nowhere. */
function placeAfter(key: string, here: number, count: number, fine: boolean): number {
  const stride = fine ? 1 : Math.max(1, Math.round(count / STRIDES));
  if (key === 'Home') return 0;
  if (key === 'End') return count - 1;
  if (key === 'ArrowRight' || key === 'ArrowUp') return Math.min(here + stride, count - 1);
  if (key === 'ArrowLeft' || key === 'ArrowDown') return Math.max(here - stride, 0);
  return -1;
}

/** Nearest of rising numbers; undefined of none. */
function nearest(places: readonly number[], x: number): number | undefined {
  let [low, high] = [0, places.length - 1];
  if (high < 0) return undefined;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (places[middle]! <= x) low = middle;
    else high = middle;
  }
  return Math.abs(places[low]! - x) <= Math.abs(places[high]! - x) ? places[low] : places[high];
}
