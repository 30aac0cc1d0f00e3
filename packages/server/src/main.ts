/** The program that `npm start` runs: opens the log in the data folder, serves it, and closes well. */
import { existsSync, mkdirSync } from 'node:fs';
import { homedir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { StoreFailure } from '@gudgeon/store';
import { openSqliteStore, type SqliteStore } from '@gudgeon/store/sqlite';
import type { FastifyInstance } from 'fastify';
import { buildApp } from './app/build-app.js';
import { writeDemonstration } from './demonstration/index.js';
import { dataFolder, LOG_FILE } from './place/data-folder.js';
import { listen } from './place/listen.js';
import { wishedPort } from './place/options.js';
import { readSheetLibrary } from './sheets/library.js';

const now = () => new Date().toISOString();
const log = (line: string) => void process.stderr.write(`${now()} ${line}\n`);
const say = (line: string) => void process.stdout.write(`${line}\n`);

await main();

async function main(): Promise<void> {
  surviveDefects();
  const wish = wishedPort(process.argv.slice(2), process.env);
  if (!wish.ok) return stop(wish.problem);
  try {
    await serve(wish.port);
  } catch (error) {
    stop(error instanceof StoreFailure ? error.message : `Gudgeon could not start: ${oneLine(error)}`);
  }
}

async function serve(wished: number): Promise<void> {
  const file = logFile();
  const store = openSqliteStore(file, now);
  const sheets = readSheetLibrary(inProject('sheets'));
  await writeDemonstration(store, sheets, say);
  let port = wished;
  const site = inProject('packages', 'web', 'dist-site');
  const app = await buildApp({ store, sheets, port: () => port, log, site });
  port = await listen(app, wished);
  closeOnSignals(app, store);
  if (wished !== 0 && port !== wished) say(`Port ${wished} is in use; the next free one is ${port}.`);
  if (!existsSync(join(site, 'index.html'))) say('The web pages are not built: run npm start, or npm run build.');
  say(`The log is ${file}`);
  say(`Gudgeon is at http://localhost:${port} (stop it with Ctrl-C)`);
}

function logFile(): string {
  const folder = dataFolder({ platform: process.platform, home: homedir(), env: process.env });
  // For this person only: a log names people and their work.
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  return join(folder, LOG_FILE);
}

function inProject(...parts: string[]): string {
  return join(dirname(fileURLToPath(import.meta.url)), '..', '..', '..', ...parts);
}

/** A launcher passes on the Ctrl-C that the terminal sends as well: two signals this close together [ms] are one wish. */
const ONE_WISH = 1000;
/** Answers on their way get this long [ms]; then connections are cut, such as those a browser opens for later use. */
const GRACE = 500;

/** The first signal closes well; a later one, from a person who will not wait, ends at once. */
function closeOnSignals(app: FastifyInstance, store: SqliteStore): void {
  let closingSince: number | undefined;
  const close = async () => {
    if (closingSince !== undefined) return performance.now() - closingSince > ONE_WISH && process.exit(1);
    closingSince = performance.now();
    setTimeout(() => app.server.closeAllConnections(), GRACE);
    await app.close();
    await store.close();
    process.exit(0);
  };
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => void close());
}

/**
 * Every entry is on the disk before it is acknowledged and a request touches the log in one transaction, so a defect in
 * one request leaves nothing half done: write it down and go on, since the person at the bench has hands full.
 */
function surviveDefects(): void {
  for (const event of ['uncaughtException', 'unhandledRejection'])
    process.on(event, (error: unknown) => log(`defect: ${error instanceof Error ? error.stack : error}`));
}

function oneLine(error: unknown): string {
  return (error instanceof Error ? error.message : String(error)).split('\n', 1)[0]!;
}

function stop(line: string): void {
  process.stderr.write(`${line}\n`);
  process.exitCode = 1;
}
