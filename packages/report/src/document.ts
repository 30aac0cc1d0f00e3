/** A printable document as data: pens turn it into HTML (here) or, later, into other forms. */
export interface Table {
  readonly title: string;
  readonly columns: readonly string[];
  readonly rows: readonly { readonly cells: readonly string[]; readonly struck: boolean }[];
  /** What is still open in this section; shown so that a gap never looks like a result. */
  readonly open: readonly string[];
}
/** A picture with what belongs to it; `source` is a data address, and where it is left out `why` says the reason. */
export interface Picture {
  readonly title: string;
  readonly words: string;
  readonly who: string;
  readonly source?: string;
  readonly why?: string;
}
export interface Document {
  readonly title: string;
  readonly lead: readonly string[];
  readonly tables: readonly Table[];
  readonly pictures?: readonly Picture[];
  readonly notes: readonly string[];
}
