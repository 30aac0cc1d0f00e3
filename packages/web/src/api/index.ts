export { appendEntries, listJobs, listSheets, livePath, readJob, readSheet } from './client.js';
export type { ApiFault } from './request.js';
export { useAnswer } from './use-answer.js';
