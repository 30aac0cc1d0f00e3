export { RecordScreen } from './record-screen.js';
