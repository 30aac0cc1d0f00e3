import type { StartView } from '@gudgeon/core/workbench';
import type { RunningDesk } from '../use-running.js';
import type { Go } from './use-go.js';

/** What every part of the first start is given. */
export interface StartProps {
  readonly desk: RunningDesk;
  readonly view: StartView;
}

/** And those of the start itself: where the go at the starter is. */
export interface GoProps extends StartProps {
  readonly go: Go;
}
