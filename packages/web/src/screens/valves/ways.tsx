export type WayName = 'stops' | 'here' | 'one' | 'shims' | 'margin';

interface WaysProps {
  readonly way: WayName;
  readonly shims: boolean;
  readonly go: (way: WayName) => void;
}
const names: readonly (readonly [WayName, string])[] = [
  ['stops', 'Stop by stop'],
  ['here', 'The crank is here: what may I set?'],
  ['one', 'One valve at a time'],
  ['shims', 'Shims'],
  ['margin', 'Margin'],
];

/** The ways to go about it; the plan of stops is the usual one. */
export function Ways({ way, shims, go }: WaysProps) {
  return (
    <nav className="valve-ways not-printed" aria-label="Ways to set the valves">
      {names
        .filter(([name]) => name !== 'shims' || shims)
        .map(([name, words]) => (
          <button
            key={name}
            type="button"
            className="button"
            aria-current={name === way ? 'page' : undefined}
            onClick={() => {
              go(name);
              window.scrollTo(0, 0);
            }}
          >
            {words}
          </button>
        ))}
    </nav>
  );
}
