export { RunInScreen } from './run-in/run-in-screen.js';
export { ServiceScreen } from './service/service-screen.js';
export { StartScreen } from './start/start-screen.js';
export { TestsScreen } from './tests/tests-screen.js';
