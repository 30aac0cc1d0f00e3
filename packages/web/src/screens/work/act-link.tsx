import type { WorkActView } from '@gudgeon/core/workbench';
import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { ActMark, markOf } from './act-mark.js';
import { actName, benchPlace } from './act-words.js';

interface ActLinkProps {
  readonly job: string;
  readonly act: WorkActView;
  /** What the way leads to: "Look", "It is back". */
  readonly verb: string;
  readonly children?: ReactNode;
}

/** One act as a row: how it stands, what it is, and the way to the bench; the whole row is the target. */
export function ActLink({ job, act, verb, children }: ActLinkProps) {
  return (
    <Link className="act-link" href={benchPlace(job, act.id)}>
      <ActMark mark={markOf(act)} />
      <span className="act-link-words">
        <span>{actName(act)}</span>
        {children && <small>{children}</small>}
      </span>
      <strong className="act-link-verb">{verb} →</strong>
    </Link>
  );
}
