import { useEffect, useState } from 'react';
import { Link } from 'wouter';
import { ActButton, Reasoned, say } from '../../../bench/index.js';
import { type Action, useActions, useFromTop } from '../../../keys/index.js';
import { startPlace } from '../places.js';
import { StateMark } from '../state-mark.js';
import type { GoProps } from './start-props.js';

/** Read aloud by whoever holds the key and answered by the other, in this order; the deadly ones first. */
const ALOUD: readonly string[] = ['second-person', 'extinguisher', 'throttle', 'stop-rule', 'clamp'];

/** The lines before the key is turned: one called out, one answered, with what the record says beside it. */
export function Lines(props: GoProps) {
  const { view, desk } = props;
  const open = view.ready.items.filter(({ state }) => state !== 'ready');
  const [agreed, setAgreed] = useState(false);
  if (open.length > 0 && !agreed)
    return (
      <section className="hindrances" aria-labelledby="open-items">
        <h2 id="open-items">Not ready yet</h2>
        <ul className="plain stack">
          {open.map(({ id, title, state, words }) => (
            <li key={id} className="row">
              <StateMark state={state} />
              <span>
                {title}: {words}
              </span>
            </li>
          ))}
        </ul>
        <Link className="act" data-bench-control="to-list" href={startPlace(desk.job)}>
          To the list
        </Link>
        <div className="apart">
          <Reasoned
            name="Start it all the same"
            about="What is open stands in the record beside your reason."
            button="Start with these open"
            usual={['ran before, and was started without this book']}
            record={(reason) => {
              const titles = open.map(({ title }) => title).join('; ');
              const text = `Started with these open: ${titles}. ${reason}`.slice(0, 480);
              if (desk.recorder.record({ kind: 'note', data: { about: 'first start', text } }, 'Noted'))
                setAgreed(true);
            }}
          />
        </div>
      </section>
    );
  return <Aloud {...props} />;
}

function Aloud({ view, go }: GoProps) {
  const lines = ALOUD.flatMap((id) => view.ready.items.find((item) => item.id === id) ?? []);
  const [at, setAt] = useState(0);
  const line = lines[at];
  const last = at >= lines.length - 1;
  useFromTop(`line ${at}`);
  useEffect(() => say(line?.title ?? ''), [line?.title]);
  const answered: Action = {
    name: 'answered',
    label: last ? 'Answered. Fuel on' : 'Answered',
    keys: ['Enter', ' ', 'PageDown'],
    available: true,
    run: () => (last ? go.set({ phase: 'clear' }) : setAt(at + 1)),
  };
  const run = useActions([answered]);
  if (line === undefined) return null;
  return (
    <section className="bench" aria-live="polite" data-line={line.id}>
      <p className="field-name">
        Line {at + 1} of {lines.length}. One calls, the other answers.
      </p>
      <h2 className="aloud">{line.title}</h2>
      <p className="work-word">
        {line.id === 'stop-rule' && `${view.stop.seconds} s (${view.stop.origin}). `}
        In the record: {line.words}
        {line.given && ` (${line.given.by}, ${line.given.at})`}
      </p>
      <ActButton action={answered} run={run} />
    </section>
  );
}
