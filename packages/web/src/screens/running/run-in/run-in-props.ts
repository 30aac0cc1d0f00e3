import type { RunInView } from '@gudgeon/core/workbench';
import type { RunningDesk } from '../use-running.js';

export interface RunInProps {
  readonly desk: RunningDesk;
  readonly view: RunInView;
}
