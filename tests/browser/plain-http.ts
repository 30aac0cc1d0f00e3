/**
 * The server as a phone on the workshop's network reaches it: by a name that is not this computer's own, without https. The server
 * itself answers its own computer only; a gateway passes requests and answers on, as one in a workshop would.
 */
import { createServer, request } from 'node:http';
import type { AddressInfo } from 'node:net';

export interface Gateway {
  readonly address: string;
  readonly close: () => Promise<void>;
}

/** `address`: of the server on this computer. */
export async function openGateway(address: string): Promise<Gateway> {
  const behind = new URL(address);
  const gateway = createServer((asked, answer) => {
    const headers = { ...asked.headers, host: behind.host };
    if (asked.headers.origin !== undefined) headers.origin = behind.origin;
    const passed = request(
      { host: '127.0.0.1', port: behind.port, path: asked.url, method: asked.method, headers },
      (given) => {
        answer.writeHead(given.statusCode ?? 502, given.headers);
        given.pipe(answer);
      },
    );
    passed.on('error', () => answer.destroy());
    answer.on('close', () => passed.destroy());
    asked.pipe(passed);
  });
  await new Promise<void>((done) => gateway.listen(0, '127.0.0.1', done));
  const { port } = gateway.address() as AddressInfo;
  return {
    address: `http://workshop.test:${port}`,
    close: () =>
      new Promise((done) => {
        gateway.close(() => done());
        gateway.closeAllConnections();
      }),
  };
}
