import type { LiftFrom } from '@gudgeon/core/workbench';

interface LiftFromChoiceProps {
  readonly from: LiftFrom;
  /** Whether a lobe was read; before that the card is all there is. */
  readonly canRead: boolean;
  readonly set: (from: LiftFrom) => void;
}
const WAYS = [
  ['read', 'as read at the wheel'],
  ['card', 'by the cam card'],
] as const;

/** Where the lift of the valves comes from. */
export function LiftFromChoice({ from, canRead, set }: LiftFromChoiceProps) {
  if (!canRead)
    return <p className="field-hint">Lift by the cam card: no lobe was read down to its base near the top.</p>;
  return (
    <fieldset className="plain row">
      <legend className="field-name">Lift of the valves</legend>
      {WAYS.map(([each, words]) => (
        <button key={each} type="button" className="button" aria-pressed={each === from} onClick={() => set(each)}>
          {words}
        </button>
      ))}
    </fieldset>
  );
}
