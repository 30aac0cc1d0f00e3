import type { RecordView } from '@gudgeon/core/workbench';
import { documentHtml, recordDocument } from '@gudgeon/report';
import { saveFile } from '../../shell/index.js';

/** Hands the record to the person as one file that stands by itself: no script, no address outside. */
export const saveRecord = (view: RecordView): void =>
  saveFile(`${view.title} ${view.headCode}`, 'html', documentHtml(recordDocument(view)));
