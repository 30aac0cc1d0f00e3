export { canonicalText } from './canonical.js';
export { type ChainBreak, type ChainsHeld, headCode, verifyChain } from './chain.js';
export type { FigureUnit, StatedReading } from './combination-data.js';
export { FIGURE_UNITS } from './combination-units.js';
export { type Command, type Decision, decide, type NewEntry, type Refusal } from './decide/index.js';
export type {
  EntryData,
  EntryKind,
  EntryOf,
  Envelope,
  KnownEntry,
  PartKind,
  Reading,
  StoredEnvelope,
} from './entry.js';
export {
  foldMeasuring,
  type KeptInstrument,
  type MeasuredReading,
  type Measuring,
  placeOfSlot,
  type StandardRead,
  type TakenDecision,
} from './measuring.js';
export type {
  GaugeKind,
  MeasuredKind,
  RecordedFigure,
  RecordedOrder,
  RecordedPurchase,
  RecordedWindow,
} from './measuring-data.js';
export { inOrder, type LogEntry } from './order.js';
export { MOST_PHOTO_BYTES, PHOTO_TYPES, type PhotoTaken, type PhotoType } from './photo-data.js';
export { photoTypeOf } from './photo-type.js';
export {
  type DataFault,
  ENTRY_KINDS,
  isEntryKind,
  readEntryData,
  readEnvelope,
  type ShapeFault,
} from './reading/index.js';
export { runningFacts } from './running.js';
export { type EntryDraft, entryHash, hashOfBytes, hashOfText, NO_PREVIOUS, sealEntry } from './seal.js';
export {
  emptyRecord,
  evolve,
  foldEntries,
  type ReadEntry,
  type RecordState,
  refold,
  type Strike,
  withEngine,
} from './state.js';
export { type KnownData, type NotUnderstood, type Understanding, type UpcastSteps, upcast } from './upcast.js';
