import { nextAction, openBench } from '@gudgeon/core/workbench';
import { useMemo } from 'react';
import { Link } from 'wouter';
import { readJob, useAnswer } from '../../api/index.js';

/** The next action of one engine, as a way to the screen where it is done. */
export function NextStep({ job }: { readonly job: string }) {
  const answer = useAnswer(() => readJob(job));
  const next = useMemo(
    () =>
      answer?.ok && answer.value.engine ? nextAction(openBench(answer.value.engine, answer.value.entries)) : undefined,
    [answer],
  );
  if (!answer) return <p className="soft">Working out what comes next…</p>;
  if (!answer.ok) return <p>{answer.fault.words}</p>;
  if (!next) return <p>Its sheet cannot be read; open the engine to see why.</p>;
  return (
    <Link href={`/engine/${job}/${next.place}`} className="next-link">
      <small>{next.finished ? 'All done' : 'Next'}</small>
      {next.words}
    </Link>
  );
}
