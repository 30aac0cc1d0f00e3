/** Where a person's jobs are kept: the folder that this kind of computer means for a program's own data. */
import { posix, win32 } from 'node:path';

export interface Surroundings {
  readonly platform: NodeJS.Platform;
  readonly home: string;
  readonly env: Readonly<Record<string, string | undefined>>;
}

export const LOG_FILE = 'gudgeon.sqlite';

/** `GUDGEON_DATA` when it is set, else the platform's own place. A variable that is set but empty counts as not set. */
export function dataFolder({ platform, home, env }: Surroundings): string {
  if (env.GUDGEON_DATA) return env.GUDGEON_DATA;
  if (platform === 'win32') return win32.join(env.APPDATA || win32.join(home, 'AppData', 'Roaming'), 'gudgeon');
  if (platform === 'darwin') return posix.join(home, 'Library', 'Application Support', 'gudgeon');
  return posix.join(absolute(env.XDG_DATA_HOME) ?? posix.join(home, '.local', 'share'), 'gudgeon');
}

/** The rules for that variable say that a path which is not absolute is to be ignored. */
function absolute(path: string | undefined): string | undefined {
  return path?.startsWith('/') ? path : undefined;
}
