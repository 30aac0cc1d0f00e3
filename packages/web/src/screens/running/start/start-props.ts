import type { StartView } from '@gudgeon/core/workbench';
import type { RunningDesk } from '../use-running.js';

/** What every part of the first start is given. */
export interface StartProps {
  readonly desk: RunningDesk;
  readonly view: StartView;
}
