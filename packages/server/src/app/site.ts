/** The built web pages, and the first page for every address that a person may type or reload. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import fastifyStatic from '@fastify/static';
import type { FastifyInstance, FastifyRequest } from 'fastify';
import { refusal } from './refusal.js';

export async function serveSite(app: FastifyInstance, folder: string | undefined): Promise<void> {
  const built = folder !== undefined && existsSync(join(folder, 'index.html'));
  if (built) {
    await app.register(fastifyStatic, {
      root: folder,
      cacheControl: false,
      setHeaders: (reply, path) => void reply.setHeader('cache-control', cacheRule(path)),
    });
  }
  app.setNotFoundHandler(async (request, reply) => {
    if (isPageVisit(request) && built) return reply.sendFile('index.html');
    throw refusal(404, 'not-found', `There is nothing at ${request.method} ${pathOf(request)}.`);
  });
}

/** Files with their hash in the name never change; all others are asked for again each time. */
function cacheRule(path: string): string {
  return /[\\/]assets[\\/]/.test(path) ? 'public, max-age=31536000, immutable' : 'no-cache';
}

const pathOf = (request: FastifyRequest) => request.url.split('?', 1)[0]!.slice(0, 200);

function isPageVisit(request: FastifyRequest): boolean {
  const wantsPage = (request.headers.accept ?? '').includes('text/html');
  const path = pathOf(request);
  return request.method === 'GET' && wantsPage && path !== '/api' && !path.startsWith('/api/');
}
