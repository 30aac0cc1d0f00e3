import type { RecordView } from '@gudgeon/core/workbench';
import { documentHtml, recordDocument } from '@gudgeon/report';

/** A name that every file system takes. */
const fileName = ({ title, headCode }: RecordView): string =>
  `${title} ${headCode}`
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');

/** Hands the record to the person as one file that stands by itself: no script, no address outside. */
export function saveRecord(view: RecordView): void {
  const file = new Blob([documentHtml(recordDocument(view))], { type: 'text/html' });
  const address = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = address;
  link.download = `${fileName(view)}.html`;
  link.click();
  // The browser reads the file after the click has returned.
  window.setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
