import { type OrderView, orderView } from '@gudgeon/core/workbench';
import { useMemo } from 'react';
import { Link } from 'wouter';
import { SignalPanel } from '../../bench/index.js';
import { type OpenJob, Said, Title, useBench, useRecord, useShownIn, WithJob } from '../../shell/index.js';
import { OrderLine } from './order-line.js';
import { PartsToBuy } from './parts-to-buy.js';
import { saveOrder } from './save-order.js';

export function OrderScreen({ job }: { readonly job: string }) {
  return <WithJob job={job}>{(open) => <Order open={open} />}</WithJob>;
}

/** The order to the machine shop with the parts to buy: to read, to print, to take away; and what came back held against it. */
function Order({ open }: { readonly open: OpenJob }) {
  const bench = useBench(open);
  const shownIn = useShownIn();
  const recorder = useRecord(open, bench);
  const view = useMemo(() => orderView(bench, shownIn), [bench, shownIn]);
  return (
    <article className="fit order stack-wide">
      <div className="stack">
        <Title tab="Order for the machine shop">{view.title}</Title>
        {view.invented && (
          <p>
            <span className="tag-invented">invented example</span> No figure here belongs to a real engine.
          </p>
        )}
        <div className="row not-printed">
          <button type="button" className="button button-main" onClick={() => window.print()}>
            Print
          </button>
          <button type="button" className="button" onClick={() => saveOrder(view)}>
            Save as one file
          </button>
          <Link className="button" href={`/engine/${open.job}/fit`}>
            All sizes and decisions
          </Link>
        </div>
        <Said recorder={recorder} />
      </div>
      {view.open.length > 0 && (
        <p className="record-open" role="note">
          <strong>This order is not whole.</strong>{' '}
          <a href="#order-open">
            {view.open.length === 1 ? 'One decision is' : `${view.open.length} decisions are`} still open
          </a>
        </p>
      )}
      <section className="stack" aria-labelledby="work">
        <h2 id="work">Work for the shop</h2>
        {view.lines.length === 0 ? (
          <p>Nothing is ordered: an order follows from the decisions.</p>
        ) : (
          <ol className="plain stack">
            {view.lines.map((line) => (
              <li key={line.id}>
                <OrderLine job={open.job} bench={bench} recorder={recorder} line={line} />
              </li>
            ))}
          </ol>
        )}
      </section>
      <PartsToBuy buys={view.buys} />
      <StillOpen view={view} />
      <MeasuredWith view={view} />
      {view.cautions.map((caution) => (
        <SignalPanel key={caution.can} {...caution} />
      ))}
    </article>
  );
}

/** An order never looks more whole than it is. */
function StillOpen({ view }: { readonly view: OrderView }) {
  if (view.open.length === 0) return null;
  return (
    <section className="stack" aria-labelledby="order-open">
      <h2 id="order-open">Still open ({view.open.length})</h2>
      <ul className="fit-working">
        {view.open.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}

function MeasuredWith({ view }: { readonly view: OrderView }) {
  if (view.measuredWith.length === 0) return null;
  return (
    <details className="fit-fold">
      <summary>
        <h2>Measured with ({view.measuredWith.length})</h2>
      </summary>
      <ul className="fit-working fit-opened">
        {view.measuredWith.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </details>
  );
}
