/**
 * Makes the checkout ready: installs the packages when the lock file, Node or the platform changed since the last time,
 * and with `--browser` finds a Chromium for the browser tests. Runs before `npm start` and `npm test`.
 */
import { findChromium } from './parts/chromium.mjs';
import { run } from './parts/run.mjs';
import { installState, isStamped, stamp } from './parts/stamps.mjs';

const OLDEST_NODE = [20, 19];

refuseOldNode();
await installPackages();
if (process.argv.includes('--browser')) await provideBrowser();

function refuseOldNode() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  const old = major < OLDEST_NODE[0] || (major === OLDEST_NODE[0] && minor < OLDEST_NODE[1]);
  if (old) stop(`Node ${process.versions.node} is too old: version ${OLDEST_NODE.join('.')} or newer is needed.`);
}

async function installPackages() {
  const state = installState();
  if (isStamped('install', state)) return;
  console.log('setup: installing packages (the database is compiled here once; this takes about a minute)');
  const npm = process.env.npm_execpath;
  const [command, args] = npm ? [process.execPath, [npm]] : ['npm', []];
  const { code } = await run(command, [...args, 'ci', '--no-audit', '--no-fund'], { env: installEnvironment() });
  if (code !== 0) stop('setup: the packages could not be installed; the lines above say why.');
  stamp('install', state);
}

/** The tests need the tools too, also where somebody set NODE_ENV=production or omit=dev. */
function installEnvironment() {
  return { ...process.env, NODE_ENV: 'development', npm_config_omit: '', npm_config_include: 'dev' };
}

async function provideBrowser() {
  if (findChromium()) return;
  const mayInstall = process.platform === 'linux' && process.getuid?.() === 0 && !process.env.CHROMIUM_PATH;
  if (mayInstall) await installChromium();
  if (!findChromium()) {
    stop(
      'setup: the browser tests need Chromium: install the package "chromium", or name its program in CHROMIUM_PATH.',
    );
  }
}

async function installChromium() {
  console.log('setup: installing Chromium for the browser tests');
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  for (const args of [
    ['update'],
    ['install', '-y', '--no-install-recommends', '-o', 'DPkg::Lock::Timeout=300', 'chromium'],
  ]) {
    const { code, output } = await run('apt-get', args, { quiet: true, env });
    if (code !== 0) console.error(output.trimEnd());
  }
}

function stop(line) {
  console.error(line);
  process.exit(1);
}
