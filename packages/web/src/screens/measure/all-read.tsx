import { useLocation } from 'wouter';
import { Finished } from '../../bench/index.js';
import type { SheetDesk } from './use-sheet-desk.js';

/** Every place of the sheet is read: back to the list of sheets. */
export function AllRead({ job, desk }: { readonly job: string; readonly desk: SheetDesk }) {
  const [, go] = useLocation();
  const to = `/engine/${job}/measure`;
  return <Finished words={`${desk.view.title}: all read`} to={to} toWords="All worksheets" go={() => go(to)} />;
}
