/** How the log names the decision about the whole combination. */
export const COMBINATION = { decision: 'combination', scope: 'whole', alternative: 'scratch-copy' } as const;

export const isCombination = ({ decision, scope }: { readonly decision: string; readonly scope: string }): boolean =>
  decision === COMBINATION.decision && scope === COMBINATION.scope;
