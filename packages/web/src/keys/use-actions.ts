import { useCallback, useEffect, useRef } from 'react';
import type { Action } from './action.js';
import { bounceGuard } from './bounce.js';

/** One for the whole page: a bounce often lands on the next step, which is another component with the same action. */
const guard = bounceGuard();

/** True when an action of this name may run now; false for a bounce of hand or pedal. `meant`: something was keyed since. */
export const notABounce = (name: string, meant = false): boolean => guard.allows(name, performance.now(), meant);

const typingPlaces = 'input, textarea, select, [contenteditable="true"]';
const pressable = 'button, a[href], summary, [role="button"], [role="slider"]';

/** Whether the browser itself will do something with this key at this place; then the screen leaves it alone. */
function takenByFocus(event: KeyboardEvent): boolean {
  const at = event.target;
  if (!(at instanceof Element)) return false;
  if (at.closest(typingPlaces)) return event.key !== 'Escape';
  const pressing = event.key === 'Enter' || event.key === ' ';
  return (
    at.closest(pressable) !== null &&
    (pressing || (event.key.startsWith('Arrow') && at.closest('[data-arrows]') !== null))
  );
}

/**
 * Gives a screen its keys. Returns `run(name)`, through which its buttons go too, so that a bounce is refused in the
 * same way whichever way it came.
 */
export function useActions(actions: readonly Action[]): (name: string) => void {
  const current = useRef(actions);
  useEffect(() => {
    current.current = actions;
  });
  const run = useCallback((name: string) => {
    const action = current.current.find((a) => a.name === name);
    if (!action?.available || !notABounce(name)) return;
    action.run();
  }, []);
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.repeat || event.ctrlKey || event.altKey || event.metaKey || event.defaultPrevented) return;
      const action = current.current.find((a) => a.available && a.keys.includes(event.key));
      if (!action || takenByFocus(event)) return;
      event.preventDefault();
      run(action.name);
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [run]);
  return run;
}
