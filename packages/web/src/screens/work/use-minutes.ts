import { useCallback, useState } from 'react';

/** Minutes that a person has; undefined for no limit. */
export const MINUTES = [15, 30, 60, undefined] as const;
export type Minutes = (typeof MINUTES)[number];
const place = 'gudgeon.minutes';

function kept(): Minutes {
  try {
    const text = localStorage.getItem(place);
    return MINUTES.find((one) => String(one) === text);
  } catch {
    return undefined;
  }
}

/** The time there is, chosen once and kept on this device. */
export function useMinutes(): readonly [Minutes, (minutes: Minutes) => void] {
  const [minutes, setMinutes] = useState(kept);
  const choose = useCallback((next: Minutes) => {
    setMinutes(next);
    try {
      localStorage.setItem(place, String(next));
    } catch {
      // Then it holds until the page is closed.
    }
  }, []);
  return [minutes, choose];
}

/** What a core function takes: nothing where there is no limit. */
export const withinMinutes = (minutes: Minutes): { readonly minutes?: number } =>
  minutes === undefined ? {} : { minutes };
