export { copyWords } from './copy-words.js';
export { deviceId, personName, setPersonName, storageWorks } from './device.js';
export { allEntries, type JobState } from './job-state.js';
export type { Draft, JobStore } from './job-store.js';
export { beginJob, openJob, sendWhatWaits } from './jobs.js';
export { localTime } from './local-time.js';
export { useJob, usePerson } from './use-job.js';
