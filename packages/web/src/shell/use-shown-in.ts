import type { ShownIn } from '@gudgeon/core/workbench';
import { useMemo } from 'react';
import { useSettings } from '../bench/index.js';
import { localTime } from '../log/index.js';

/** How this device shows figures. */
export function useShownIn(): ShownIn {
  const { length } = useSettings();
  return useMemo(() => ({ length }), [length]);
}

/** Today by the clock on this device, `2026-11-25`. */
export const today = (): string => localTime(new Date()).slice(0, 10);
