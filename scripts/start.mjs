/** Builds what changed and runs the server until Ctrl-C. Words after `npm start --` go to the server, e.g. `--port 5000`. */
import { spawn } from 'node:child_process';
import { inRoot } from './parts/root.mjs';
import { run } from './parts/run.mjs';

const build = await run(process.execPath, [inRoot('scripts', 'build.mjs'), '--quiet']);
if (build.code !== 0) process.exit(build.code);

const server = spawn(process.execPath, [inRoot('packages', 'server', 'dist', 'main.js'), ...process.argv.slice(2)], {
  stdio: 'inherit',
});
// The terminal sends Ctrl-C to both; this process only waits, so that the server can finish its work.
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => server.kill(signal));
server.once('exit', (code) => process.exit(code ?? 1));
