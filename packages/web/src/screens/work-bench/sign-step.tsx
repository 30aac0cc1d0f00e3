import { type WorkActView, workView } from '@gudgeon/core/workbench';
import { useMemo, useState } from 'react';
import { ActButton } from '../../bench/index.js';
import { notABounce, useActions } from '../../keys/index.js';
import { actName } from '../work/act-words.js';
import type { WorkDesk } from '../work/use-work.js';
import { SaidWords } from './said-words.js';
import { usual } from './step.js';

interface Page {
  readonly title: string;
  /** The same reason for all lines. */
  readonly why?: string;
  readonly lines: readonly string[];
}

/** The end of the work: every skip and every open doubt is read, page by page, and then it is signed in words. */
export function SignStep({ desk, signed }: { readonly desk: WorkDesk; readonly signed: () => void }) {
  const { view, pages } = useMemo(() => pagesOf(desk), [desk]);
  const [read, setRead] = useState(0);
  const [words, setWords] = useState('');
  const [fault, setFault] = useState('');
  const page = pages[read];
  const sign = () => {
    const told = words.trim();
    if (told === '') return setFault('Sign in words: who answers for it, and what it is ready for.');
    if (desk.wish({ kind: 'sign', words: told, skips: view.skips.map(({ id }) => id) }, 'Signed off')) signed();
  };
  const next = usual(`Read. ${read + 1 < pages.length ? 'The next page' : 'Now sign'}`, () => setRead(read + 1));
  const run = useActions(page ? [next] : []);
  if (page)
    return (
      <div className="bench">
        <p className="step-lead">
          {page.title} ({read + 1} of {pages.length})
        </p>
        {page.why !== undefined && <p>Reason: {page.why}</p>}
        <ul className="sign-lines">
          {page.lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
        <ActButton action={next} run={run} />
      </div>
    );
  return (
    <div className="bench">
      {pages.length === 0 && <p>Nothing was left out, and nothing is in doubt.</p>}
      <SaidWords
        name="Signature, in words"
        words={words}
        set={setWords}
        fault={fault}
        enter={() => notABounce('record') && sign()}
      />
      <ActButton action={{ ...usual('Sign off', sign), keys: [] }} run={() => notABounce('record') && sign()} />
    </div>
  );
}

function pagesOf({ bench }: WorkDesk) {
  const view = workView(bench);
  const skips = new Map<string, WorkActView[]>();
  for (const act of view.skips) {
    const key = `${act.operation} ${act.skipped?.reason}`;
    skips.set(key, [...(skips.get(key) ?? []), act]);
  }
  const doubts = [
    ...view.reopened.map((act) => `Open again: ${actName(act)}: ${act.again?.why ?? ''}`),
    ...view.looks.map((act) => `Second look owed: ${actName(act)}`),
    ...(view.left?.lines ?? []).map(({ about, text }) => `Left ${about}: ${text}`),
    ...view.unknown.map((line) => `Named in the record, not in this plan: ${line}`),
    ...view.assumptions.map((line) => `Taken for granted: ${line}`),
  ];
  const pages: readonly Page[] = [
    ...[...skips.values()].map((acts) => ({
      title: `Left out of: ${acts[0]?.operationTitle ?? ''}`,
      why: acts[0]?.skipped?.reason ?? '',
      lines: acts.map(actName),
    })),
    ...(doubts.length > 0 ? [{ title: 'In doubt', lines: doubts }] : []),
  ];
  return { view, pages };
}
