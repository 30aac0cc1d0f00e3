import type { MouseEvent } from 'react';

/** After a touch the button gives the focus back, so that the pedal's Enter goes to the step and not to it again. */
export function letGo(event: MouseEvent<HTMLElement>): void {
  if (event.detail > 0) event.currentTarget.blur();
}
