export {
  appendEntries,
  listJobs,
  listPhotos,
  listSheets,
  livePath,
  readJob,
  readPhoto,
  readSheet,
  sendPhoto,
} from './client.js';
export type { ApiFault } from './request.js';
export { useAnswer } from './use-answer.js';
