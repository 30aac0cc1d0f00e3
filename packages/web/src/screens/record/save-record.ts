import type { RecordView } from '@gudgeon/core/workbench';
import { documentHtml, picturesForFile, recordDocument } from '@gudgeon/report';
import { readPicture } from '../../photos/index.js';
import { saveFile } from '../../shell/index.js';

/** Hands the record to the person as one file that stands by itself: pictures within, no script, no address outside. */
export async function saveRecord(job: string, view: RecordView): Promise<void> {
  const sources = new Map<string, string>();
  for (const photo of picturesForFile(view)) {
    const picture = await readPicture(job, photo);
    if (picture.ok) sources.set(photo.photo, await dataAddress(picture.value));
  }
  saveFile(`${view.title} ${view.headCode}`, 'html', documentHtml(recordDocument(view, sources)));
}

function dataAddress(picture: Blob): Promise<string> {
  return new Promise((done, fail) => {
    const reader = new FileReader();
    reader.onload = () => done(String(reader.result));
    reader.onerror = () => fail(reader.error);
    reader.readAsDataURL(picture);
  });
}
