export { DeviceScreen } from './device-screen.js';
