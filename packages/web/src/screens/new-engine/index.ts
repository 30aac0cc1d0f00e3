export { NewEngine } from './new-engine.js';
