export { ValvesScreen } from './valves-screen.js';
