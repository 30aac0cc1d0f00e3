const REASONS = ['misread', 'wrong place', 'slipped'] as const;

interface StrikeReadingProps {
  readonly words: string;
  readonly strike: (reason: string) => void;
}

/** One touch strikes a reading out with its reason; the old figure stays readable in the record. */
export function StrikeReading({ words, strike }: StrikeReadingProps) {
  return (
    <fieldset className="plain strike-reading">
      <legend>Strike out:</legend>
      {REASONS.map((reason) => (
        <button
          key={reason}
          type="button"
          className="button"
          aria-label={`Strike out ${words}: ${reason}`}
          onClick={() => strike(reason)}
        >
          {reason}
        </button>
      ))}
    </fieldset>
  );
}
