export { type AppParts, buildApp } from './app/build-app.js';
export type { Log } from './app/errors.js';
export { DEMONSTRATION_JOB, demonstrationEntries, writeDemonstration } from './demonstration/index.js';
export { dataFolder, LOG_FILE, type Surroundings } from './place/data-folder.js';
export { listen } from './place/listen.js';
export { USUAL_PORT, wishedPort } from './place/options.js';
export { readSheetLibrary, type SheetLibrary } from './sheets/library.js';
