import { asIfSure, type Tried } from '@gudgeon/core/workbench';
import { useEffect, useMemo, useState } from 'react';

/** A hand that has not moved for this long rests [ms]. */
const REST = 160;

/** The value as it was when it last rested. */
export function useSettled<T>(value: T): T {
  const [settled, setSettled] = useState(value);
  useEffect(() => {
    const timer = window.setTimeout(() => setSettled(value), REST);
    return () => window.clearTimeout(timer);
  }, [value]);
  return settled;
}

/**
 * A view that follows a moving slider within a frame: values at once, as if every figure were sure; doubts, verdicts with them and
 * chances when the hand rests. `make` must stay the same between two renderings unless it makes another view.
 */
export function useMovingView<V>(tried: Tried, make: (tried: Tried) => V): V {
  const rests = useSettled(tried) === tried;
  return useMemo(() => make(rests ? tried : asIfSure(tried)), [rests, tried, make]);
}
