import { Link } from 'wouter';
import { startPlace } from '../places.js';

const NAMES = [
  ['ready', 'Ready to start?'],
  ['oil', 'Oil at the valves'],
  ['ignition', 'Ignition'],
  ['go', 'Start it'],
] as const;
export type PartName = (typeof NAMES)[number][0];

export const partNamed = (name: string | undefined): PartName => NAMES.find(([one]) => one === name)?.[0] ?? 'ready';

/** The parts of this screen; the list is where it begins. */
export function Parts({ job, part }: { readonly job: string; readonly part: PartName }) {
  return (
    <nav className="valve-ways not-printed" aria-label="Parts of the first start">
      {NAMES.map(([name, words]) => (
        <Link
          key={name}
          className="button"
          href={startPlace(job, name === 'ready' ? undefined : name)}
          aria-current={name === part ? 'page' : undefined}
        >
          {words}
        </Link>
      ))}
    </nav>
  );
}
