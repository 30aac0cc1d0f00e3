import { type Engine, headName } from '@gudgeon/core/engine';
import { Link } from 'wouter';

interface WaysProps {
  readonly job: string;
  readonly engine: Engine;
  /** Place of the next action, marked on its way. */
  readonly next: string;
}
interface Way {
  readonly place: string;
  readonly name: string;
  readonly about: string;
}

/** The ways to work on the engine; one that is not built yet says so instead of leading nowhere. */
export function Ways({ job, engine, next }: WaysProps) {
  return (
    <div className="stack-wide">
      <section className="stack" aria-labelledby="way-assemble">
        <h2 id="way-assemble">Assemble</h2>
        <Group
          job={job}
          ways={assembleWays(engine)}
          next={next}
          none="The sheet has no heads, joints or valve gear to assemble."
        />
      </section>
      <section className="stack" aria-labelledby="way-valves">
        <h2 id="way-valves">Set valves</h2>
        <Group
          job={job}
          ways={
            engine.valveGear
              ? [
                  {
                    place: 'valves',
                    name: 'Set valves',
                    about: 'Where to stop the crank, which valves there, and the check after.',
                  },
                ]
              : []
          }
          next={next}
          none="The sheet does not say what valve gear this engine has."
        />
      </section>
      <section className="stack" aria-labelledby="way-record">
        <h2 id="way-record">Record</h2>
        <Group
          job={job}
          ways={[
            { place: 'record', name: 'Record', about: 'Everything done, by whom and when; to read and to print.' },
          ]}
          next={next}
          none=""
        />
      </section>
      <section className="stack" aria-labelledby="way-later">
        <h2 id="way-later">Measure, Fit, Run in</h2>
        <p className="way way-closed">
          Not in this version. Limits for measuring and the run-in steps of the sheet stand in the Record.
        </p>
      </section>
    </div>
  );
}

function assembleWays(engine: Engine): readonly Way[] {
  const heads = engine.heads.map((head) => ({
    place: `gasket/${head.id}`,
    name: `Gasket, ${headName(engine, head.id)}`,
    about: 'Every opening against the block, way up, faces.',
  }));
  const joints = engine.joints.flatMap((joint) => [
    {
      place: `fasteners/${joint.id}`,
      name: `Fasteners, ${joint.name}`,
      about: 'Which goes in which hole, and what goes on it.',
    },
    {
      place: `tighten/${joint.id}`,
      name: `Tighten, ${joint.name}`,
      about: `${joint.stages.length} ${joint.stages.length === 1 ? 'stage' : 'stages'}, one fastener at a time.`,
    },
  ]);
  const parts = engine.valveGear
    ? [{ place: 'parts', name: 'Lifters, pushrods, rockers', about: 'Each part back to its own place.' }]
    : [];
  return [...heads, ...joints, ...parts];
}

function Group({
  job,
  ways,
  next,
  none,
}: {
  readonly job: string;
  readonly ways: readonly Way[];
  readonly next: string;
  readonly none: string;
}) {
  if (ways.length === 0) return <p className="soft">{none}</p>;
  return (
    <ul className="plain ways">
      {ways.map((way) => (
        <li key={way.place}>
          <Link href={`/engine/${job}/${way.place}`} className={way.place === next ? 'way way-next' : 'way'}>
            <strong>{way.name}</strong>
            <small>
              {way.place === next ? 'Next. ' : ''}
              {way.about}
            </small>
          </Link>
        </li>
      ))}
    </ul>
  );
}
