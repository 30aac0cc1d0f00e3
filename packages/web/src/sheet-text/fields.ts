import { type Document, isMap, isScalar, parseDocument, Scalar } from 'yaml';

export type FieldPath = readonly (string | number)[];

/** Keeps long sentences in one line and comments where they stand. */
const writing = { lineWidth: 0, flowCollectionPadding: true } as const;

function readable(text: string): Document.Parsed | undefined {
  const document = parseDocument(text, { prettyErrors: false });
  return document.errors.length === 0 && isMap(document.contents) ? document : undefined;
}

/** A figure may stand alone or with its origin beside it; either way this is the text of the figure. */
function valuePath(document: Document.Parsed, path: FieldPath): FieldPath {
  return isMap(document.getIn(path, true)) ? [...path, 'value'] : path;
}

/** The text of one field of a sheet as written; empty where the sheet does not state it or cannot be read. */
export function fieldText(text: string, path: FieldPath): string {
  const document = readable(text);
  if (!document) return '';
  const node = document.getIn(valuePath(document, path), true);
  if (!isScalar(node) || node.value === null) return '';
  return typeof node.value === 'number' && node.source ? node.source : String(node.value);
}

/**
 * Writes one field into the text of a sheet, leaving every other line and comment as it stands. A figure gets the
 * origin `from` beside it, because the one printed there belonged to the old figure. An empty value takes the field out.
 * Undefined when the text is no readable sheet.
 */
export function setField(text: string, path: FieldPath, value: string | boolean, from?: string): string | undefined {
  const document = readable(text);
  if (!document) return undefined;
  if (value === '') document.deleteIn(path);
  else document.setIn(path, from === undefined ? value : withOrigin(document, value, from));
  return document.toString(writing);
}

function withOrigin(document: Document.Parsed, value: string | boolean, from: string) {
  const node = document.createNode({ value, from }, { flow: true });
  const written = node.get('value', true);
  // Quoted, so that "9.10" keeps its zero and "1:1" stays a text.
  if (written instanceof Scalar) written.type = Scalar.QUOTE_SINGLE;
  return node;
}
