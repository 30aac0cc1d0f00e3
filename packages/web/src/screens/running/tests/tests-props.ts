import type { CylinderTestsView } from '@gudgeon/core/workbench';
import type { RunningDesk } from '../use-running.js';

export interface TestsProps {
  readonly desk: RunningDesk;
  readonly view: CylinderTestsView;
}
