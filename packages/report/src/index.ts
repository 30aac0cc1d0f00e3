export type { Document, Table } from './document.js';
export { documentHtml } from './html.js';
export { orderDocument } from './order-document.js';
export { recordDocument } from './record-document.js';
