export { EngineScreen } from './engine-screen.js';
