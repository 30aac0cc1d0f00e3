import { type ReactNode, useEffect, useRef } from 'react';

interface ArmedProps {
  readonly children: ReactNode;
  /** Changes whenever the focus is to come back to the field. */
  readonly again?: string;
  /** False where what stands above the field is to stay on the screen of a phone. */
  readonly scroll?: boolean;
}

/** Puts the focus into the number field within as it appears, so that a gauge or a keyboard can type at once. */
export function Armed({ children, again, scroll = true }: ArmedProps) {
  const box = useRef<HTMLDivElement>(null);
  // The focus comes back after a touch on one of the choices around the field. A field that has it still stands where it stood.
  // biome-ignore lint/correctness/useExhaustiveDependencies: see above
  useEffect(() => {
    const field = box.current?.querySelector<HTMLElement>('[data-armed]');
    if (field && field === document.activeElement) return;
    field?.focus({ preventScroll: true });
    // A phone has room for the field and its keys, and for little else.
    if (scroll && window.innerWidth < 900) box.current?.scrollIntoView({ block: 'start' });
  }, [again, scroll]);
  return <div ref={box}>{children}</div>;
}
