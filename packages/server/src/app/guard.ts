/**
 * Answers this computer's own browser only. The server listens on the loopback address, but a page of a stranger's site
 * could still reach it by pointing its own name at 127.0.0.1; such a request carries that name in `Host` or `Origin`.
 */
import type { FastifyInstance } from 'fastify';
import { refusal } from './refusal.js';

const LOOPBACK_NAMES = ['localhost', '127.0.0.1', '[::1]'];

export function guardLoopback(app: FastifyInstance, port: () => number): void {
  app.addHook('onRequest', async (request) => {
    const hosts = allowedHosts(port());
    const { host, origin } = request.headers;
    if (host === undefined || !hosts.includes(host.toLowerCase())) {
      throw refusal(403, 'wrong-host', `This server answers at http://localhost:${port()} only.`);
    }
    if (origin !== undefined && !hosts.some((name) => origin.toLowerCase() === `http://${name}`)) {
      throw refusal(403, 'wrong-origin', `Only pages of http://localhost:${port()} may use this server.`);
    }
  });
}

function allowedHosts(port: number): string[] {
  const withPort = LOOPBACK_NAMES.map((name) => `${name}:${port}`);
  return port === 80 ? [...withPort, ...LOOPBACK_NAMES] : withPort;
}
