import { memo } from 'react';
import { Link, useLocation } from 'wouter';
import { useAway } from '../bench/index.js';
import { usePerson } from '../log/index.js';
import { useWayBack, type WayBack } from './way-back.js';

/** On every screen of a job but the one it leads to: back to the work that the person left for a piece of it. */
export const BackStrip = memo(function BackStrip({ job }: { readonly job: string }) {
  const way = useWayBack(job);
  const [at] = useLocation();
  return way && at !== way.left && !at.startsWith(`${way.left}/`) ? <Strip way={way} /> : null;
});

function Strip({ way }: { readonly way: WayBack }) {
  // A hand that works here is at the work: nobody is asked there why the bench stood still meanwhile.
  useAway(way.left, usePerson());
  return (
    <Link href={way.to} className="back-strip">
      ← {way.words}
    </Link>
  );
}
