export { type AnsweredBy, answeredBy } from './finished-elsewhere.js';
export { proposeWork } from './propose-work.js';
export { type Work, workAt } from './work-facts.js';
