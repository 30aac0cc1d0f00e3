import type { Bench, OrderLineView } from '@gudgeon/core/workbench';
import { VerdictMark } from '../../bench/index.js';
import type { Recorder } from '../../shell/index.js';
import { CameBack } from './came-back.js';
import { Places } from './places.js';

interface OrderLineProps {
  readonly job: string;
  readonly bench: Bench;
  readonly recorder: Recorder;
  readonly line: OrderLineView;
}

/** One piece of work: what, to which size, how it is finished and held, who decided it, and what came back. */
export function OrderLine({ job, bench, recorder, line }: OrderLineProps) {
  const facts = [
    ['Finish', line.finish],
    ['Fitted to', line.fittedTo],
    ['With', line.with],
  ] as const;
  return (
    <section className="order-line stack" aria-labelledby={`order-${line.number}`} data-order={line.id}>
      <h3 id={`order-${line.number}`}>
        {line.number}. {capital(line.operation)}: {line.part}
      </h3>
      {line.target !== '' && (
        <p className="order-target">
          {line.target} {line.tolerance}
        </p>
      )}
      <Places places={line.places} />
      <dl className="fit-figures">
        {facts
          .filter(([, text]) => text !== '')
          .map(([name, text]) => (
            <div key={name} className="fit-figure">
              <dt className="fit-figure-name">{name}</dt>
              <dd className="fit-figure-text">{text}</dd>
            </div>
          ))}
      </dl>
      {line.notes.length > 0 && (
        <ul className="fit-working">
          {line.notes.map((note) => (
            <li key={note}>{note}</li>
          ))}
        </ul>
      )}
      <p className="field-hint">
        Decided by {line.decidedBy.by}, {line.decidedBy.at}: {line.decidedBy.reason}
      </p>
      <div className="order-returned" data-returned={line.returned.state}>
        <VerdictMark verdict={line.returned.state} />
        <span>
          <span className="fit-figure-name">When it came back</span>
          <span>{capital(line.returned.words)}</span>
        </span>
      </div>
      <CameBack job={job} bench={bench} recorder={recorder} line={line} />
    </section>
  );
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
