import type { RecordRow, RecordView } from '@gudgeon/core/workbench';
import type { Document, Table } from './document.js';
import { recordPictures } from './record-pictures.js';

const columns = ['What', 'Value', 'Limit', 'Where the limit comes from', 'Who', 'When'] as const;

function row(line: RecordRow): Table['rows'][number] {
  const value = line.struck === undefined ? line.value : `${line.value} (struck out: ${line.struck})`;
  return { cells: [line.what, value, line.limit, line.origin, line.by, line.at], struck: line.struck !== undefined };
}

/**
 * The record of one job as a document: every value with its limit, the origin of the limit, who and when.
 * Struck lines stay, marked as struck with the reason. Open work is listed under its section. Photos follow the tables: `sources` has the
 * data address of each that is at hand, by its hash; the others are named with why they are left out.
 */
export function recordDocument(view: RecordView, sources: ReadonlyMap<string, string> = new Map()): Document {
  return {
    title: view.title,
    lead: [
      ...(view.invented ? ['Invented demonstration engine: no figure here belongs to a real one.'] : []),
      `Head code ${view.headCode}, over ${view.entries} entries. ${view.chain}`,
      'The engine maker’s manual and the part maker’s sheet outrank every computed figure.',
    ],
    tables: view.sections.map((section) => ({
      title: section.title,
      columns,
      rows: section.rows.map(row),
      open: section.open,
    })),
    pictures: recordPictures(view, sources),
    notes: [
      ...view.cautions,
      ...view.notUnderstood.map((text) => `Not understood by this version, kept as it is: ${text}`),
    ],
  };
}
