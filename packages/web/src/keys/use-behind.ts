import { useEffect, useState } from 'react';
import { afterFrame } from './after-frame.js';

/** The value as it was, until a frame has shown what else follows from the new one: for what may come second. */
export function useBehind<T>(value: T): T {
  const [shown, show] = useState<{ readonly value: T }>({ value });
  useEffect(() => afterFrame(() => show((before) => (before.value === value ? before : { value }))), [value]);
  return shown.value;
}
