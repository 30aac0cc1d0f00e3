export { type DataFault, ENTRY_KINDS, isEntryKind, readEntryData, readEnvelope, type ShapeFault } from './read-data.js';
