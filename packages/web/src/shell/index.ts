export { AskPerson } from './ask-person.js';
export { Shell } from './shell.js';
export { Title } from './title.js';
export { type OpenJob, WithJob } from './with-job.js';
