import { type Bench, proposeReturned, type WorksheetRow } from '@gudgeon/core/workbench';
import { Reasoned } from '../../bench/index.js';
import { useSteady } from '../../keys/index.js';
import type { SheetDesk } from './use-sheet-desk.js';

interface CameBackProps {
  readonly desk: SheetDesk;
  readonly bench: Bench;
  readonly row?: WorksheetRow;
}
const USUAL = ['bored and honed', 'ground', 'new part', 'skimmed'] as const;

/** Work came back from the shop: what is read from here on is another occasion, and the old readings stay beside it. */
export function CameBack({ desk, bench, row }: CameBackProps) {
  const { view, recorder, choose } = desk;
  const back = (places: readonly WorksheetRow[], why: string) => {
    const words = `${places.map((one) => one.name).join(', ')}: came back, ${why}`;
    const data = { feature: view.feature, places: places.map((one) => one.place), why };
    if (recorder.take(proposeReturned(bench, data), words)) choose(undefined);
  };
  const read = (one: WorksheetRow) => one.cells.some((cell) => cell.readings > 0);
  const all = view.rows.filter(read);
  const backHere = useSteady((why: string) => row && back([row], why));
  const backAll = useSteady((why: string) => back(all, why));
  return (
    <>
      {row && read(row) && (
        <Reasoned
          name={`Work came back: ${row.name}`}
          about="Its readings are kept for comparison, and it is measured again from the beginning."
          button={`${row.name} came back`}
          usual={USUAL}
          record={backHere}
        />
      )}
      {all.length > 1 && (
        <Reasoned
          name={`Work came back: all ${all.length} places`}
          about="Their readings are kept for comparison, and they are measured again from the beginning."
          button={`All ${all.length} came back`}
          usual={USUAL}
          record={backAll}
        />
      )}
    </>
  );
}
