export { Degreeing } from './degreeing.js';
export { Motion } from './motion.js';
export { Rockers } from './rockers.js';
export { Timing } from './timing.js';
export { ValveRoom } from './valve-room.js';
