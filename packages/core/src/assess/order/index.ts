export { type OrderedLine, orderLines, partsList } from './lines.js';
export { occasionAt, type Returned, type ReturnedPlace, returnedWork, windowsOf } from './returned.js';
