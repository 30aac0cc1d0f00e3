import { readFile } from 'node:fs/promises';
import { BadInput, type Io } from './io.js';

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'no such file',
  EISDIR: 'this is a folder, a file is needed',
  EACCES: 'not allowed to read it',
};

/** No sheet and no list of readings comes near this; an endless stream must not fill the memory. */
const MOST_BYTES = 64_000_000;

/** The real terminal and disk. */
export function nodeIo(): Io {
  return {
    out: (text) => void process.stdout.write(`${text}\n`),
    err: (text) => void process.stderr.write(`${text}\n`),
    async readFile(path) {
      try {
        return await readFile(path, 'utf8');
      } catch (error) {
        const code = error instanceof Error && 'code' in error ? String(error.code) : '';
        throw new BadInput([`${path}: ${reasons[code] ?? `cannot be read (${code})`}`]);
      }
    },
    async readStdin() {
      const chunks: Buffer[] = [];
      let bytes = 0;
      for await (const chunk of process.stdin) {
        bytes += chunk.length;
        if (bytes > MOST_BYTES) throw new BadInput([`standard input: more than ${MOST_BYTES / 1_000_000} MB`]);
        chunks.push(Buffer.from(chunk));
      }
      return Buffer.concat(chunks).toString('utf8');
    },
  };
}
