export { AskPerson } from './ask-person.js';
export { BenchScreen } from './bench-screen.js';
export { Said } from './said.js';
export { Shell } from './shell.js';
export { Title } from './title.js';
export { lengthTyped, type TypedReading } from './typed-reading.js';
export { useBench } from './use-bench.js';
export { type Recorder, useRecord } from './use-record.js';
export { type OpenJob, WithJob } from './with-job.js';
