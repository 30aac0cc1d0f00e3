import type { WorkActView } from '@gudgeon/core/workbench';
import { Link } from 'wouter';
import { actName, operationPlace } from './act-words.js';

interface Group {
  readonly operation: string;
  readonly title: string;
  readonly reason: string;
  readonly acts: readonly WorkActView[];
}

/** What was left out, by operation and reason: read before the work is signed. */
export function Skips({ job, skips }: { readonly job: string; readonly skips: readonly WorkActView[] }) {
  if (skips.length === 0) return null;
  return (
    <details id="skips" className="card">
      <summary>Left out, with a reason ({skips.length})</summary>
      <ul className="plain stack">
        {grouped(skips).map(({ operation, title, reason, acts }) => (
          <li key={`${operation} ${reason}`}>
            <Link href={operationPlace(job, operation)} className="operation-link">
              {title}
            </Link>
            <p>
              {acts.length === 1 && acts[0] ? actName(acts[0]) : `${acts.length} acts`}: {reason}
            </p>
          </li>
        ))}
      </ul>
    </details>
  );
}

function grouped(skips: readonly WorkActView[]): readonly Group[] {
  const groups = new Map<string, Group>();
  for (const act of skips) {
    const reason = act.skipped?.reason ?? '';
    const key = `${act.operation} ${reason}`;
    const before = groups.get(key)?.acts ?? [];
    groups.set(key, { operation: act.operation, title: act.operationTitle, reason, acts: [...before, act] });
  }
  return [...groups.values()];
}
