/** A printable document as data: pens turn it into HTML (here) or, later, into other forms. */
export interface Table {
  readonly title: string;
  readonly columns: readonly string[];
  readonly rows: readonly { readonly cells: readonly string[]; readonly struck: boolean }[];
  /** What is still open in this section; shown so that a gap never looks like a result. */
  readonly open: readonly string[];
}
export interface Document {
  readonly title: string;
  readonly lead: readonly string[];
  readonly tables: readonly Table[];
  readonly notes: readonly string[];
}
