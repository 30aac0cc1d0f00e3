export type { SheetFault } from './fault.js';
export { loadSheet } from './load.js';
export { sheetJsonSchema } from './schema.js';
