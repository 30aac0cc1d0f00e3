/**
 * Mutation score of the core, room by room: `npm run mutation -- calc/crank quantity`; without a name every room of `calc`, and `quantity`.
 * Each room's figures go into docs/mutation.json, from which `scripts/docs.mjs` writes docs/mutation.md; what no test noticed, into reports/.
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

/** Changes of a tester's report, each with its file. */
const changesOf = (report) =>
  Object.entries(report.files).flatMap(([file, { mutants }]) => mutants.map((one) => ({ file, ...one })));

/** A room answers for itself: only its own tests take part. The machinery of the catalogue is proven by the entries of two rooms as well. */
const testsOf = (room) => (room === 'calc/catalogue' ? 'calc/{catalogue,crank,fits}' : room);

const notNoticed = ({ status }) => status === 'Survived' || status === 'NoCoverage';
const lineOf = ({ file, location, mutatorName, replacement }) =>
  `${file}:${location.start.line}: ${mutatorName}: ${replacement.replaceAll('\n', ' ')}\n`;

const NAMES = { Killed: 'killed', Timeout: 'timeout', Survived: 'survived', NoCoverage: 'uncovered' };
function measure(room) {
  const files = filesOf(room);
  if (files.length === 0) throw new Error(`mutation: no file to change in ${CORE}${room}`);
  execFileSync('npx', ['stryker', 'run', '--mutate', files.join(',')], {
    stdio: 'inherit',
    env: { ...process.env, GUDGEON_MUTATION_TESTS: testsOf(room) },
  });
  const changes = changesOf(JSON.parse(readFileSync('reports/mutation.json', 'utf8')));
  const count = { killed: 0, timeout: 0, survived: 0, uncovered: 0 };
  for (const { status } of changes) if (NAMES[status]) count[NAMES[status]] += 1;
  writeFileSync(
    `reports/not-noticed-${room.replaceAll('/', '-')}.txt`,
    changes.filter(notNoticed).map(lineOf).join(''),
  );
  const measured = new Date().toISOString().slice(0, 10);
  const all = existsSync(FIGURES) ? JSON.parse(readFileSync(FIGURES, 'utf8')) : {};
  writeFileSync(
    FIGURES,
    `${JSON.stringify({ ...all, [room]: { files: files.length, ...count, measured } }, null, 2)}\n`,
  );
}

const asked = process.argv.slice(2);
for (const room of asked.length > 0 ? asked : ['quantity', ...roomsOfCalc()]) measure(room);
