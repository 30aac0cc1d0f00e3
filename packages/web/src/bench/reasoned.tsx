import { memo, useState } from 'react';
import { ReasonForm } from './reason-form.js';

interface ReasonedProps {
  readonly name: string;
  /** What is about to be recorded, and what it means. */
  readonly about: string;
  readonly button: string;
  readonly usual: readonly string[];
  readonly record: (reason: string) => void;
}

/** An act that needs a reason: folded away from the usual one, and recorded with the words that were given. */
export const Reasoned = memo(function Reasoned({ name, about, ...form }: ReasonedProps) {
  const [open, setOpen] = useState(false);
  return (
    <details className="fold" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{name}</summary>
      {open && (
        <div className="stack">
          <p>{about}</p>
          <ReasonForm {...form} />
        </div>
      )}
    </details>
  );
});
