import { useEffect, useState } from 'react';

/** The time of this device [ms], told anew after each `every` [ms], when something was recorded (`after`), and when the page is seen again. */
export function useNow(every: number, after: unknown): number {
  const [now, setNow] = useState(() => Date.now());
  // What was recorded a moment ago lies behind the time that was told last.
  // biome-ignore lint/correctness/useExhaustiveDependencies: see above
  useEffect(() => {
    const tell = () => setNow(Date.now());
    tell();
    const timer = window.setInterval(tell, every);
    document.addEventListener('visibilitychange', tell);
    return () => {
      window.clearInterval(timer);
      document.removeEventListener('visibilitychange', tell);
    };
  }, [every, after]);
  return now;
}
