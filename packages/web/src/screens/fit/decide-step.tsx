import type { AlternativeView, DecisionView } from '@gudgeon/core/workbench';
import { ReasonForm, VerdictMark } from '../../bench/index.js';
import { useActions } from '../../keys/index.js';

interface DecideStepProps {
  readonly view: DecisionView;
  readonly chosen: AlternativeView;
  readonly record: (reason: string) => void;
  readonly back: () => void;
}

/** Reasons that fit most decisions; the recommended one has its own. */
const usualReasons = ({ recommended }: AlternativeView): readonly string[] => [
  ...(recommended ? ['as recommended'] : ['another was recommended, this suits the job better']),
  'parts are at hand',
  'the owner wants it so',
  'least time at the shop',
];

/** One alternative alone, with everything that will be recorded of it; a reason is needed, and the way back is well apart. */
export function DecideStep({ view, chosen, record, back }: DecideStepProps) {
  const actions = [{ name: 'back', label: 'Back to the alternatives', keys: ['Escape'], available: true, run: back }];
  const run = useActions(actions);
  return (
    <>
      <section className="card stack" aria-labelledby="chosen">
        <div className="fit-card-head">
          <h2 id="chosen">{chosen.words}</h2>
          {chosen.recommended && <strong className="fit-tag">recommended</strong>}
        </div>
        <VerdictMark verdict={chosen.verdict} />
        <dl className="fit-figures">
          {chosen.figures.map(({ name, text }) => (
            <div key={name} className="fit-figure">
              <dt className="fit-figure-name">{name}</dt>
              <dd className="fit-figure-text">{text}</dd>
            </div>
          ))}
        </dl>
        <Lines title="Against" lines={chosen.against} />
        <Lines title="To the machine shop" lines={chosen.orders} />
        <Lines title="To buy" lines={chosen.buys} />
      </section>
      <section className="stack" aria-labelledby="decide">
        <h2 id="decide">{view.decided ? 'Decide again' : 'Decide'}</h2>
        <p>
          These figures are recorded with the decision, as you see them now
          {view.decided ? `. It takes the place of “${view.decided.words}”` : ''}.
        </p>
        <ReasonForm button="Record this decision" usual={usualReasons(chosen)} record={record} />
      </section>
      <div className="apart">
        <button type="button" className="button" onClick={() => run('back')}>
          Back to the alternatives <span className="fit-key act-key-name">Esc</span>
        </button>
      </div>
    </>
  );
}

function Lines({ title, lines }: { readonly title: string; readonly lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <div>
      <h3>{title}</h3>
      <ul className="fit-working">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </div>
  );
}
