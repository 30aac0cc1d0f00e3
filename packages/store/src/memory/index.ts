export type { Shelf } from './memory-store.js';
export { emptyShelf, openMemoryStore } from './memory-store.js';
