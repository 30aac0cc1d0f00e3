import { SUBJECTS, type SubjectId } from '@gudgeon/core/workbench';
import type { ComponentType } from 'react';
import { Link } from 'wouter';
import { type OpenJob, WithJob } from '../../shell/index.js';
import { Balance } from './balance.js';
import { Compression } from './compression.js';
import { Find } from './find.js';
import { Springs } from './springs.js';
import { Degreeing, Motion, Rockers, Timing, ValveRoom } from './turning/index.js';

type SubjectBody = ComponentType<{ readonly open: OpenJob }>;
const BODIES: Partial<Readonly<Record<SubjectId, SubjectBody>>> = {
  compression: Compression,
  degreeing: Degreeing,
  'valve-room': ValveRoom,
  motion: Motion,
  springs: Springs,
  rockers: Rockers,
  timing: Timing,
  balance: Balance,
  find: Find,
};

export function SubjectScreen({ job, subject }: { readonly job: string; readonly subject: string }) {
  const Body = BODIES[subject as SubjectId];
  return (
    <WithJob job={job}>{(open) => (Body ? <Body open={open} /> : <NoSubject job={job} subject={subject} />)}</WithJob>
  );
}

function NoSubject({ job, subject }: { readonly job: string; readonly subject: string }) {
  return (
    <div className="stack">
      <h1>The combination has no subject “{subject}”</h1>
      <p>
        It has{' '}
        {Object.values(SUBJECTS)
          .map(({ title }) => title)
          .join(', ')}
        .
      </p>
      <Link className="button" href={`/engine/${job}/combination`}>
        The whole combination
      </Link>
    </div>
  );
}
