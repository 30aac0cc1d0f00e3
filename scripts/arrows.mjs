/** Checks who imports whom. Proves first that the rules bite, and fails when it looked at nothing. */
import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { cruise } from 'dependency-cruiser';
import config, { rulesFor } from '../.dependency-cruiser.mjs';

process.chdir(join(dirname(fileURLToPath(import.meta.url)), '..'));
const sources = ['core', 'store', 'report', 'server', 'cli', 'web']
  .map((name) => `packages/${name}/src`)
  .filter((path) => existsSync(path));

async function violationsIn(paths, rules) {
  const options = { ...rules.options, ruleSet: { forbidden: rules.forbidden }, validate: true };
  const { output } = await cruise(paths, options);
  return output.summary;
}

/** A file in `quantity` that imports from `engine` must be caught, else the rules are asleep. */
async function provesItself() {
  const summary = await violationsIn(['tests/arrows/packages/core/src'], rulesFor('tests/arrows/'));
  return summary.violations.some((violation) => violation.rule.name === 'core-quantity');
}

if (!(await provesItself())) {
  console.error('arrows: the planted violation was not caught; the rules are not working');
  process.exit(1);
}
const summary = await violationsIn(sources, config);
if (summary.totalCruised === 0) {
  console.error('arrows: looked at 0 modules');
  process.exit(1);
}
for (const { rule, from, to } of summary.violations) {
  const advice = config.forbidden.find((one) => one.name === rule.name)?.comment ?? '';
  console.error(`arrows: ${from} -> ${to} (${rule.name}). ${advice}`);
}
console.log(`arrows: ${summary.totalCruised} modules, ${summary.violations.length} wrong imports`);
process.exit(summary.violations.length > 0 ? 1 : 0);
