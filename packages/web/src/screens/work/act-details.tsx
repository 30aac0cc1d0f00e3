import { reopenedPreview, type WorkActView } from '@gudgeon/core/workbench';
import { useMemo } from 'react';
import { Link } from 'wouter';
import { ReasonForm } from '../../bench/index.js';
import { usePerson } from '../../log/index.js';
import { HoldCritical, LeaveOut } from './about-act.js';
import { actName, benchPlace, lengthWords } from './act-words.js';
import { Preview } from './changed.js';
import type { WorkDesk } from './use-work.js';

interface ActDetailsProps {
  readonly desk: WorkDesk;
  readonly act: WorkActView;
}
/** As `plan` names the finding that an act is done once more. */
const DONE_AGAIN = 'done-again';

/** Everything about one act: what is asked, what was answered, what it waits for and why, and what may be done about it. */
export function ActDetails({ desk, act }: ActDetailsProps) {
  const { given, looked } = act;
  return (
    <div className="stack act-details">
      <p>
        {act.ask} <span className="soft">({lengthWords(act.minutes)}; usual length, no source)</span>
      </p>
      {given && (
        <p>
          Recorded: {given.words}
          {given.method === '' ? '' : `, ${given.method}`}
          {given.result === 'bad' ? ': not good' : ''} ({given.by}, {given.at})
        </p>
      )}
      {looked && (
        <p>
          {act.look === 'alone' ? 'Looked at again alone' : 'Looked at by another person'}: {looked.seen},{' '}
          {looked.method} ({looked.looker}, {looked.at})
        </p>
      )}
      {act.skipped && (
        <p>
          Left out: {act.skipped.reason} ({act.skipped.by}, {act.skipped.at})
        </p>
      )}
      {act.again && (
        <p>
          Open again, {act.again.title}: {act.again.why}. Because {act.again.because}.
        </p>
      )}
      {act.unsure && <p>Not sure that this engine has it: {act.unsure}</p>}
      <Waits desk={desk} act={act} />
      <Ways desk={desk} act={act} />
    </div>
  );
}

function Waits({ desk, act }: ActDetailsProps) {
  if (act.waitsFor.length === 0) return null;
  return (
    <div className="stack" data-waits>
      <strong>It waits for</strong>
      <ul className="notes">
        {act.waitsFor.map((wait) => (
          <li key={wait.words}>
            {wait.act === undefined ? (
              wait.words
            ) : (
              <Link href={benchPlace(desk.job, wait.act)} className="operation-link">
                {wait.words}
              </Link>
            )}
          </li>
        ))}
      </ul>
    </div>
  );
}

function Ways({ desk, act }: ActDetailsProps) {
  const person = usePerson();
  const { state, look } = act;
  const open = state === 'ready' || state === 'away';
  return (
    <>
      <div className="row">
        {(open || look === 'owed') && (
          <Link className="button button-main" href={benchPlace(desk.job, act.id)}>
            {look === 'owed' ? 'Look a second time' : 'To the bench'}
          </Link>
        )}
        {act.opens && (
          <Link className="button" href={`/engine/${desk.job}/${act.opens.place}`}>
            {act.opens.words}
          </Link>
        )}
      </div>
      {person !== '' && (
        <>
          {(open || act.mustDo !== undefined) && <LeaveOut desk={desk} act={act} />}
          {(state === 'done' || state === 'skipped') && <Again desk={desk} act={act} />}
          <HoldCritical desk={desk} act={act} />
        </>
      )}
    </>
  );
}

/** Done once more: what rests on it is shown first. */
function Again({ desk, act }: ActDetailsProps) {
  const preview = useMemo(() => reopenedPreview(desk.bench, DONE_AGAIN, act.id), [desk.bench, act.id]);
  return (
    <details className="fold">
      <summary>Do it again</summary>
      <div className="stack">
        {preview && <Preview preview={preview} />}
        <ReasonForm
          button="Open it again"
          usual={['found wrong', 'another part']}
          record={(why) => desk.wish({ kind: 'again', act: act.id, why }, `Open again: ${actName(act)}`)}
        />
      </div>
    </details>
  );
}
