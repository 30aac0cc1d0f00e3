import { type Bench, type GasketItemView, type GasketView, gasketView } from '@gudgeon/core/workbench';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { AnswerButtons, answerActions, Finished, Progress } from '../../bench/index.js';
import { FigureView, usePlan } from '../../figures/index.js';
import { useActions } from '../../keys/index.js';
import { BenchScreen, type OpenJob, Said, useBench, useRecord, useWayOn, WithJob } from '../../shell/index.js';
import { CheckedItems } from './checked-items.js';

export function GasketScreen({ job, head }: { readonly job: string; readonly head: string }) {
  return <WithJob job={job}>{(open) => <Gasket open={open} head={head} />}</WithJob>;
}

function Gasket({ open, head }: { readonly open: OpenJob; readonly head: string }) {
  const bench = useBench(open);
  const view = gasketView(bench, head, usePlan());
  if (!view) return <h1>This engine has no head “{head}”</h1>;
  return (
    <BenchScreen title={view.title} cautions={view.cautions} begun={view.items.some((item) => item.state !== 'open')}>
      <Checks open={open} bench={bench} view={view} />
    </BenchScreen>
  );
}

interface ChecksProps {
  readonly open: OpenJob;
  readonly bench: Bench;
  readonly view: GasketView;
}

function Checks({ open, bench, view }: ChecksProps) {
  const recorder = useRecord(open, bench);
  const [, go] = useLocation();
  const [touched, setTouched] = useState<string>();
  const item = view.items.find((one) => one.item === touched) ?? view.items.find((one) => one.item === view.current);
  const engine = `/engine/${open.job}`;
  const on = useWayOn(open.job, `gasket/${view.head}`, { to: engine, toWords: 'Back to the engine' });
  const touch = (part: string) => setTouched(view.items.find((one) => one.part === part)?.item);
  const give = (answer: { readonly id: string; readonly label: string }) => {
    if (!item) return;
    const result = answer.id === 'good' ? 'good' : 'bad';
    const data = { head: view.head, item: item.item, result, seen: answer.label } as const;
    if (recorder.record({ kind: 'gasket-checked', data }, `${item.title}: ${answer.label}`)) setTouched(undefined);
  };
  return (
    <>
      <Progress {...view.progress} />
      <div className="bench-two">
        <FigureView figure={view.figure} onTouch={touch} low fewNames {...(item?.part ? { current: item.part } : {})} />
        <div className="stack">
          {item ? (
            <ItemStep key={item.item} item={item} give={give} />
          ) : (
            <Finished
              words={view.finished ? 'Gasket checked, every opening' : 'Nothing left open here'}
              {...on}
              go={() => go(on.to)}
            />
          )}
          <Said recorder={recorder} />
        </div>
      </div>
      <p className="field-hint">
        Faces: {view.dressing}. From: {view.origin}.
      </p>
      <CheckedItems items={view.items} look={setTouched} />
    </>
  );
}

interface ItemStepProps {
  readonly item: GasketItemView;
  readonly give: (answer: { readonly id: string; readonly label: string }) => void;
}

function ItemStep({ item, give }: ItemStepProps) {
  const actions = answerActions(item.answers, give);
  const run = useActions(actions);
  return (
    <section className="stack" aria-live="polite">
      <h2 className="step-title">{item.title}</h2>
      <p>{item.instruction}</p>
      {item.given && (
        <p className="field-hint">
          Answered: {item.given.seen} ({item.given.by}, {item.given.at})
        </p>
      )}
      <AnswerButtons answers={item.answers} actions={actions} run={run} />
    </section>
  );
}
