export { BIBLIOGRAPHY } from './bibliography.js';
export { describeSource, SOURCE_KEYS, type SourceKey, sourceOf, toSourceKey } from './lookup.js';
export type { BibliographyLine, Source, SourceStanding } from './source.js';
