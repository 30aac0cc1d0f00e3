import { type ReactNode, useEffect, useRef } from 'react';

/** Puts the focus into the number field within as it appears, so that a gauge or a keyboard can type at once. */
export function Armed({ children }: { readonly children: ReactNode }) {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    box.current?.querySelector<HTMLElement>('[data-armed]')?.focus({ preventScroll: true });
  }, []);
  return <div ref={box}>{children}</div>;
}
