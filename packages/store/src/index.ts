export { START_OF_CHAIN } from './admission.js';
export type { AppendFault, ChainBroken, CounterGap, CounterTaken, IdReused } from './append-fault.js';
export { describeAppendFault } from './append-fault.js';
export type { HeldPhoto, PhotoFault, PhotoResult } from './photo.js';
export { describePhotoFault } from './photo.js';
export type { AppendResult, JobSummary, Receipt, ReceiveClock, Store } from './store.js';
export type { StoreFailureCode } from './store-failure.js';
export { StoreFailure } from './store-failure.js';
