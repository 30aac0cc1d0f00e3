import { combinationView } from '@gudgeon/core/workbench';
import { useMemo } from 'react';
import { Link } from 'wouter';
import { CautionsAgain, VerdictMark } from '../../bench/index.js';
import { type OpenJob, Said, Title, WithJob } from '../../shell/index.js';
import { ScratchBar } from './scratch-bar.js';
import { StandingDecision } from './standing-decision.js';
import { useCombination } from './use-combination.js';

export function CombinationScreen({ job }: { readonly job: string }) {
  return <WithJob job={job}>{(open) => <Combination open={open} />}</WithJob>;
}

/** Will these parts work together? Every subject with its verdict, and what is tried. */
function Combination({ open }: { readonly open: OpenJob }) {
  const desk = useCombination(open);
  const { bench, scratch, shownIn } = desk;
  const view = useMemo(() => combinationView(bench, scratch, shownIn), [bench, scratch, shownIn]);
  return (
    <div className="combination stack-wide">
      <div className="stack">
        <Title tab="Combination">{view.title}</Title>
        <p className="combination-question">Will these parts work together, before metal is cut?</p>
        <Said recorder={desk.recorder} />
      </div>
      <ScratchBar desk={desk} />
      <StandingDecision view={view} />
      <ul className="plain subjects">
        {view.subjects.map(({ id, title, question, verdict, words }) => (
          <li key={id} data-subject={id}>
            <Link href={`/engine/${open.job}/combination/${id}`} className="subject">
              <strong>{title}</strong>
              <span className="soft">{question}</span>
              {(verdict || words !== '') && (
                <span className="subject-standing">
                  {verdict && <VerdictMark verdict={verdict} />}
                  <span>{words}</span>
                </span>
              )}
            </Link>
          </li>
        ))}
      </ul>
      <CautionsAgain cautions={view.cautions} />
    </div>
  );
}
