/**
 * Runs every check of the project and ends with one line, `N passed, N failed`, that counts what really ran. A check
 * that looked at nothing has failed, and so has a test that was skipped.
 */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { inRoot } from './parts/root.mjs';
import { run, runPackaged } from './parts/run.mjs';
import { tally } from './parts/tally.mjs';

const outcomes = [];

// What reads sources only goes beside the build, which keeps one processor busy.
await Promise.all([
  (async () => {
    await check('format and lint', formatAndLint);
    await check('who imports whom', () => ownScript('arrows.mjs'));
  })(),
  (async () => {
    await check('build', () => ownScript('build.mjs'));
    await check('types of the tests', typesOfTests);
    await check('generated docs', () => ownScript('docs.mjs', '--check'));
  })(),
]);
outcomes.push(...(await vitest()));

const { passed, failed, problems } = tally(outcomes);
for (const problem of problems) console.error(`failed: ${problem}`);
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 && passed > 0 ? 0 : 1);

/** What a check has to say comes once it has ended, so that two beside each other do not talk at once. */
async function check(name, work) {
  const { code, words } = await work();
  console.log(`\n== ${name}\n${words.trimEnd()}`);
  outcomes.push({ name, passed: code === 0 ? 1 : 0, failed: code === 0 ? 0 : 1 });
}

async function ownScript(name, ...args) {
  const { code, output } = await run(process.execPath, [inRoot('scripts', name), ...args], { quiet: true });
  return { code, words: output };
}

async function typesOfTests() {
  const { code, output } = await runPackaged('typescript', 'tsc', ['-p', 'tsconfig.tests.json', '--listFiles'], {
    quiet: true,
  });
  const lines = output.split('\n').filter((line) => line.trim() !== '');
  const isFile = (line) => /^(\/|[A-Za-z]:).*\.(ts|tsx|mts|cts|json)$/.test(line);
  const tests = lines.filter((line) => isFile(line) && /\.test\.tsx?$/.test(line)).length;
  const words = [...lines.filter((line) => !isFile(line)), `${tests} test files`].join('\n');
  return { code: tests > 0 ? code : 1, words };
}

async function formatAndLint() {
  const { code, output } = await runPackaged('@biomejs/biome', 'biome', ['check', '.'], { quiet: true });
  const files = Number(output.match(/Checked (\d+) files?/)?.[1] ?? 0);
  return { code: files > 0 ? code : 1, words: output };
}

async function vitest() {
  console.log('\n== tests');
  const folder = mkdtempSync(join(tmpdir(), 'gudgeon-test-'));
  const report = join(folder, 'report.json');
  try {
    const args = ['run', '--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
    const { code } = await runPackaged('vitest', 'vitest', args);
    return readReport(report, code);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function readReport(file, code) {
  let report;
  try {
    report = JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return [{ name: 'the test runner gave no report', passed: 0, failed: 1 }];
  }
  const files = report.testResults.map(({ name }) => name.replaceAll('\\', '/'));
  const unloaded = report.testResults.filter(
    ({ status, assertionResults }) => status === 'failed' && assertionResults.length === 0,
  );
  const skipped = report.numPendingTests + report.numTodoTests;
  const counted = report.numFailedTests + unloaded.length + skipped;
  return [
    { name: 'tests', passed: report.numPassedTests, failed: report.numFailedTests },
    ...unloaded.map(({ name }) => ({ name: `${name} could not be run`, passed: 0, failed: 1 })),
    { name: `${skipped} tests were skipped`, passed: 0, failed: skipped },
    ...looksAt('unit tests', files, (name) => !name.includes('/tests/browser/')),
    ...looksAt('browser tests', files, (name) => name.includes('/tests/browser/')),
    // An error outside of any test, such as a promise that nobody waited for.
    ...(code !== 0 && counted === 0
      ? [{ name: 'the test runner met an error outside the tests', passed: 0, failed: 1 }]
      : []),
  ];
}

function looksAt(name, files, belongs) {
  return files.some(belongs) ? [] : [{ name: `${name}: none were run`, passed: 0, failed: 1 }];
}
