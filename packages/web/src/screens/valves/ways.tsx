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

/** The pedal's next Enter belongs to the new page, not to the button that led to it. */
function startAgainAtTop(): void {
  window.scrollTo(0, 0);
  document.querySelector<HTMLElement>('h1')?.focus({ preventScroll: true });
}

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
              startAgainAtTop();
            }}
          >
            {words}
          </button>
        ))}
    </nav>
  );
}
