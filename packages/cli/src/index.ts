export { BadInput, type Io, readJson, readText } from './io.js';
export { commandHelp, run } from './main.js';
export { nodeIo } from './node-io.js';
