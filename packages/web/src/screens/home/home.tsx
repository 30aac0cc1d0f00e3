import { Link } from 'wouter';
import { listJobs, useAnswer } from '../../api/index.js';
import { Shell, Title } from '../../shell/index.js';
import { EngineOnStand } from './engine-on-stand.js';

/** The engines on their stands, each with its next action. */
export function Home() {
  const answer = useAnswer(listJobs);
  return (
    <Shell place="">
      <div className="stack-wide">
        <div className="home-head">
          <Title tab="Engines">Engines on their stands</Title>
          <Link href="/new" className="button button-main">
            Put an engine on a stand
          </Link>
        </div>
        {!answer && <p role="status">Fetching the engines…</p>}
        {answer && !answer.ok && <p role="alert">{answer.fault.words}</p>}
        {answer?.ok && answer.value.jobs.length === 0 && (
          <p>No engine here yet. Put one on a stand: choose a sheet, change what differs, and begin.</p>
        )}
        {answer?.ok && (
          <ul className="plain home-list">
            {answer.value.jobs.map((line) => (
              <li key={line.job}>
                <EngineOnStand line={line} />
              </li>
            ))}
          </ul>
        )}
      </div>
    </Shell>
  );
}
