import { type Bench, type Scratch, type ShownIn, type Tried, triedOf } from '@gudgeon/core/workbench';
import { type OpenJob, type Recorder, useBench, useRecord, useShownIn } from '../../shell/index.js';
import { type ScratchStore, scratchOf, useScratch } from './scratch.js';

/** What every screen of the combination works with. */
export interface CombinationDesk {
  readonly open: OpenJob;
  readonly bench: Bench;
  readonly shownIn: ShownIn;
  readonly recorder: Recorder;
  readonly scratch: Scratch;
  readonly store: ScratchStore;
  /** All figures with the scratch copy laid over them. */
  readonly tried: Tried;
}

export function useCombination(open: OpenJob): CombinationDesk {
  const bench = useBench(open);
  const shownIn = useShownIn();
  const recorder = useRecord(open, bench);
  const store = scratchOf(open.job);
  const scratch = useScratch(store);
  return {
    open,
    bench,
    shownIn,
    recorder,
    scratch,
    store,
    tried: triedOf(bench, scratch),
  };
}
