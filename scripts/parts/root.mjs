/** The top folder of the project, whatever folder a script is started from. */
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
export const inRoot = (...parts) => join(root, ...parts);
