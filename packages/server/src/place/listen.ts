/** Finds a port on the loopback address: the wished one, or the next free one after it. */
import type { FastifyInstance } from 'fastify';

const LOOPBACK = '127.0.0.1';
const TRIES = 50;

/** Answers the port that was given. Rejects when none of the next fifty is free or listening is not allowed at all. */
export async function listen(app: FastifyInstance, wished: number): Promise<number> {
  for (let port = wished; ; port += 1) {
    try {
      await app.listen({ host: LOOPBACK, port });
      return (app.server.address() as { readonly port: number }).port;
    } catch (error) {
      if (!isBusy(error) || port >= wished + TRIES || port >= 65_535) throw error;
    }
  }
}

const isBusy = (error: unknown) => error instanceof Error && 'code' in error && error.code === 'EADDRINUSE';
