import type { AnswerRow } from '@gudgeon/core/workbench';
import { memo, useRef, useState } from 'react';
import { VerdictMark } from '../../bench/index.js';
import { useInSight, useWhenSeen } from '../../figures/index.js';

/** As many as a glance takes in; the rest unfold. */
const FIRST = 12;

interface AnswersProps {
  readonly rows: readonly AnswerRow[];
  readonly title?: string;
}
/** The numbers of a subject: value with its doubt, verdict, limit with its origin, the distance to it and the chance that it holds. */
export function Answers({ rows, title = 'What follows' }: AnswersProps) {
  return rows.length === 0 ? null : <Seen rows={rows} title={title} />;
}

function Seen({ rows, title }: Required<AnswersProps>) {
  const box = useRef<HTMLElement>(null);
  const seen = useWhenSeen(rows, useInSight(box));
  return (
    <section ref={box} className="stack" aria-label={title}>
      <Rows rows={seen} title={title} />
    </section>
  );
}

const Rows = memo(function Rows({ rows, title }: Required<AnswersProps>) {
  const [all, setAll] = useState(false);
  const shown = all ? rows : rows.slice(0, FIRST);
  return (
    <>
      <h2>{title}</h2>
      <ul className="plain answers">
        {shown.map((row) => (
          <li key={row.key} className="answer" data-answer={row.key} data-answer-verdict={row.verdict}>
            <Answer {...row} />
          </li>
        ))}
      </ul>
      {rows.length > FIRST && (
        <button type="button" className="button" aria-expanded={all} onClick={() => setAll(!all)}>
          {all ? `Only the first ${FIRST}` : `${rows.length - FIRST} more: ${title.toLowerCase()}`}
        </button>
      )}
    </>
  );
});

/** Its props are texts: a row that reads the same is not drawn again while a slider moves. */
const Answer = memo(function Answer(row: AnswerRow) {
  const { name, value, doubt, verdict, nearEnd } = row;
  return (
    <>
      <span className="answer-name">{name}</span>
      <span className="answer-value">
        <b>{value}</b> {doubt}
      </span>
      {row.limit !== '' && (
        <span className="answer-held">
          {verdict && <VerdictMark verdict={verdict} {...(nearEnd ? { nearEnd } : {})} />}
          <span className="answer-limit">{limitWords(row)}</span>
        </span>
      )}
    </>
  );
});

const limitWords = ({ limit, distance, chance, origin }: AnswerRow): string =>
  [
    `wanted ${limit}`,
    ...(distance ? [distance] : []),
    ...(chance ? [`chance that it holds: ${chance}`] : []),
    ...(origin === '' ? [] : [origin]),
  ].join('; ');
