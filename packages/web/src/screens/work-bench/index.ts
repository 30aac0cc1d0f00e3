export { WorkBenchScreen } from './work-bench-screen.js';
