export { Home } from './home.js';
