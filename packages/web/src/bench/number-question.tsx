import type { Barrier } from './number-gate.js';

interface NumberQuestionProps {
  readonly question: Barrier & { kind: 'ask' };
  readonly reading: string;
  readonly yes: () => void;
  readonly no: () => void;
}

/** Reading and expectation side by side; keeping and keying again stand well apart. */
export function NumberQuestion({ question, reading, yes, no }: NumberQuestionProps) {
  return (
    <div className="ask" role="alertdialog" aria-label="Look at this reading again">
      <p>{question.words}</p>
      <div className="ask-sides">
        <div>
          <div className="entry-slot">Keyed</div>
          <div className="ask-number">{reading}</div>
        </div>
        {question.expected && (
          <div>
            <div className="entry-slot">Expected</div>
            <div className="ask-number">{question.expected}</div>
          </div>
        )}
      </div>
      <button type="button" className="act" data-bench-control="key-again" onClick={no}>
        Key it again
      </button>
      <button type="button" className="act act-second apart" data-bench-control="keep" onClick={yes}>
        Keep {reading}
      </button>
    </div>
  );
}
