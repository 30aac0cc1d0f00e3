/** Reads JSON bodies, and no other kind: a form of a stranger's page cannot send this content type unasked. */
import type { FastifyInstance } from 'fastify';
import { refusal } from './refusal.js';

export const BODY_LIMIT = 2 * 1024 * 1024;
/** No entry and no sheet of ours nests deeper than a handful; far deeper text only exists to exhaust a parser. */
const DEEPEST = 64;

export function readJsonBodies(app: FastifyInstance): void {
  app.removeAllContentTypeParsers();
  app.addContentTypeParser(
    'application/json',
    { parseAs: 'string', bodyLimit: BODY_LIMIT },
    async (_request: unknown, body: string | Buffer) => parse(String(body)),
  );
}

function parse(text: string): unknown {
  if (text.trim() === '') throw refusal(400, 'not-json', 'The body is empty; JSON is needed.');
  if (isDeeperThan(text, DEEPEST)) throw refusal(400, 'too-deep', `The JSON nests deeper than ${DEEPEST} levels.`);
  try {
    return JSON.parse(text);
  } catch (error) {
    throw refusal(400, 'not-json', `The body is not JSON: ${reason(error)}.`);
  }
}

/** The parser's own words without the excerpt of the text, which may be long and hold line ends. */
function reason(error: unknown): string {
  const message = error instanceof Error ? error.message : 'unreadable';
  return message
    .replace(/\s+/g, ' ')
    .replace(/, (\.\.\.)?".*/, '')
    .slice(0, 160);
}

/** Counts brackets outside strings; exact for valid JSON, and an upper bound is all that broken JSON needs. */
export function isDeeperThan(text: string, deepest: number): boolean {
  let depth = 0;
  let inString = false;
  for (let place = 0; place < text.length; place += 1) {
    const sign = text[place];
    if (inString) {
      if (sign === '\\') place += 1;
      else if (sign === '"') inString = false;
    } else if (sign === '"') inString = true;
    else if (sign === '{' || sign === '[') depth += 1;
    else if (sign === '}' || sign === ']') depth -= 1;
    if (depth > deepest) return true;
  }
  return false;
}
