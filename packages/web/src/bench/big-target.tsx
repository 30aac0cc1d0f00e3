interface BigTargetProps {
  /** What is asked, e.g. "Tighten hole 7 to". */
  readonly name: string;
  /** Number and unit as they stand on the sheet; words where the sheet gives no number. */
  readonly text: string;
}

/** The one number being worked on, to be read from the far side of the block. Words do not stand that large. */
export function BigTarget({ name, text }: BigTargetProps) {
  const isNumber = /\d/.test(text);
  return (
    <div className="target">
      <h2 className="step-lead">{name}</h2>
      {text !== '' && (
        <p className={isNumber ? 'target-number' : 'step-lead'} data-current-number={isNumber || undefined}>
          {text}
        </p>
      )}
    </div>
  );
}
