import { asIfSure, type Tried } from '@gudgeon/core/workbench';
import { useMemo, useState } from 'react';
import { useRested } from '../../figures/index.js';

/** A hand that has not moved for this long rests [ms]. */
const REST = 160;

/** The value as it was when it last rested. */
export const useSettled = <T>(value: T): T => useRested(value, REST);

/** The last one that was there at all. */
export function useLastKnown<T>(value: T | undefined): T | undefined {
  const [kept, setKept] = useState(value);
  if (value !== undefined && value !== kept) setKept(value);
  return value ?? kept;
}

/**
 * A view that follows a moving slider within a frame: values at once, as if every figure were sure; doubts, verdicts with them and
 * chances when the hand rests. `make` must stay the same between two renderings unless it makes another view.
 */
export function useMovingView<V>(tried: Tried, make: (tried: Tried, moving: boolean) => V): V {
  const moving = useSettled(tried) !== tried;
  return useMemo(() => make(moving ? asIfSure(tried) : tried, moving), [moving, tried, make]);
}
