export const VERDICTS = ['in', 'near', 'out'] as const;
export type Verdict = (typeof VERDICTS)[number];

/** Rounding must not push a value over a limit that it meets exactly. */
const ROUNDING = 1e-9;

/** Zone of a deviation (at least 0) against its tolerance with an expanded uncertainty. Source: ISO 14253-1, from memory. */
export function verdictOf(deviation: number, tolerance: number, doubt: number): Verdict {
  const slack = ROUNDING * (tolerance + doubt);
  if (deviation + doubt <= tolerance + slack) return 'in';
  return deviation - doubt > tolerance + slack ? 'out' : 'near';
}

/** The worst of several verdicts: one lobe out makes the cam out. */
export function worstOf(verdicts: readonly Verdict[]): Verdict {
  return VERDICTS[Math.max(...verdicts.map((one) => VERDICTS.indexOf(one)))]!;
}
