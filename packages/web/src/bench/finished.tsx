import { Link } from 'wouter';
import { useActions } from '../keys/index.js';

interface FinishedProps {
  readonly words: string;
  readonly to: string;
  readonly toWords: string;
  readonly go: () => void;
  /** Name of the act that came before by the same key: a bounce of it must not press this. */
  readonly after?: string;
}

/** The end of a piece of work, in words, with the way on. */
export function Finished({ words, to, toWords, go, after = 'on' }: FinishedProps) {
  useActions([{ name: after, label: toWords, keys: ['Enter', ' '], available: true, run: go }]);
  return (
    <section className="finished" aria-live="polite">
      <p className="finished-words">✓ {words}</p>
      <Link href={to} className="act" data-bench-control="on">
        {toWords}
      </Link>
    </section>
  );
}
