import type { AnswerRow, SubjectView } from '@gudgeon/core/workbench';
import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { PlotView } from '../../plots/index.js';
import { Said, Title } from '../../shell/index.js';
import { Answers } from './answers.js';
import { Behind } from './behind.js';
import { Inputs } from './inputs.js';
import { MissingFigures } from './missing-figures.js';
import { MoreFigures } from './more-figures.js';
import { ScratchBar } from './scratch-bar.js';
import { StandingDecision } from './standing-decision.js';
import type { CombinationDesk } from './use-combination.js';

interface SubjectFrameProps {
  readonly desk: CombinationDesk;
  readonly view: SubjectView;
  /** Before the answers: what is keyed or chosen here, drawings of the subject's own. */
  readonly children?: ReactNode;
  /** Answers that stay in sight while figures are moved; left out: the first that are held against a limit. */
  readonly watched?: readonly AnswerRow[];
  /** Above the figures that go in. */
  readonly beforeInputs?: ReactNode;
  /** After the answers. */
  readonly after?: ReactNode;
}

/** The frame of every subject: question, answers, plots, the figures that go in, what is missing, and what stands behind it all. */
export function SubjectFrame({ desk, view, children, watched, beforeInputs, after }: SubjectFrameProps) {
  return (
    <div className="combination stack-wide" data-subject={view.id}>
      <div className="stack">
        <Title tab={view.title}>{view.title}</Title>
        <p className="combination-question">{view.question}</p>
        <Said recorder={desk.recorder} />
      </div>
      <ScratchBar desk={desk} />
      <StandingDecision view={view} />
      <div className="combination-desk">
        <div className="stack-wide">
          {children}
          {view.plots.map((plot) => (
            <PlotView key={plot.id} plot={plot} />
          ))}
          <Answers rows={view.answers} />
          {after}
        </div>
        <div className="stack-wide">
          <MissingFigures desk={desk} view={view} />
          {beforeInputs}
          <Inputs
            desk={desk}
            inputs={view.inputs}
            watched={watched ?? view.answers.filter(({ limit }) => limit !== '')}
          />
          <MoreFigures desk={desk} view={view} />
        </div>
      </div>
      <Behind view={view} />
      <Link className="button" href={`/engine/${desk.open.job}/combination`}>
        The whole combination
      </Link>
    </div>
  );
}
