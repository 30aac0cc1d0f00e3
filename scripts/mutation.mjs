/**
 * Mutation score of the core, room by room: `npm run mutation -- calc/crank quantity`; without a name every room of `calc`, and `quantity`.
 * Each room's figures go into docs/mutation.json, from which `scripts/docs.mjs` writes docs/mutation.md.
 */
import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';

const CORE = 'packages/core/src/';
const FIGURES = 'docs/mutation.json';
/** Entries are data sheets (words, and an example that a test runs); an index only lists. */
const LEFT_OUT = /\.(test|suite)\.ts$|\/index\.ts$|\/entries\//;

const roomsOfCalc = () =>
  readdirSync(`${CORE}calc`, { withFileTypes: true })
    .filter((one) => one.isDirectory())
    .map(({ name }) => `calc/${name}`)
    .sort();

const filesOf = (room) =>
  readdirSync(`${CORE}${room}`, { recursive: true })
    .map((name) => `${CORE}${room}/${name}`)
    .filter((file) => file.endsWith('.ts') && !LEFT_OUT.test(file));

/** Counts of one room from the tester's own report. */
function countsOf(report) {
  const count = { killed: 0, timeout: 0, survived: 0, uncovered: 0 };
  const names = { Killed: 'killed', Timeout: 'timeout', Survived: 'survived', NoCoverage: 'uncovered' };
  for (const { mutants } of Object.values(report.files))
    for (const { status } of mutants) if (names[status]) count[names[status]] += 1;
  return count;
}

function measure(room) {
  const files = filesOf(room);
  if (files.length === 0) throw new Error(`mutation: no file to change in ${CORE}${room}`);
  execFileSync('npx', ['stryker', 'run', '--mutate', files.join(',')], { stdio: 'inherit' });
  const counts = countsOf(JSON.parse(readFileSync('reports/mutation.json', 'utf8')));
  const measured = new Date().toISOString().slice(0, 10);
  const all = existsSync(FIGURES) ? JSON.parse(readFileSync(FIGURES, 'utf8')) : {};
  writeFileSync(
    FIGURES,
    `${JSON.stringify({ ...all, [room]: { files: files.length, ...counts, measured } }, null, 2)}\n`,
  );
}

const asked = process.argv.slice(2);
for (const room of asked.length > 0 ? asked : ['quantity', ...roomsOfCalc()]) measure(room);
