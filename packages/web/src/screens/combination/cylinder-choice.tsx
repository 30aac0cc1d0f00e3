import type { CompressionView } from '@gudgeon/core/workbench';
import { VerdictShape } from '../../bench/index.js';
import { verdictState } from '../measure/verdict-mark.js';

interface CylinderChoiceProps {
  readonly view: CompressionView;
  readonly set: (cylinder: CompressionView['cylinder']) => void;
}

/** The ratio of every cylinder; pressing one shows how it is built up. */
export function CylinderChoice({ view, set }: CylinderChoiceProps) {
  return (
    <fieldset className="plain cylinders">
      <legend className="field-name">Ratio of each cylinder</legend>
      {view.cylinders.map(({ number, ratio, verdict }) => (
        <button
          key={number}
          type="button"
          className="button cylinder"
          aria-pressed={number === view.cylinder}
          onClick={() => set(number)}
          data-cylinder={number}
          data-verdict={verdictState(verdict)}
        >
          <small>
            <span className="only-read">cylinder </span>
            {number}
          </small>
          <span>{ratio === '' ? 'no data' : ratio}</span>
          {verdict !== 'no data' && (
            <span className="cylinder-shape">
              <VerdictShape state={verdictState(verdict)} />
              <span className="only-read">{verdict}</span>
            </span>
          )}
        </button>
      ))}
    </fieldset>
  );
}
