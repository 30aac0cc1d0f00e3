export { cylinderTestsView } from './cylinder-tests-view.js';
export { ignitionView } from './ignition-view.js';
export {
  type LeakageWish,
  proposeCompression,
  proposeGauge,
  proposeLeakage,
  proposeLineDone,
  proposeStart,
} from './propose-running.js';
export { remindersView } from './reminders-view.js';
export { runInView } from './run-in-view.js';
export { startView } from './start-view.js';
