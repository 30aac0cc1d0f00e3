interface LargeAskProps {
  readonly lead: string;
  readonly number: string;
  readonly unit: string;
}

/** What the valve asks for: the lead in the hand, the figure from the far side of the block. */
export function LargeAsk({ lead, number, unit }: LargeAskProps) {
  return (
    <>
      <p className="step-lead">{lead}</p>
      {number !== '' && (
        <p className={number.length > 5 ? 'target-number target-long' : 'target-number'} data-current-number>
          {number} <span className="target-unit">{unit}</span>
        </p>
      )}
    </>
  );
}
