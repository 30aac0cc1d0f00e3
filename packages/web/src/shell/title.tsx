import { type ReactNode, useEffect, useRef } from 'react';

/** The heading of a screen. It takes the focus when the screen opens, so that keys and screen readers start there. */
export function Title({ children, tab }: { readonly children: ReactNode; readonly tab: string }) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    document.title = `${tab} · Gudgeon`;
    heading.current?.focus({ preventScroll: true });
  }, [tab]);
  return (
    <h1 ref={heading} tabIndex={-1}>
      {children}
    </h1>
  );
}
