import { BIBLIOGRAPHY } from './bibliography.js';
import type { BibliographyLine, Source } from './source.js';

/** A key of the bibliography; a calculation that cites an unknown key does not compile. */
export type SourceKey = keyof typeof BIBLIOGRAPHY;

/** Every key, in the order of the bibliography. */
export const SOURCE_KEYS = Object.keys(BIBLIOGRAPHY) as readonly SourceKey[];

/** The source that a key names. */
export function sourceOf<K extends SourceKey>(key: K): Source<K> {
  const line: BibliographyLine = BIBLIOGRAPHY[key];
  return { key, ...line };
}

/** The key that a text from outside names, or undefined. */
export const toSourceKey = (text: string): SourceKey | undefined => SOURCE_KEYS.find((key) => key === text);

/** One line for a reader: author, title, locator, standing, and what was really seen. */
export function describeSource(source: BibliographyLine): string {
  const by = source.author === undefined ? '' : `${source.author}: `;
  const seen = source.seen === undefined ? '' : `, ${source.seen}`;
  return `${by}${source.title}; ${source.locator} (${source.standing}${seen})`;
}
