export { RegistersScreen } from './registers-screen.js';
