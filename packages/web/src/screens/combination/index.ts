export { CombinationScreen } from './combination-screen.js';
export { SubjectScreen } from './subject-screen.js';
