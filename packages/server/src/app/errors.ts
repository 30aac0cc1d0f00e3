/** Every failure leaves as `{ error, code }` with one clear line. What is our own defect is logged in full and told in brief. */
import { StoreFailure, type StoreFailureCode } from '@gudgeon/store';
import type { FastifyError, FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import type { ErrorReply } from '../api/index.js';
import { Refusal } from './refusal.js';

export type Log = (line: string) => void;

interface Answer {
  readonly status: number;
  readonly reply: ErrorReply;
}

export function answerErrors(app: FastifyInstance, log: Log): void {
  app.setErrorHandler(async (error: FastifyError, request, reply) => {
    const answer = answerTo(error, request, log);
    if (answer.status === 413) await drained(request);
    return send(reply, answer);
  });
}

/** For failures that come before the routes, such as an address that cannot be decoded. */
export function answerFrameworkError(error: FastifyError, _request: FastifyRequest, reply: FastifyReply): void {
  void send(reply, {
    status: error.statusCode ?? 400,
    reply: { error: 'This address cannot be read.', code: 'bad-address' },
  });
}

function send(reply: FastifyReply, answer: Answer): FastifyReply {
  return reply.status(answer.status).type('application/json; charset=utf-8').send(answer.reply);
}

function answerTo(error: FastifyError, request: FastifyRequest, log: Log): Answer {
  if (error instanceof Refusal) return { status: error.statusCode, reply: { error: error.message, code: error.code } };
  if (error instanceof StoreFailure) {
    log(`${request.method} ${request.url}: ${error.message}`);
    return { status: STORE_STATUS[error.code] ?? 500, reply: { error: error.message, code: error.code } };
  }
  if (error.code === 'FST_ERR_CTP_BODY_TOO_LARGE') return tooLarge(request);
  const known = FRAMEWORK[error.code];
  if (known) return known;
  const status = error.statusCode ?? 500;
  if (status < 500) return { status, reply: { error: firstLine(error.message), code: 'bad-request' } };
  log(`${request.method} ${request.url}: ${error.stack ?? error.message}`);
  return {
    status: 500,
    reply: {
      error: 'The server met a defect of its own and wrote it to its log; nothing was recorded.',
      code: 'defect',
    },
  };
}

const firstLine = (text: string) => text.split('\n', 1)[0]!;

const STORE_STATUS: Partial<Record<StoreFailureCode, number>> = { locked: 503, full: 507 };

/** Each route says how much it takes. */
function tooLarge({ routeOptions }: FastifyRequest): Answer {
  const megabytes = routeOptions.bodyLimit / 1024 ** 2;
  return {
    status: 413,
    reply: { error: `Too large: at most ${megabytes} MB may be sent at once.`, code: 'too-large' },
  };
}

const FRAMEWORK: Readonly<Record<string, Answer>> = {
  FST_ERR_CTP_INVALID_MEDIA_TYPE: {
    status: 415,
    reply: { error: 'Send JSON, with the header content-type: application/json.', code: 'not-json' },
  },
  FST_ERR_CTP_EMPTY_JSON_BODY: {
    status: 400,
    reply: { error: 'The body is empty; JSON is needed.', code: 'not-json' },
  },
};

/** Lets a client finish sending what will not be read, or it would see a broken connection instead of the answer. */
async function drained(request: FastifyRequest): Promise<void> {
  const { raw } = request;
  if (raw.readableEnded || raw.destroyed) return;
  await new Promise<void>((resolve) => {
    const timer = setTimeout(resolve, 5000);
    const finish = () => {
      clearTimeout(timer);
      resolve();
    };
    raw.once('end', finish).once('close', finish).once('error', finish);
    raw.resume();
  });
}
