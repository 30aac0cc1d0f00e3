export type { Document, Picture, Table } from './document.js';
export { documentHtml } from './html.js';
export { orderDocument } from './order-document.js';
export { recordDocument } from './record-document.js';
export { MOST_IN_ONE_FILE, picturesForFile } from './record-pictures.js';
