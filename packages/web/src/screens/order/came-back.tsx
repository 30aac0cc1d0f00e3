import { type Bench, type OrderLineView, orderReturn, proposeReturned } from '@gudgeon/core/workbench';
import { Link, useLocation } from 'wouter';
import { Reasoned } from '../../bench/index.js';
import { usePerson } from '../../log/index.js';
import { AskPerson, type Recorder } from '../../shell/index.js';

interface CameBackProps {
  readonly job: string;
  readonly bench: Bench;
  readonly recorder: Recorder;
  readonly line: OrderLineView;
}
const USUAL = ['back from the machine shop', 'done here'] as const;

/** The work is back: its places get a new occasion, and the worksheet opens where they are measured again. */
export function CameBack({ job, bench, recorder, line }: CameBackProps) {
  const [, go] = useLocation();
  const person = usePerson();
  const back = orderReturn(bench, line.id);
  if (back === undefined) return null;
  const sheet = `/engine/${job}/measure/${back.feature}?slot=${encodeURIComponent(back.slot)}`;
  const record = (why: string) => {
    const data = { feature: back.feature, places: back.places, why: `${line.operation}: ${why}` };
    if (recorder.take(proposeReturned(bench, data), `${line.operation}: came back`)) go(sheet);
  };
  return (
    <div className="stack not-printed">
      {back.waits && (
        <Link className="button" href={sheet}>
          Go on measuring: {back.title}
        </Link>
      )}
      {person === '' ? (
        <details className="fold">
          <summary>The work came back: measure it again</summary>
          <AskPerson />
        </details>
      ) : (
        <Reasoned
          name="The work came back: measure it again"
          about={`${back.title} are read again from the beginning; the readings from before the work are kept beside the new ones.`}
          button="It is back: measure again"
          usual={USUAL}
          record={record}
        />
      )}
    </div>
  );
}
