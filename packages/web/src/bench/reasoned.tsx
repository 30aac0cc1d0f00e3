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
export function Reasoned({ name, about, ...form }: ReasonedProps) {
  return (
    <details className="fold">
      <summary>{name}</summary>
      <div className="stack">
        <p>{about}</p>
        <ReasonForm {...form} />
      </div>
    </details>
  );
}
