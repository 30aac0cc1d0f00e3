import { storeContract } from '../contract/store.suite.js';
import { emptyShelf, openMemoryStore } from './index.js';

storeContract('memory', async () => {
  const shelf = emptyShelf();
  return { open: async (clock) => openMemoryStore(shelf, clock), clear: async () => {} };
});
