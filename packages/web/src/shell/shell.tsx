import { memo, type ReactNode } from 'react';
import { Link } from 'wouter';
import { usePerson } from '../log/index.js';

interface ShellProps {
  /** Where the person is, e.g. the engine's name. */
  readonly place?: ReactNode;
  readonly status?: ReactNode;
  readonly children: ReactNode;
}

/** The frame of every screen: home, place, person, and what has been copied. */
export function Shell({ place, status, children }: ShellProps) {
  return (
    <div className="shell">
      <Bar place={place} />
      {status}
      <main id="main" className="shell-main" tabIndex={-1}>
        {children}
      </main>
    </div>
  );
}

/** The same on every entry of a screen, so it is not drawn anew with each. */
const Bar = memo(function Bar({ place }: { readonly place: ReactNode }) {
  const person = usePerson();
  return (
    <>
      <a className="shell-skip" href="#main">
        Go to the work
      </a>
      <header className="shell-bar">
        <Link href="/" className="shell-home" aria-label="Gudgeon, all engines">
          <Mark />
          <span className="shell-home-word">Gudgeon</span>
        </Link>
        <span className="shell-place">{place}</span>
        <Link href="/device" className="shell-device">
          {person || 'Who works here?'}
        </Link>
      </header>
    </>
  );
});

/** A gudgeon pin seen end on, on its centre lines. */
function Mark() {
  return (
    <svg viewBox="0 0 64 64" aria-hidden="true" focusable="false" fill="none" stroke="currentColor">
      <circle cx="32" cy="32" r="19" strokeWidth="4" />
      <circle cx="32" cy="32" r="10" strokeWidth="4" />
      <path d="M3 32h11M50 32h11M32 3v11M32 50v11" strokeWidth="2.5" />
    </svg>
  );
}
