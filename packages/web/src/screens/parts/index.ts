export { PartsScreen } from './parts-screen.js';
