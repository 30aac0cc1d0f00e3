import { useSyncExternalStore } from 'react';

/** Widest that a drawing is ever shown [CSS px]. */
const widest = 900;
const padding = 44;

function subscribe(tell: () => void): () => void {
  window.addEventListener('resize', tell);
  return () => window.removeEventListener('resize', tell);
}

/** Width at which a drawing stands on this screen, for lettering and touches that keep their size [CSS px]. */
export function useWidth(): number {
  return useSyncExternalStore(subscribe, () => Math.min(widest, window.innerWidth - padding));
}
