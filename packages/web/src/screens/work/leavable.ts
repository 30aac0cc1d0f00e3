import type { OperationActsView, WorkActView } from '@gudgeon/core/workbench';
import { groupOf } from './act-words.js';

/** Acts of one operation that are left out with one reason. */
export interface Leavable {
  readonly key: string;
  readonly acts: readonly WorkActView[];
  readonly name: string;
  /** What one of them is. */
  readonly each: string;
}

/** All worksheets that are still open at once, then group by group: whoever reads a few of them leaves the others out with one reason. */
export function leavable(view: OperationActsView): readonly Leavable[] {
  const acts = openActs(view);
  const sheets = acts.filter(({ answer }) => answer === 'worksheet');
  const name = `Leave out all ${sheets.length} worksheets that are open here`;
  if (sheets.length < 2) return alike(acts);
  const oneKind = new Set(sheets.map(groupOf)).size === 1;
  const others = oneKind ? acts.filter((act) => !sheets.includes(act)) : acts;
  return [{ key: 'worksheets', acts: sheets, name, each: 'worksheet' }, ...alike(others)];
}

/** What waits for nothing, and may be left out. */
const openActs = ({ chunks }: OperationActsView): readonly WorkActView[] =>
  chunks
    .flatMap(({ acts }) => acts)
    .filter(({ state, mustDo }) => (state === 'ready' || state === 'away') && mustDo === undefined);

/** Alike acts at several places. */
function alike(open: readonly WorkActView[]): readonly Leavable[] {
  const groups = new Map<string, WorkActView[]>();
  for (const act of open) groups.set(groupOf(act), [...(groups.get(groupOf(act)) ?? []), act]);
  return [...groups].flatMap(([key, acts]) => {
    const each = nameOf(acts);
    return acts.length > 1 ? [{ key, acts, name: `Leave out all ${acts.length}: ${each}`, each }] : [];
  });
}

/** "Read the bore, Cylinder bore": a worksheet is named by what it measures. */
function nameOf([first]: readonly WorkActView[]): string {
  if (first === undefined) return '';
  return first.answer === 'worksheet' ? (first.place.split(',')[0] ?? first.does) : first.does.replace(/[.:]$/, '');
}
