export { type OrderedLine, orderLines, partsList } from './lines.js';
export { type Returned, type ReturnedPlace, returnedWork, windowsOf } from './returned.js';
