import type { Arrival, WorkReturnView } from '@gudgeon/core/workbench';
import { useState } from 'react';
import { ActButton, Progress } from '../../bench/index.js';
import { type Action, useActions, useFromTop } from '../../keys/index.js';
import { Said } from '../../shell/index.js';
import type { WorkDesk } from '../work/use-work.js';
import { NotGood } from './not-good.js';
import { usual } from './step.js';

interface ComeBackProps {
  readonly desk: WorkDesk;
  readonly arrival: Arrival;
  readonly resume: WorkReturnView;
  /** Back at the work; `begun` is an act that had been begun without a record. */
  readonly back: (begun: string | undefined) => void;
}
type Page =
  | { readonly kind: 'card' }
  | { readonly kind: 'verify'; readonly at: WorkReturnView['verify'][number] }
  | { readonly kind: 'begun'; readonly at: WorkReturnView['mayHaveBegun'][number] }
  | { readonly kind: 'stood' };
interface Found {
  readonly verified: readonly string[];
  readonly notAsRecorded: readonly { readonly act: string; readonly found: string }[];
  readonly begun?: string;
}

/** After an interruption: the card of whoever left first, then each of the last acts touched and compared, one by one; nothing is done again here. */
export function ComeBack({ desk, arrival, resume, back }: ComeBackProps) {
  const [pages] = useState(() => pagesOf(resume));
  const [at, setAt] = useState(0);
  const [found, setFound] = useState<Found>({ verified: [], notAsRecorded: [] });
  const [wrong, setWrong] = useState(false);
  const page = pages[at];
  useFromTop(`${at} ${wrong}`);
  const on = (next: Found) => {
    setFound(next);
    setWrong(false);
    if (at + 1 < pages.length) return setAt(at + 1);
    const { verified, notAsRecorded } = next;
    if (desk.wish({ kind: 'resume', arrival, verified, notAsRecorded }, 'Carrying on')) back(next.begun);
  };
  const usually = usual(page ? usualWords[page.kind] : 'Carry on', () =>
    on(page?.kind === 'verify' ? { ...found, verified: [...found.verified, page.at.act] } : found),
  );
  const otherwise: Action = {
    name: 'bad',
    label: page?.kind === 'begun' ? 'It was begun' : 'Not as recorded',
    keys: ['n'],
    available: true,
    run: () => (page?.kind === 'begun' ? on({ ...found, begun: page.at.act }) : setWrong(true)),
  };
  const asks = page?.kind === 'verify' || page?.kind === 'begun';
  const run = useActions(wrong ? [] : asks ? [usually, otherwise] : [usually]);
  if (wrong && page?.kind === 'verify')
    return (
      <section className="bench">
        <p className="step-lead">{page.at.title}</p>
        <p>Was recorded: {page.at.was}</p>
        <NotGood
          back={() => setWrong(false)}
          record={(words) =>
            on({ ...found, notAsRecorded: [...found.notAsRecorded, { act: page.at.act, found: words }] })
          }
        />
      </section>
    );
  return (
    <section className="bench" aria-labelledby="were-here" data-return={page?.kind ?? 'end'}>
      <h2 id="were-here" className="step-title">
        You were here
      </h2>
      <Progress
        done={at}
        of={pages.length}
        words={`${Math.min(at + 1, pages.length)} of ${Math.max(1, pages.length)}`}
      />
      {at === 0 && <p className="field-hint">{resume.words}</p>}
      {resume.leftBadly && (
        <p className="work-word">
          <strong>LEFT BADLY</strong> {resume.leftBadly}
        </p>
      )}
      {page && <PageWords page={page} resume={resume} />}
      {desk.recorder.refused && <Said recorder={desk.recorder} />}
      <ActButton action={usually} run={run} />
      {asks && (
        <div className="apart">
          <ActButton action={otherwise} run={run} second />
        </div>
      )}
    </section>
  );
}

const usualWords: Readonly<Record<Page['kind'], string>> = {
  card: 'Read',
  verify: 'Touched: as recorded',
  begun: 'Looked: nothing of it is begun',
  stood: 'Looked at all of these',
};

function pagesOf({ left, verify, mayHaveBegun, stood }: WorkReturnView): readonly Page[] {
  return [
    ...(left === undefined ? [] : [{ kind: 'card' } as const]),
    ...verify.map((at) => ({ kind: 'verify', at }) as const),
    ...mayHaveBegun.map((at) => ({ kind: 'begun', at }) as const),
    ...(stood.length === 0 ? [] : [{ kind: 'stood' } as const]),
  ];
}

function PageWords({ page, resume }: { readonly page: Page; readonly resume: WorkReturnView }) {
  switch (page.kind) {
    case 'card':
      return resume.left ? <LeftCard left={resume.left} /> : null;
    case 'verify':
      return (
        <div className="work-act" aria-live="polite" data-verify={page.at.act}>
          <p className="work-does">{page.at.title}</p>
          <p className="work-ask">Recorded: {page.at.was}</p>
          <p>{page.at.words}</p>
          {!page.at.mayRepeat && (
            <p className="work-word">
              <strong>NO WAY BACK</strong> It is looked at, never done again.
            </p>
          )}
        </div>
      );
    case 'begun':
      return (
        <div className="work-act" aria-live="polite" data-begun={page.at.act}>
          <p className="work-does">{page.at.title}</p>
          <p>It is not recorded. Look whether somebody has begun it.</p>
          <p className="work-word">
            <strong>NO WAY BACK</strong> {page.at.noReturn}
          </p>
        </div>
      );
    case 'stood':
      return (
        <div className="work-act">
          <p className="work-does">It stood for more than a month</p>
          <ul className="sign-lines">
            {resume.stood.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </div>
      );
  }
}

/** The card of whoever stopped last. */
export function LeftCard({ left }: { readonly left: NonNullable<WorkReturnView['left']> }) {
  return (
    <div className="left-card" data-left-card>
      <p>
        <strong>Left by {left.by}</strong> <span className="soft">{left.at}</span>
      </p>
      <dl>
        {left.lines.map(({ about, text }) => (
          <div key={about}>
            <dt>{about}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
    </div>
  );
}
