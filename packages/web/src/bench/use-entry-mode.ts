import { useCallback, useState } from 'react';

/** What types into the field: number keys on the screen, a keyboard, or a gauge that types and may send no Enter. */
export type EntryMode = 'pad' | 'keyboard' | 'gauge';
const place = 'gudgeon.entry-mode';
const MODES: readonly EntryMode[] = ['pad', 'keyboard', 'gauge'];

function kept(): EntryMode {
  const before = MODES.find((mode) => mode === stored());
  return before ?? (window.matchMedia('(pointer: coarse)').matches ? 'pad' : 'keyboard');
}
function stored(): string | null {
  try {
    return localStorage.getItem(place);
  } catch {
    return null;
  }
}

/** The way of keying on this device; kept for the next sheet. */
export function useEntryMode(): readonly [EntryMode, (mode: EntryMode) => void] {
  const [mode, setMode] = useState(kept);
  const choose = useCallback((next: EntryMode) => {
    setMode(next);
    try {
      localStorage.setItem(place, next);
    } catch {
      // Then it holds until the page is closed.
    }
  }, []);
  return [mode, choose];
}
