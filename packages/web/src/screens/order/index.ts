export { OrderScreen } from './order-screen.js';
