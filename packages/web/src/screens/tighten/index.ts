export { TightenScreen } from './tighten-screen.js';
