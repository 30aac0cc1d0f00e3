/** The known name that a mistyped one probably means: at most two letters apart, or a third of its length; else undefined. */
export function nearestName(given: string, known: readonly string[]): string | undefined {
  if (given.length > 40) return undefined;
  const most = Math.max(2, Math.floor(given.length / 3));
  let best: { readonly name: string; readonly steps: number } | undefined;
  for (const name of known) {
    const steps = stepsBetween(given.toLowerCase(), name.toLowerCase());
    if (steps <= most && (best === undefined || steps < best.steps)) best = { name, steps };
  }
  return best?.name;
}

/** Levenshtein distance: letters to insert, drop or change. */
function stepsBetween(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min((row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1, change));
    }
    row = next;
  }
  return row[b.length] ?? 0;
}
