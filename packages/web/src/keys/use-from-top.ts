import { useEffect } from 'react';

/** A new step begins at the top of the screen, wherever the last one was left. */
export function useFromTop(step: string): void {
  // The step is what changes; the place to go to is always the same.
  // biome-ignore lint/correctness/useExhaustiveDependencies: see above
  useEffect(() => {
    window.scrollTo(0, 0);
  }, [step]);
}
