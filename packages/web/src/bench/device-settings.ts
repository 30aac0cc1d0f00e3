import { useSyncExternalStore } from 'react';

/** Choices of this device, kept in its own storage; they change what is shown and heard, never what is stored. */
export interface DeviceSettings {
  readonly theme: 'white' | 'black';
  readonly tones: boolean;
  readonly speech: boolean;
  readonly awake: boolean;
  /** Unit in which lengths are shown; a gauge keeps its own. */
  readonly length: 'mm' | 'in';
}
const place = 'gudgeon.settings';
const usual: DeviceSettings = { theme: 'white', tones: true, speech: false, awake: true, length: 'mm' };
const listeners = new Set<() => void>();
let now: DeviceSettings = read();

function read(): DeviceSettings {
  try {
    return { ...usual, ...(JSON.parse(localStorage.getItem(place) ?? '{}') as Partial<DeviceSettings>) };
  } catch {
    return usual;
  }
}

export const deviceSettings = (): DeviceSettings => now;

export function changeSettings(change: Partial<DeviceSettings>): void {
  now = { ...now, ...change };
  try {
    localStorage.setItem(place, JSON.stringify(now));
  } catch {
    // The choice then holds until the page is closed.
  }
  document.documentElement.dataset.theme = now.theme;
  for (const tell of listeners) tell();
}

export function useSettings(): DeviceSettings {
  return useSyncExternalStore((tell) => {
    listeners.add(tell);
    return () => listeners.delete(tell);
  }, deviceSettings);
}
