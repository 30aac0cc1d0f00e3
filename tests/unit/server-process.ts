/** Starts the real server as a process of its own on a data folder, the way `npm start` does. */
import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';

const inProject = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));

export interface ServerProcess {
  readonly url: string;
  readonly process: ChildProcess;
  /** Everything that the server has said so far, on both channels. */
  readonly said: () => string;
  /** Ends it without any warning, as a pulled plug would, and waits until it is gone. */
  kill(): Promise<void>;
  /** Asks it to close, as Ctrl-C does, and answers its exit code. */
  close(): Promise<number | null>;
}

/** Brings the built output up to date; quick when nothing changed. */
export function buildServer(): void {
  execFileSync(process.execPath, [inProject('scripts/build.mjs'), '--quiet'], { stdio: 'inherit' });
}

/** Rejects with what the server said when it ends before it listens. */
export async function startServer(dataFolder: string, args = ['--port', '0']): Promise<ServerProcess> {
  const child = spawn(process.execPath, [inProject('packages/server/dist/main.js'), ...args], {
    env: { ...process.env, GUDGEON_DATA: dataFolder },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const gone = once(child, 'exit');
  let said = '';
  const url = await new Promise<string>((resolve, reject) => {
    for (const channel of [child.stdout, child.stderr]) {
      channel.setEncoding('utf8');
      channel.on('data', (text: string) => {
        said += text;
        const address = /http:\/\/localhost:(\d+)/.exec(said);
        if (address) resolve(`http://127.0.0.1:${address[1]}`);
      });
    }
    child.once('close', () => reject(new Error(said)));
  });
  return {
    url,
    process: child,
    said: () => said,
    kill: async () => {
      child.kill('SIGKILL');
      await gone;
    },
    close: async () => {
      child.kill('SIGINT');
      const [code] = await gone;
      return code as number | null;
    },
  };
}
