interface ProgressProps {
  /** In words, e.g. "7 of 10, stage 2 of 3". */
  readonly words: string;
  readonly done: number;
  readonly of: number;
}

/** How far the work is, in words first. */
export function Progress({ words, done, of }: ProgressProps) {
  return (
    <div className="progress">
      <span>{words}</span>
      <progress value={done} max={Math.max(of, 1)} aria-label={words} />
    </div>
  );
}
