import type { Store } from '@gudgeon/store';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { refusal } from '../app/refusal.js';
import { jobName } from '../intake/names.js';
import type { Announcements } from '../live/announcing.js';
import { liveStream } from '../live/stream.js';

export interface LiveParts {
  readonly store: Store;
  readonly announcements: Announcements;
  readonly heartbeat: number;
}
type LiveRequest = FastifyRequest<{ Params: { job: string }; Querystring: { after?: string } }>;

/** A shop has a handful of screens; more than this is a page that opens connections without end. */
const MOST_CONNECTIONS = 64;

export function serveLive(app: FastifyInstance, parts: LiveParts): void {
  const closers = new Set<() => void>();
  app.addHook('preClose', async () => {
    for (const close of closers) close();
  });
  // No HEAD: it would hold a connection open that never says anything.
  app.get('/api/jobs/:job/live', { exposeHeadRoute: false }, async (request: LiveRequest, reply) => {
    const job = jobName(request.params.job);
    if (closers.size >= MOST_CONNECTIONS)
      throw refusal(503, 'too-many', 'Too many pages are listening; close some of them.');
    follow(parts, job, startingPoint(request), reply, closers);
  });
}

function startingPoint(request: LiveRequest): number {
  const seen = request.headers['last-event-id'] ?? request.query.after ?? '0';
  const number = /^\d{1,15}$/.test(String(seen)) ? Number(seen) : Number.NaN;
  if (Number.isNaN(number))
    throw refusal(400, 'bad-after', 'Last-Event-ID and after must be a sequence number, 0 or more.');
  return number;
}

function follow(parts: LiveParts, job: string, after: number, reply: FastifyReply, closers: Set<() => void>): void {
  reply.headers({ 'content-type': 'text/event-stream', 'cache-control': 'no-store' });
  const headers = reply.getHeaders();
  reply.hijack();
  const out = reply.raw;
  for (const [name, value] of Object.entries(headers)) if (value !== undefined) out.setHeader(name, value);
  out.writeHead(200);
  out.write('retry: 1000\n\n');
  const stream = liveStream(parts.store, job, after, out);
  const close = () => out.end();
  // A log that cannot be read ends the connection; the browser comes back and is told why by the other routes.
  const pump = () => void stream.pump().catch(close);
  const deaf = parts.announcements.listen(job, pump);
  const timer = setInterval(() => {
    out.write(': still here\n\n');
    pump();
  }, parts.heartbeat);
  closers.add(close);
  out.once('close', () => {
    clearInterval(timer);
    deaf();
    closers.delete(close);
  });
  pump();
}
