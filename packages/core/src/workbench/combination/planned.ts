/** Work that is still to be done, by key: where none is planned there is none, which is known and is 0. */
export const PLANNED: ReadonlySet<string> = new Set([
  'head-cut',
  'deck-cut',
  'spring-shim',
  'cam-advance',
  'intake-gasket-change',
]);
