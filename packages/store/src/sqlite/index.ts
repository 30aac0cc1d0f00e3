export type { SqliteOptions, SqliteStore } from './sqlite-store.js';
export { openSqliteStore } from './sqlite-store.js';
