interface BigTargetProps {
  readonly name: string;
  /** Number and unit as they stand on the sheet. */
  readonly text: string;
  readonly origin?: string;
}

/** The one number being worked on, to be read from the far side of the block. */
export function BigTarget({ name, text, origin }: BigTargetProps) {
  return (
    <div className="target">
      <span className="target-name">{name}</span>
      <strong className="target-number" data-current-number>
        {text}
      </strong>
      {origin && <span className="target-origin">{origin}</span>}
    </div>
  );
}
