export { OperationScreen } from './operation-screen.js';
export { WorkScreen } from './work-screen.js';
