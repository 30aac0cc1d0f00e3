import { valveResume, valvesView } from '@gudgeon/core/workbench';
import { useMemo, useState } from 'react';
import { useAway, YouWereHere } from '../../bench/index.js';
import { useShownWidth } from '../../figures/index.js';
import { usePerson } from '../../log/index.js';
import { BenchScreen, type OpenJob, useBench, WithJob } from '../../shell/index.js';
import { Assumed } from './assumed.js';
import type { Desk } from './desk.js';
import { DoneValves } from './done-valves.js';
import { Here } from './here.js';
import { Margin } from './margin.js';
import { Neighbour } from './neighbour.js';
import { Rule } from './rule.js';
import { Shims } from './shims.js';
import { Stops } from './stops.js';
import { useDesk } from './use-desk.js';
import { useMargin } from './use-margin.js';
import { type WayName, Ways } from './ways.js';

export function ValvesScreen({ job }: { readonly job: string }) {
  return <WithJob job={job}>{(open) => <Valves open={open} />}</WithJob>;
}

function Valves({ open }: { readonly open: OpenJob }) {
  const bench = useBench(open);
  const shownWidth = useShownWidth();
  const { choices, setMargin } = useMargin(open.job);
  const view = useMemo(() => valvesView(bench, choices, { shownWidth }), [bench, choices, shownWidth]);
  const away = useAway(`${open.job}/valves`, usePerson());
  const desk = useDesk(open, bench, view, choices, away.back);
  const resume = valveResume(bench, view);
  if (view.progress.of === 0) return <h1>The sheet does not say what valve gear this engine has</h1>;
  const begun = view.progress.done > 0 || (view.shims?.progress.done ?? 0) > 0;
  return (
    <BenchScreen title="Set valves" cautions={view.cautions} begun={begun}>
      {resume && away.reason ? (
        <YouWereHere
          reason={away.reason}
          resume={resume}
          carryOn={(verified) => {
            if (takenUpAgain(desk, verified)) away.back();
          }}
        />
      ) : (
        <Work desk={desk} setMargin={setMargin} />
      )}
    </BenchScreen>
  );
}

/** The return is a fact of its own: who touched which valves again stands in the record. */
function takenUpAgain(desk: Desk, verified: readonly string[]): boolean {
  const text = `taken up again; touched ${verified.join(', ')}`;
  return desk.recorder.record({ kind: 'note', data: { about: 'valves', text } }, 'Carrying on');
}

function Work({ desk, setMargin }: { readonly desk: Desk; readonly setMargin: (margin: number) => void }) {
  const [way, setWay] = useState<WayName>('stops');
  return (
    <>
      {way === 'stops' && <Stops desk={desk} goTo={setWay} />}
      {way === 'here' && <Here desk={desk} />}
      {way === 'one' && <Neighbour desk={desk} />}
      {way === 'shims' && <Shims desk={desk} />}
      {way === 'margin' && <Margin desk={desk} setMargin={setMargin} />}
      <Ways way={way} shims={desk.view.shims !== undefined} go={setWay} />
      <Assumed view={desk.view} />
      <Rule rule={desk.view.rule} />
      <DoneValves desk={desk} />
    </>
  );
}
