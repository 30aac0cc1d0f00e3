/** Puts the server together from its parts. It touches no clock, disk or network of its own: all come as arguments. */
import type { Store } from '@gudgeon/store';
import fastify, { type FastifyInstance } from 'fastify';
import { announcing } from '../live/announcing.js';
import { serveJobs } from '../routes/jobs.js';
import { serveLive } from '../routes/live.js';
import { servePhotos } from '../routes/photos.js';
import { serveSheets } from '../routes/sheets.js';
import type { SheetLibrary } from '../sheets/library.js';
import { answerErrors, answerFrameworkError, type Log } from './errors.js';
import { guardLoopback } from './guard.js';
import { BODY_LIMIT, readJsonBodies } from './json-body.js';
import { sendSecurityHeaders } from './security-headers.js';
import { serveSite } from './site.js';

export interface AppParts {
  readonly store: Store;
  readonly sheets: SheetLibrary;
  /** The port that the server was really given; asked for at each request. */
  readonly port: () => number;
  readonly log: Log;
  /** Folder of the built web pages; left out, there is only the API. */
  readonly site?: string;
  /** Pause between two signs of life on a live connection [ms]; 15 s unless told. */
  readonly heartbeat?: number;
}

export async function buildApp(parts: AppParts): Promise<FastifyInstance> {
  const app = fastify({
    bodyLimit: BODY_LIMIT,
    requestTimeout: 30_000,
    routerOptions: { maxParamLength: 200 },
    frameworkErrors: answerFrameworkError,
  });
  const { store, announcements } = announcing(parts.store);
  answerErrors(app, parts.log);
  guardLoopback(app, parts.port);
  await sendSecurityHeaders(app);
  readJsonBodies(app);
  app.addHook('onSend', async (request, reply) => {
    if (request.url.startsWith('/api/') && !reply.hasHeader('cache-control')) reply.header('cache-control', 'no-store');
  });
  serveSheets(app, parts.sheets);
  serveJobs(app, store);
  await servePhotos(app, store);
  serveLive(app, { store, announcements, heartbeat: parts.heartbeat ?? 15_000 });
  await serveSite(app, parts.site);
  return app;
}
