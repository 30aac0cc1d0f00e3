export { DecisionScreen } from './decision-screen.js';
export { FitScreen } from './fit-screen.js';
