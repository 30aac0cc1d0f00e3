import { combinationSeen, proposeCombination } from '@gudgeon/core/workbench';
import { useMemo } from 'react';
import { ReasonForm } from '../../bench/index.js';
import { usePerson } from '../../log/index.js';
import { AskPerson } from '../../shell/index.js';
import type { CombinationDesk } from './use-combination.js';
import { useSettled } from './use-settled.js';

interface DecideCombinationProps {
  readonly desk: CombinationDesk;
  readonly done: () => void;
}
const USUAL = ['keeps everything that must hold', 'least metal removed', 'parts are at hand', 'the owner wants it so'];

/** Everything that will be recorded, then the reason. From then on the changed figures are those of the engine. */
export function DecideCombination({ desk, done }: DecideCombinationProps) {
  const person = usePerson();
  const { bench, shownIn } = desk;
  const scratch = useSettled(desk.scratch);
  const { words, changes, answers } = useMemo(
    () => combinationSeen(bench, scratch, shownIn),
    [bench, scratch, shownIn],
  );
  const record = (reason: string) => {
    const proposal = proposeCombination(bench, scratch, reason, shownIn);
    if (desk.recorder.take(proposal, `Decided: ${words}`)) done();
  };
  if (person === '') return <AskPerson />;
  return (
    <div className="stack">
      <h2>Decide on what is tried</h2>
      <p>These numbers are recorded as you see them now; the changed figures count for this engine from then on.</p>
      <Figures title="Changed" figures={changes} />
      <Figures title="What follows" figures={answers} />
      <ReasonForm button="Record this decision" usual={USUAL} record={record} />
    </div>
  );
}

interface FiguresProps {
  readonly title: string;
  readonly figures: readonly { readonly name: string; readonly text: string }[];
}
function Figures({ title, figures }: FiguresProps) {
  if (figures.length === 0) return null;
  return (
    <section aria-label={title}>
      <h3>{title}</h3>
      <dl className="fit-figures decide-figures">
        {figures.map(({ name, text }) => (
          <div key={name} className="fit-figure">
            <dt className="fit-figure-name">{name}</dt>
            <dd className="fit-figure-text">{text}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
