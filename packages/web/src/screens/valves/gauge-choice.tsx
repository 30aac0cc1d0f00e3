import { letGo } from '../../keys/index.js';
import type { Condition, Desk, LengthUnit } from './desk.js';

interface GaugeChoiceProps {
  readonly desk: Desk;
  /** Conditions for which the sheet prints a figure; absent where only a cold engine is measured. */
  readonly conditions?: readonly Condition[];
}
const units: readonly LengthUnit[] = ['mm', 'in'];

/** Engine cold or hot, and the unit on the feeler: never a hidden mode. */
export function GaugeChoice({ desk, conditions }: GaugeChoiceProps) {
  return (
    <div className="gauge-choice">
      {conditions && (
        <fieldset className="plain figure-choice">
          <legend className="only-read">The engine is</legend>
          {(['cold', 'hot'] as const).map((each) => (
            <button
              key={each}
              type="button"
              className="button"
              aria-pressed={each === desk.condition}
              onClick={(event) => {
                desk.setCondition(each);
                letGo(event);
              }}
            >
              {each}
              {conditions.includes(each) ? '' : ' (no figure)'}
            </button>
          ))}
        </fieldset>
      )}
      <fieldset className="plain figure-choice">
        <legend className="only-read">Unit on the feeler</legend>
        {units.map((each) => (
          <button
            key={each}
            type="button"
            className="button"
            aria-pressed={each === desk.unit}
            onClick={(event) => {
              desk.setUnit(each);
              letGo(event);
            }}
          >
            {each}
          </button>
        ))}
      </fieldset>
    </div>
  );
}
