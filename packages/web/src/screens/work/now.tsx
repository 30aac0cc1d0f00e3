import type { WorkOfferView, WorkView } from '@gudgeon/core/workbench';
import { Link } from 'wouter';
import { actName, benchPlace, lengthWords, operationPlace } from './act-words.js';

interface NowProps {
  readonly job: string;
  readonly view: WorkView;
  readonly limited: boolean;
}

/** What can be begun now, by operation: the first of all as one big way in, the others as rows. */
export function Now({ job, view, limited }: NowProps) {
  const first = view.now[0]?.offers[0];
  return (
    <section className="stack" aria-labelledby="now">
      <h2 id="now">Can be begun now</h2>
      {first ? (
        <Link className="next-link begin-link" href={benchPlace(job, first.act.id)} data-begin={first.act.id}>
          <small>Begin</small>
          {actName(first.act)}
          <small>{offerWords(first, limited)}</small>
        </Link>
      ) : (
        <p>{view.signedOff ? 'All of it is signed.' : 'Nothing can be begun until something below is settled.'}</p>
      )}
      {view.now.map((group, at) => {
        const offers = at === 0 ? group.offers.slice(1) : group.offers;
        return offers.length === 0 && group.more === undefined ? null : (
          <div key={group.operation} className="stack">
            <h3>
              <Link href={operationPlace(job, group.operation)} className="operation-link">
                {group.operationTitle}
              </Link>
            </h3>
            <ul className="plain stack">
              {offers.map((offer) => (
                <li key={offer.act.id}>
                  <Link className="act-link" href={benchPlace(job, offer.act.id)}>
                    <span className="act-link-words">
                      <span>{actName(offer.act)}</span>
                      <small>{offerWords(offer, limited)}</small>
                    </span>
                    <strong className="act-link-verb">Begin →</strong>
                  </Link>
                </li>
              ))}
            </ul>
            {group.more !== undefined && (
              <p className="field-hint">And {group.more} more kinds of acts in this operation.</p>
            )}
          </div>
        );
      })}
    </section>
  );
}

function offerWords({ act, alike, fits, minutesToSafe, safeAfter, pause }: WorkOfferView, limited: boolean): string {
  return [
    lengthWords(act.minutes),
    alike === undefined ? '' : `and ${alike} more like it`,
    safeAfter ? '' : pause,
    limited && !fits ? `Does not fit: ${lengthWords(minutesToSafe)} until one may stop` : '',
  ]
    .filter((words) => words !== '')
    .join(' · ');
}
