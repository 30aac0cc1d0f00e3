/**
 * How far to trust a source: `read` was seen while this was written (`address` says where, and `seen` what, when it was a
 * copy or an excerpt); `recalled` is published but was not seen; `derived` follows by arithmetic or mechanics;
 * `shop practice` is common practice without a published source.
 */
export type SourceStanding = 'read' | 'recalled' | 'derived' | 'shop practice';

/** One line of the bibliography. */
export interface BibliographyLine {
  readonly title: string;
  readonly author?: string;
  /** Section, table, example or page. */
  readonly locator: string;
  readonly standing: SourceStanding;
  /** Address where the text was read. */
  readonly address?: string;
  /** What was really seen, where that is less than the work named: a copy, an excerpt, a reprinted table. */
  readonly seen?: string;
}

/** A line with the key by which a calculation cites it. */
export interface Source<K extends string = string> extends BibliographyLine {
  readonly key: K;
}
