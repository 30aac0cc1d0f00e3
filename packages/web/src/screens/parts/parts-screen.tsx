import { partsView } from '@gudgeon/core/workbench';
import { useMemo } from 'react';
import { useShownWidth } from '../../figures/index.js';
import { BenchScreen, type OpenJob, useBench, WithJob } from '../../shell/index.js';
import { Places } from './places.js';

export function PartsScreen({ job }: { readonly job: string }) {
  return <WithJob job={job}>{(open) => <Parts open={open} />}</WithJob>;
}

/** Lifters, pushrods, rockers: tagged as found, then each back to its own place. */
function Parts({ open }: { readonly open: OpenJob }) {
  const bench = useBench(open);
  const shownWidth = useShownWidth();
  const view = useMemo(() => partsView(bench, { shownWidth }), [bench, shownWidth]);
  if (view.parts.length === 0) return <h1>The sheet does not say what valve gear this engine has</h1>;
  const begun = view.places.some((place) => place.tag !== undefined || place.state !== 'open');
  return (
    <BenchScreen title="Parts to their places" cautions={view.cautions} begun={begun}>
      <Places open={open} bench={bench} view={view} />
    </BenchScreen>
  );
}
