import type { RecordView } from '@gudgeon/core/workbench';
import { documentHtml, recordDocument } from '@gudgeon/report';

/** Letters and digits only, so that the name is good on every system. */
const fileName = (view: RecordView): string =>
  `${view.title.replace(/[^\p{L}\p{N}]+/gu, '-').toLowerCase()}-${view.headCode}.html`;

/** Saves the record as one HTML file that needs neither this program nor a network to be read. */
export function saveAsFile(view: RecordView): void {
  const address = URL.createObjectURL(new Blob([documentHtml(recordDocument(view))], { type: 'text/html' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName(view);
  link.click();
  window.setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
