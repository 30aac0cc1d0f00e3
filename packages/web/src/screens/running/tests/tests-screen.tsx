import { cylinderTestsView } from '@gudgeon/core/workbench';
import { useMemo, useState } from 'react';
import { BenchScreen, type OpenJob, Said, WithJob } from '../../../shell/index.js';
import { useRunning } from '../use-running.js';
import { CompressionPart } from './compression-part.js';
import { LeakagePart } from './leakage-part.js';

export function TestsScreen({ job }: { readonly job: string }) {
  return <WithJob job={job}>{(open) => <Tests open={open} />}</WithJob>;
}

const NAMES = [
  ['compression', 'Compression'],
  ['leakage', 'Leakage'],
] as const;
type TestName = (typeof NAMES)[number][0];

/** Compression and leakage of all cylinders, keyed at the bench and read against the rule that holds. */
function Tests({ open }: { readonly open: OpenJob }) {
  const desk = useRunning(open);
  const view = useMemo(() => cylinderTestsView(desk.bench), [desk.bench]);
  const [test, setTest] = useState<TestName>('compression');
  const begun = view.compression.rows.some(({ dry }) => dry) || view.leakage.rows.some(({ read }) => read);
  const props = { desk, view };
  return (
    <BenchScreen title={view.title} cautions={view.cautions} begun={begun}>
      <fieldset className="plain row">
        <legend className="only-read">Which test</legend>
        {NAMES.map(([name, words]) => (
          <button
            key={name}
            type="button"
            className="button test-name"
            aria-pressed={name === test}
            onClick={() => setTest(name)}
          >
            {words}
          </button>
        ))}
      </fieldset>
      <Said recorder={desk.recorder} />
      {test === 'compression' ? <CompressionPart {...props} /> : <LeakagePart {...props} />}
      {view.doubts.length > 0 && (
        <ul className="plain stack" aria-label="Doubts">
          {view.doubts.map((words) => (
            <li key={words} className="still-open">
              {words}
            </li>
          ))}
        </ul>
      )}
    </BenchScreen>
  );
}
