import { useSyncExternalStore } from 'react';

/** Below this a plan stands alone above the step; above it a plan lies beside the step [CSS px]. */
const twoColumns = 900;
const frame = 44;

function subscribe(tell: () => void): () => void {
  window.addEventListener('resize', tell);
  return () => window.removeEventListener('resize', tell);
}

/** Width at which a drawing stands on this screen [CSS px], for lettering and touches that keep their size. */
export function useShownWidth(): number {
  return useSyncExternalStore(subscribe, () =>
    window.innerWidth < twoColumns
      ? Math.min(560, window.innerWidth - frame)
      : Math.min(620, window.innerWidth / 2 - frame),
  );
}

/** True where there is room for two columns. */
export const useWide = (): boolean => useSyncExternalStore(subscribe, () => window.innerWidth >= twoColumns);

/** How a plan of a head lies: lengthwise where there is room beside the step, as its drawing chooses on a phone. */
export function usePlan(): { readonly shownWidth: number; readonly front?: 'left' } {
  const shownWidth = useShownWidth();
  const wide = useWide();
  return wide ? { shownWidth, front: 'left' } : { shownWidth };
}
