import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { emptyShelf, openMemoryStore } from '@gudgeon/store/memory';
import type { FastifyInstance } from 'fastify';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type AppParts, buildApp } from './build-app.js';

const HERE = 'localhost:4730';
let app: FastifyInstance;
let logged: string[];

async function start(more: Partial<AppParts> = {}): Promise<void> {
  logged = [];
  app = await buildApp({
    store: openMemoryStore(emptyShelf(), () => '2030-05-04T08:00:00Z'),
    sheets: { list: () => [], textOf: () => undefined },
    port: () => 4730,
    log: (line) => void logged.push(line),
    ...more,
  });
}
const get = (url: string, headers: Record<string, string> = {}) =>
  app.inject({ method: 'GET', url, headers: { host: HERE, ...headers } });
const post = (url: string, payload: string, headers: Record<string, string> = {}) =>
  app.inject({ method: 'POST', url, payload, headers: { host: HERE, 'content-type': 'application/json', ...headers } });

describe('the server', () => {
  beforeEach(() => start());
  afterEach(() => app.close());

  it('answers under every name that this computer has for itself', async () => {
    for (const host of ['localhost:4730', '127.0.0.1:4730', '[::1]:4730', 'LOCALHOST:4730'])
      expect((await get('/api/jobs', { host })).statusCode).toBe(200);
  });

  // The attack: a stranger's page points its own name at 127.0.0.1 (DNS rebinding); CWE-350.
  it('refuses any other name, another port, or a page of another origin', async () => {
    const strangers = [
      { host: 'parts.example:4730' },
      { host: 'localhost' },
      { host: 'localhost:4731' },
      { host: 'localhost:4730.parts.example' },
      { host: '127.0.0.1.parts.example:4730' },
      { host: '' },
      { host: HERE, origin: 'http://parts.example' },
      { host: HERE, origin: 'https://localhost:4730' },
      { host: HERE, origin: 'http://localhost:5173' },
      { host: HERE, origin: 'null' },
    ];
    for (const headers of strangers) {
      const reply = await get('/api/jobs', headers);
      expect(reply.statusCode, JSON.stringify(headers)).toBe(403);
      expect(reply.json()).toMatchObject({ code: expect.stringMatching(/^wrong-(host|origin)$/) });
      expect(reply.json().error).not.toContain('\n');
    }
  });

  it('accepts a page of its own origin', async () => {
    expect((await get('/api/jobs', { origin: `http://${HERE}` })).statusCode).toBe(200);
  });

  it('names every directive of its content policy and lets no foreign or inline script in', async () => {
    const policy = String((await get('/api/jobs')).headers['content-security-policy']);
    expect(policy).toContain("default-src 'self'");
    expect(policy).toContain("script-src 'self';");
    expect(policy).toContain("style-src 'self';");
    expect(policy).not.toMatch(/https?:|upgrade-insecure-requests|unsafe-eval|\*/);
    expect(policy.match(/'unsafe-inline'/g)).toHaveLength(1);
    expect(policy).toContain("style-src-attr 'unsafe-inline'");
  });

  it('promises no https, which a bench computer has not', async () => {
    expect((await get('/api/jobs')).headers).not.toHaveProperty('strict-transport-security');
  });

  it('says in one line what is wrong with a body', async () => {
    const cases = [
      ['', 400, 'not-json'],
      ['{"text": ', 400, 'not-json'],
      ['text: yaml', 400, 'not-json'],
      [`${'['.repeat(100_000)}${']'.repeat(100_000)}`, 400, 'too-deep'],
      [`{"text":"${'x'.repeat(3_000_000)}"}`, 413, 'too-large'],
      ['{"words":"no text"}', 400, 'no-text'],
      ['null', 400, 'no-text'],
      ['[]', 400, 'no-text'],
    ] as const;
    for (const [body, status, code] of cases) {
      const reply = await post('/api/sheets/check', body);
      expect(reply.statusCode, body.slice(0, 20)).toBe(status);
      expect(reply.json()).toMatchObject({ code, error: expect.stringMatching(/^[^\n]+$/) });
    }
    expect(logged).toEqual([]);
  });

  it('reads nothing but JSON, so that a form on a foreign page cannot write', async () => {
    for (const type of ['text/plain', 'application/x-www-form-urlencoded', 'multipart/form-data; boundary=x'])
      expect((await post('/api/sheets/check', '{}', { 'content-type': type })).statusCode).toBe(415);
  });

  it('says in one line that there is nothing at an address', async () => {
    for (const url of ['/api', '/api/', '/api/nothing', '/nothing', '/api/sheets/nothing', '/api/jobs/%2e%2e%2fx'])
      expect((await get(url)).json()).toMatchObject({ error: expect.stringMatching(/^[^\n]+$/) });
    const unreadable = await get('/api/jobs/%zz');
    expect([unreadable.statusCode, unreadable.json().code]).toEqual([400, 'bad-address']);
  });

  it('keeps a defect of its own from the client and writes it to its log', async () => {
    const broken = {
      list: () => {
        throw new Error('secret of line 7');
      },
      textOf: () => undefined,
    };
    await app.close();
    await start({ sheets: broken });
    const reply = await get('/api/sheets');
    expect(reply.statusCode).toBe(500);
    expect(reply.body).not.toContain('secret');
    expect(logged.join()).toContain('secret of line 7');
    expect((await get('/api/jobs')).statusCode).toBe(200);
  });
});

describe('the web pages', () => {
  let site: string;
  beforeEach(async () => {
    site = mkdtempSync(join(tmpdir(), 'gudgeon-site-'));
    mkdirSync(join(site, 'assets'));
    writeFileSync(join(site, 'index.html'), '<!doctype html><title>pages</title>');
    writeFileSync(join(site, 'assets', 'main-abc.js'), '1;');
    await start({ site });
  });
  afterEach(async () => {
    await app.close();
    rmSync(site, { recursive: true });
  });
  const visit = (url: string) => get(url, { accept: 'text/html,application/xhtml+xml' });

  it('come for every address that a person may reload', async () => {
    for (const url of ['/', '/jobs/invented-v8/tighten/left', '/apiary']) {
      const reply = await visit(url);
      expect([reply.statusCode, reply.headers['content-type']], url).toEqual([
        200,
        expect.stringContaining('text/html'),
      ]);
      expect(reply.headers['cache-control']).toBe('no-cache');
    }
  });

  it('do not stand in for a missing file, picture or answer of the API', async () => {
    expect((await visit('/api/nothing')).statusCode).toBe(404);
    expect((await get('/assets/gone.js', { accept: '*/*' })).statusCode).toBe(404);
  });

  it('may keep files that carry their hash in their name', async () => {
    expect((await get('/assets/main-abc.js')).headers['cache-control']).toContain('immutable');
  });

  it('never come from outside their folder', async () => {
    for (const url of [
      '/../package.json',
      '/%2e%2e/package.json',
      '/assets/..%2f..%2fpackage.json',
      '/..%5cpackage.json',
    ])
      expect((await get(url)).statusCode, url).toBeGreaterThanOrEqual(400);
  });
});
