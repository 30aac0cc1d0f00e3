export { GasketScreen } from './gasket-screen.js';
