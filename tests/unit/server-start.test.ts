/** Starting and stopping the real server: what a person sees in the terminal, and what happens to bad input. */
import { once } from 'node:events';
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { connect, createServer, type Server } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { CheckSheetReply, ErrorReply, JobsReply } from '@gudgeon/server/api';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildServer, type ServerProcess, startServer } from './server-process.js';

const temporaryFolder = () => mkdtempSync(join(tmpdir(), 'gudgeon-start-'));

beforeAll(buildServer, 120_000);

describe('the started server', () => {
  let folder: string;
  let server: ServerProcess;
  beforeAll(async () => {
    folder = temporaryFolder();
    server = await startServer(folder);
  });
  afterAll(async () => {
    await server.kill();
    rmSync(folder, { recursive: true });
  });

  const check = async (body: string) => {
    const headers = { 'content-type': 'application/json' };
    const reply = await fetch(`${server.url}/api/sheets/check`, { method: 'POST', headers, body });
    return { status: reply.status, body: (await reply.json()) as CheckSheetReply & ErrorReply };
  };
  const jobs = async () => ((await (await fetch(`${server.url}/api/jobs`)).json()) as JobsReply).jobs;
  const sheet = async () =>
    ((await (await fetch(`${server.url}/api/sheets/quernside-51-v8`)).json()) as { text: string }).text;

  it('says plainly where it is, and has the invented job in an empty log', async () => {
    expect(server.said()).toMatch(/Gudgeon is at http:\/\/localhost:\d+/);
    expect(server.said()).toContain(folder);
    expect(await jobs()).toMatchObject([{ invented: true }]);
  });

  it('answers a bad sheet with one clear line for each fault, and stays up with everything it held', async () => {
    const before = await jobs();
    const good = await sheet();
    const bad: [string, string, RegExp][] = [
      ['nothing at all', '', /\w/],
      ['no YAML', 'name: [unclosed\n\t- {', /\w/],
      ['a list', '- a\n- b', /\w/],
      ['a unit that nobody knows', good.replace('98.60 mm', '98.60 cubits'), /cubits/],
      [
        'a thousand million cylinders',
        good.replace('left: [1, 3, 5, 7]', 'left: 1-1000000000'),
        /1000000000|cylinder/i,
      ],
      ['a firing order that names a cylinder twice', good.replace('1-5-7-2-6-8-4-3', '1-5-7-2-6-8-4-4'), /4/],
      ['a hole listed twice', good.replace('- { id: 4, fastener: long', '- { id: 1, fastener: long'), /1/],
      ['aliases that multiply', billionOfAliases(), /\w/],
    ];
    for (const [name, text, words] of bad) {
      const started = Date.now();
      const { status, body } = await check(JSON.stringify({ text }));
      expect(status, name).toBe(200);
      expect(body.engine, name).toBeUndefined();
      expect(body.faults.length, name).toBeGreaterThan(0);
      expect(body.faults[0]!.message, name).toMatch(words);
      for (const fault of body.faults) expect(fault.message, name).not.toMatch(/\n| {4}at /);
      expect(Date.now() - started, name).toBeLessThan(3000);
    }
    expect(await jobs()).toEqual(before);
  });

  it('refuses 50 MB in one line, and stays up', async () => {
    const reply = await check(`{"text":"${'x'.repeat(50_000_000)}"}`);
    expect(reply).toMatchObject({ status: 413, body: { code: 'too-large', error: expect.stringMatching(/^[^\n]+$/) } });
    expect(await jobs()).toHaveLength(1);
  });

  it('refuses 50 MB that come in pieces without saying how many', async () => {
    const piece = new TextEncoder().encode('x'.repeat(1_000_000));
    let left = 50;
    const body = new ReadableStream({
      pull(controller) {
        left -= 1;
        if (left < 0) controller.close();
        else controller.enqueue(piece);
      },
    });
    const headers = { 'content-type': 'application/json' };
    const more = { duplex: 'half' };
    const reply = await fetch(`${server.url}/api/sheets/check`, { method: 'POST', headers, body, ...more });
    expect(reply.status).toBe(413);
    expect(await jobs()).toHaveLength(1);
  });

  it('answers nobody who asks for it under another name', async () => {
    const port = Number(new URL(server.url).port);
    const { request } = await import('node:http');
    const status = await new Promise((resolve, reject) => {
      request({ host: '127.0.0.1', port, path: '/api/jobs', headers: { host: `parts.example:${port}` } }, (reply) =>
        resolve(reply.statusCode),
      )
        .once('error', reject)
        .end();
    });
    expect(status).toBe(403);
  });
});

function billionOfAliases(): string {
  const lines = ['a0: &a0 [x, x, x, x, x, x, x, x, x]'];
  for (let n = 1; n < 10; n += 1)
    lines.push(`a${n}: &a${n} [${Array.from({ length: 9 }, () => `*a${n - 1}`).join(', ')}]`);
  return lines.join('\n');
}

describe('starting the server', () => {
  let folder: string;
  beforeAll(() => {
    folder = temporaryFolder();
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  it('closes well at Ctrl-C', async () => {
    const server = await startServer(folder);
    expect(await server.close()).toBe(0);
  });

  it('closes well and soon while a browser holds a connection open on which it has said nothing', async () => {
    const server = await startServer(folder);
    const silent = connect(Number(new URL(server.url).port), '127.0.0.1');
    silent.on('error', () => {});
    await once(silent, 'connect');
    const started = Date.now();
    expect(await server.close()).toBe(0);
    expect(Date.now() - started).toBeLessThan(3000);
    // A log that was closed well has been folded into its one file.
    expect(readdirSync(folder)).toEqual(['gudgeon.sqlite']);
    silent.destroy();
  });

  it('takes the next free port when the wished one is in use', async () => {
    const busy = await occupied();
    const server = await startServer(folder, ['--port', String(busy.port)]);
    expect(Number(new URL(server.url).port)).toBeGreaterThan(busy.port);
    expect(server.said()).toContain(`Port ${busy.port} is in use`);
    await server.close();
    busy.server.close();
  });

  it('says in one line that the log is damaged, and does not start', async () => {
    const bad = temporaryFolder();
    writeFileSync(join(bad, 'gudgeon.sqlite'), 'not a log\n'.repeat(500));
    await expect(startServer(bad)).rejects.toThrow(/^[^\n]*gudgeon\.sqlite is damaged[^\n]*\n$/);
    rmSync(bad, { recursive: true });
  });

  it('says in one line that a port is no port', async () => {
    await expect(startServer(folder, ['--port', 'banana'])).rejects.toThrow(/^--port is "banana"[^\n]*\n$/);
  });
});

function occupied(): Promise<{ readonly server: Server; readonly port: number }> {
  return new Promise((resolve) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      resolve({ server, port: (server.address() as { readonly port: number }).port });
    });
  });
}
