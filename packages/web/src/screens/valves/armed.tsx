import { type ReactNode, useEffect, useRef } from 'react';

/** Puts the focus into the number field within as it appears, so that a gauge or a keyboard can type at once. */
export function Armed({ children, again }: { readonly children: ReactNode; readonly again?: string }) {
  const box = useRef<HTMLDivElement>(null);
  // The focus comes back after a touch on one of the choices around the field.
  // biome-ignore lint/correctness/useExhaustiveDependencies: see above
  useEffect(() => {
    box.current?.querySelector<HTMLElement>('[data-armed]')?.focus({ preventScroll: true });
    // A phone has room for the field and its keys, and for little else.
    if (window.innerWidth < 900) box.current?.scrollIntoView({ block: 'start' });
  }, [again]);
  return <div ref={box}>{children}</div>;
}
