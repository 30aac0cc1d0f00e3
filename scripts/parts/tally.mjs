/** Adds outcomes up: how many checks passed, how many failed, and the names of those with failures. */
export function tally(outcomes) {
  const sum = (part) => outcomes.reduce((total, outcome) => total + outcome[part], 0);
  return {
    passed: sum('passed'),
    failed: sum('failed'),
    problems: outcomes
      .filter((outcome) => outcome.failed > 0)
      .map(({ name, failed }) => (failed > 1 ? `${name} (${failed})` : name)),
  };
}
