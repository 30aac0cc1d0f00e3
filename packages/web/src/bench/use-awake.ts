import { useEffect, useState } from 'react';
import { useSettings } from './device-settings.js';

/** Keeps the screen on while a bench view is open. Returns a plain sentence where this is not possible. */
export function useAwake(): string | undefined {
  const { awake } = useSettings();
  const possible = window.isSecureContext && 'wakeLock' in navigator;
  const [refused, setRefused] = useState(false);
  useEffect(() => {
    if (!awake || !possible) return;
    let lock: WakeLockSentinel | undefined;
    const ask = () => {
      if (document.visibilityState !== 'visible') return;
      navigator.wakeLock.request('screen').then(
        (got) => {
          lock = got;
        },
        () => setRefused(true),
      );
    };
    ask();
    document.addEventListener('visibilitychange', ask);
    return () => {
      document.removeEventListener('visibilitychange', ask);
      void lock?.release();
    };
  }, [awake, possible]);
  if (!awake || (possible && !refused)) return undefined;
  return 'The screen may go dark by itself here. Lengthen the screen time-out in the settings of this device.';
}
