import { type RecordView, recordView } from '@gudgeon/core/workbench';
import { useMemo } from 'react';
import { type OpenJob, Said, Title, useBench, useRecord, WithJob } from '../../shell/index.js';
import { AddNote } from './add-note.js';
import { AddPhoto } from './add-photo.js';
import { saveRecord } from './save-record.js';
import { Section } from './section.js';

export function RecordScreen({ job }: { readonly job: string }) {
  return <WithJob job={job}>{(open) => <RecordPage open={open} />}</WithJob>;
}

/** Everything that was done, by whom and when: to read, to strike out, to print and to take away. */
function RecordPage({ open }: { readonly open: OpenJob }) {
  const bench = useBench(open);
  const recorder = useRecord(open, bench);
  const view = useMemo(() => recordView(bench), [bench]);
  return (
    <article className="record">
      <Title tab="Record">{view.title}</Title>
      <div className="row not-printed">
        <button type="button" className="button button-main" onClick={() => window.print()}>
          Print
        </button>
        <button type="button" className="button" onClick={() => void saveRecord(open.job, view)}>
          Save as one file
        </button>
      </div>
      <Lead view={view} />
      <OpenWork view={view} />
      <Said recorder={recorder} />
      {view.sections.map((section) => (
        <Section key={section.title} job={open.job} section={section} strike={recorder.strikeOut} />
      ))}
      <Remarks view={view} />
      <AddPhoto job={open.job} recorder={recorder} />
      <AddNote recorder={recorder} />
    </article>
  );
}

function Lead({ view }: { readonly view: RecordView }) {
  return (
    <section className="record-lead" aria-label="Head of the record">
      {view.invented && (
        <p>
          <span className="tag-invented">invented example</span> No figure here belongs to a real engine.
        </p>
      )}
      <dl className="record-head">
        <div>
          <dt>Head code</dt>
          <dd className="fixed record-code">{view.headCode}</dd>
        </div>
        <div>
          <dt>Entries</dt>
          <dd>{view.entries}</dd>
        </div>
        <div>
          <dt>Chain</dt>
          <dd data-chain>{view.chain}</dd>
        </div>
      </dl>
      <p className="soft">The engine maker’s manual and the part maker’s sheet outrank every computed figure.</p>
    </section>
  );
}

function OpenWork({ view }: { readonly view: RecordView }) {
  const open = view.sections.flatMap((section) => section.open);
  return (
    <section className="record-open" aria-labelledby="still-open">
      <h2 id="still-open">{open.length === 0 ? 'Nothing is left open' : 'Still open'}</h2>
      <ul>
        {open.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}

function Remarks({ view }: { readonly view: RecordView }) {
  const lines = [
    ...view.cautions,
    ...view.notUnderstood.map((text) => `Not understood by this version, kept as it is: ${text}`),
  ];
  if (lines.length === 0) return null;
  return (
    <section className="stack" aria-labelledby="remarks">
      <h2 id="remarks">Remarks</h2>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}
