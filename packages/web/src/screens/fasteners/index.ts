export { FastenersScreen } from './fasteners-screen.js';
