import { type KeyboardEvent, memo, type RefObject } from 'react';

interface NumberFieldProps {
  readonly id: string;
  readonly field: RefObject<HTMLInputElement | null>;
  readonly onText: (text: string) => void;
  readonly onKey: (event: KeyboardEvent) => void;
}
/** The armed field: plain text, so that wheel and arrows change nothing, and without the keyboard of a phone. */
export const NumberField = memo(function NumberField({ id, field, onText, onKey }: NumberFieldProps) {
  return (
    <input
      id={id}
      ref={field}
      className="entry-input"
      type="text"
      inputMode="none"
      autoComplete="off"
      autoCorrect="off"
      spellCheck={false}
      data-armed
      placeholder="–"
      aria-describedby={`${id}-ghost ${id}-said`}
      onChange={(event) => onText(event.target.value)}
      onKeyDown={onKey}
    />
  );
});
