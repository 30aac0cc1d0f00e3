import { Link } from 'wouter';
import { useActions } from '../keys/index.js';

interface FinishedProps {
  readonly words: string;
  readonly to: string;
  readonly toWords: string;
  readonly go: () => void;
  /** Name of the act that came before by Enter: a bounce of it must not press this. */
  readonly after?: string;
}

/** The end of a piece of work, in words, with the way on. */
export function Finished({ words, to, toWords, go, after = 'on' }: FinishedProps) {
  const on = { label: toWords, available: true, run: go };
  useActions([
    { ...on, name: after, keys: ['Enter'] },
    { ...on, name: 'on', keys: [' '] },
  ]);
  return (
    <section className="finished" aria-live="polite">
      <p className="finished-words">✓ {words}</p>
      <Link href={to} className="act" data-bench-control="on">
        {toWords}
      </Link>
    </section>
  );
}
