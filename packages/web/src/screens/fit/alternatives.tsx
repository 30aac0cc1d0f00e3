import type { AlternativeView, DecisionView } from '@gudgeon/core/workbench';
import type { CSSProperties } from 'react';
import { VerdictMark } from '../../bench/index.js';

interface AlternativesProps {
  readonly view: DecisionView;
  readonly pick: (alternative: string) => void;
}

/** Every figure that any alternative shows, in the order in which they first come. */
export const figureNames = (alternatives: readonly AlternativeView[]): readonly string[] => [
  ...new Set(alternatives.flatMap(({ figures }) => figures.map(({ name }) => name))),
];

/** Lines of a card beside its figures: name, verdict, against, order, parts, button. */
const OTHER_LINES = 6;

/**
 * Alternatives side by side: cards below each other on a phone; on a laptop columns whose lines stand level, so that a figure is
 * compared along one line of sight.
 */
export function Alternatives({ view, pick }: AlternativesProps) {
  const { alternatives, decided } = view;
  if (alternatives.length === 0) return null;
  const names = figureNames(alternatives);
  const lines = { '--lines': names.length + OTHER_LINES } as CSSProperties;
  return (
    <section className="stack" aria-labelledby="alternatives">
      <h2 id="alternatives">Side by side</h2>
      <ul className="plain fit-side" style={lines}>
        {alternatives.map((one) => (
          <li
            key={one.id}
            className={one.possible ? 'fit-card' : 'fit-card fit-card-blocked'}
            data-alternative={one.id}
            data-possible={one.possible}
          >
            <CardHead one={one} decided={decided?.alternative === one.id} />
            <VerdictMark verdict={one.verdict} />
            {names.map((name) => (
              <Figure key={name} name={name} text={one.figures.find((each) => each.name === name)?.text} />
            ))}
            <Lines title={one.possible ? 'Against' : 'Cannot be taken'} lines={one.against} />
            <Lines title="To the machine shop" lines={one.orders} />
            <Lines title="To buy" lines={one.buys} />
            {one.possible ? (
              <button type="button" className="button" onClick={() => pick(one.id)}>
                Go on with this<span className="only-read">: {one.words}</span>
              </button>
            ) : (
              <span />
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}

function CardHead({ one, decided }: { readonly one: AlternativeView; readonly decided: boolean }) {
  return (
    <div className="fit-card-head">
      <h3>{one.words}</h3>
      {one.recommended && <strong className="fit-tag">recommended</strong>}
      {decided && <strong className="fit-tag">decided</strong>}
    </div>
  );
}

/** A figure that this alternative does not have keeps its line on a laptop, and is left out on a phone. */
function Figure({ name, text }: { readonly name: string; readonly text: string | undefined }) {
  return (
    <div className="fit-figure" data-empty={text === undefined ? '' : undefined}>
      <span className="fit-figure-name">{name}</span>
      <span className="fit-figure-text">{text ?? '–'}</span>
    </div>
  );
}

function Lines({ title, lines }: { readonly title: string; readonly lines: readonly string[] }) {
  return (
    <div className="fit-lines" data-empty={lines.length === 0 ? '' : undefined}>
      {lines.length > 0 && (
        <>
          <span className="fit-figure-name">{title}</span>
          <ul>
            {lines.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}
