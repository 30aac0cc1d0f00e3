export { BadInput, type Io, readJson, readText } from './io.js';
export { run } from './main.js';
export { nodeIo } from './node-io.js';
