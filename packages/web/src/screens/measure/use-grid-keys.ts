import { useEffect, useRef } from 'react';

export type Step = 'up' | 'down' | 'left' | 'right';
const STEPS: Readonly<Record<string, Step>> = {
  ArrowUp: 'up',
  ArrowDown: 'down',
  ArrowLeft: 'left',
  ArrowRight: 'right',
};

/** Whether the arrow belongs to what has the focus: another field, a drawing, or digits that are being keyed. */
function taken(target: EventTarget | null): boolean {
  if (!(target instanceof Element)) return false;
  if (target instanceof HTMLInputElement && target.dataset.armed !== undefined) return target.value !== '';
  return target.closest('input, textarea, select, [data-arrows], [role="slider"]') !== null;
}

/** Arrow keys go from cell to cell wherever the focus is, unless digits are half keyed: they must not land in another cell. */
export function useGridKeys(go: (step: Step) => void): void {
  const current = useRef(go);
  useEffect(() => {
    current.current = go;
  });
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const step = STEPS[event.key];
      if (!step || event.ctrlKey || event.altKey || event.metaKey || event.defaultPrevented || taken(event.target))
        return;
      event.preventDefault();
      current.current(step);
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, []);
}
