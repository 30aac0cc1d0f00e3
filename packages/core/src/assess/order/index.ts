export { type OpenDecisions, type OrderedLine, openDecisions, orderLines, overtaken, partsList } from './lines.js';
export { occasionAt, type Returned, type ReturnedPlace, returnedWork, windowsOf } from './returned.js';
