import { inputViews, LIMIT_KEYS, SUBJECTS } from '@gudgeon/core/workbench';
import { useMemo } from 'react';
import { Link } from 'wouter';
import { type OpenJob, Said, Title } from '../../shell/index.js';
import { FindChoices } from './find-choices.js';
import { FindRun } from './find-run.js';
import { FindWanted } from './find-wanted.js';
import { finderOf, useFinder } from './finder-store.js';
import { Found } from './found.js';
import { Inputs } from './inputs.js';
import { MoreFigures } from './more-figures.js';
import { ScratchBar } from './scratch-bar.js';
import { useCombination } from './use-combination.js';
import { useFindForm } from './use-find-form.js';

/** What may be bought, cut or moved, what must hold, and every combination that keeps it. */
export function Find({ open }: { readonly open: OpenJob }) {
  const desk = useCombination(open);
  const { tried, shownIn } = desk;
  const store = finderOf(open.job);
  const finder = useFinder(store);
  const [form, setForm] = useFindForm(open.job, tried, shownIn);
  const limits = useMemo(() => inputViews(tried, LIMIT_KEYS, shownIn), [tried, shownIn]);
  return (
    <div className="combination stack-wide" data-subject="find">
      <div className="stack">
        <Title tab={SUBJECTS.find.title}>{SUBJECTS.find.title}</Title>
        <p className="combination-question">{SUBJECTS.find.question}</p>
        <Said recorder={desk.recorder} />
      </div>
      <ScratchBar desk={desk} />
      <div className="combination-desk">
        <div className="stack-wide">
          <FindChoices desk={desk} form={form} set={setForm} />
          <FindRun desk={desk} form={form} finder={finder} store={store} />
          <Found desk={desk} finder={finder} store={store} />
        </div>
        <div className="stack-wide">
          <FindWanted desk={desk} form={form} set={setForm} />
          <Inputs desk={desk} inputs={limits} title="The limits" />
          <MoreFigures desk={desk} view={{ inputs: limits, missing: [] }} />
        </div>
      </div>
      <Link className="button" href={`/engine/${open.job}/combination`}>
        The whole combination
      </Link>
    </div>
  );
}
