import { useLocation } from 'wouter';
import { Finished } from '../../bench/index.js';
import { useWayOn } from '../../shell/index.js';
import type { SheetDesk } from './use-sheet-desk.js';

/** Every place of the sheet is read: on to the next sheet of the walk round the engine, by the key that recorded. */
export function AllRead({ job, desk }: { readonly job: string; readonly desk: SheetDesk }) {
  const [, go] = useLocation();
  const { title, next } = desk.view;
  const to = next ? `/engine/${job}/measure/${next.feature}` : `/engine/${job}/measure`;
  const words = next ? `${title}: all read` : `${title}: all read, and nothing else is left to read`;
  const toWords = next ? `On to ${next.optional ? 'a cross-check: ' : ''}${next.title}` : 'All worksheets';
  const on = useWayOn(job, `measure/${desk.view.feature}`, { to, toWords });
  return <Finished words={words} {...on} go={() => go(on.to)} after="record" />;
}
