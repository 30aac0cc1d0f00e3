import { type RegistersView, registersView } from '@gudgeon/core/workbench';
import { useMemo } from 'react';
import { Link } from 'wouter';
import { type OpenJob, Title, useBench, WithJob } from '../../shell/index.js';
import { benchPlace, workPlace } from '../work/act-words.js';
import { FastenerTable } from './fastener-table.js';
import { PartTable } from './part-table.js';
import { PhotosByPlace } from './photos-by-place.js';

export function RegistersScreen({ job }: { readonly job: string }) {
  return <WithJob job={job}>{(open) => <Registers open={open} />}</WithJob>;
}

/** What came from where: parts that must return, fasteners by hole, photos by place; to read and to print. */
function Registers({ open }: { readonly open: OpenJob }) {
  const bench = useBench(open);
  const view = useMemo(() => registersView(bench), [bench]);
  return (
    <article className="record registers">
      <Title tab="Registers">What came from where</Title>
      <p>{standingWords(view)}</p>
      <div className="row not-printed">
        <button type="button" className="button button-main" onClick={() => window.print()}>
          Print
        </button>
        <Link className="button" href={workPlace(open.job)}>
          The whole work
        </Link>
      </div>
      <PartTable parts={view.parts} way={(act) => benchPlace(open.job, act)} />
      <FastenerTable fasteners={view.fasteners} />
      <PhotosByPlace job={open.job} bench={bench} photos={view.photos} />
    </article>
  );
}

function standingWords({ parts }: RegistersView): string {
  const told = parts.filter(({ state }) => state !== 'open' && state !== 'not-told').length;
  const back = parts.filter(({ state }) => state === 'back').length;
  return `${told} of ${parts.length} parts told, ${back} back in their places.`;
}
