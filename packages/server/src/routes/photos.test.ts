import { hashOfBytes, type PhotoType } from '@gudgeon/core/record';
import { emptyShelf, openMemoryStore, type Shelf } from '@gudgeon/store/memory';
import type { FastifyInstance } from 'fastify';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { buildApp } from '../app/build-app.js';
import { demonstrationEntries } from '../demonstration/index.js';
import { readSheetLibrary } from '../sheets/library.js';

const sheets = readSheetLibrary(new URL('../../../../sheets', import.meta.url).pathname);
const first = demonstrationEntries(sheets.textOf('quernside-51-v8')!)[0]!;
const JOB = first.job;

let app: FastifyInstance;
let shelf: Shelf;
beforeEach(async () => {
  shelf = emptyShelf();
  const store = openMemoryStore(shelf, () => '2030-05-04T08:00:00Z');
  await store.append([first]);
  app = await buildApp({ store, sheets, port: () => 4730, log: (line) => console.error(line) });
});
afterEach(() => app.close());

const host = { host: 'localhost:4730' };
/** Bytes that begin as the format does, followed by some text; a picture is not looked at further. */
const picture = (type: PhotoType, text = 'invented') =>
  Buffer.from(
    { 'image/jpeg': '\xff\xd8\xff\xe0', 'image/png': '\x89PNG\r\n\x1a\n', 'image/webp': 'RIFF....WEBP' }[type] + text,
    'latin1',
  );
const put = (bytes: Buffer, type: string, hash = hashOfBytes(bytes), job = JOB) =>
  app.inject({
    method: 'PUT',
    url: `/api/jobs/${job}/photos/${hash}`,
    payload: bytes,
    headers: { ...host, ...(type !== '' && { 'content-type': type }) },
  });
const get = (path: string) => app.inject({ method: 'GET', url: `/api/jobs/${path}`, headers: host });

describe('photos over the network', () => {
  it.each(['image/jpeg', 'image/png', 'image/webp'] as const)(
    '%s: is kept once, and comes back as it was',
    async (type) => {
      const bytes = picture(type);
      const hash = hashOfBytes(bytes);
      const sent = await put(bytes, type);
      expect([sent.statusCode, sent.json()]).toEqual([201, { photo: hash, duplicate: false }]);
      const again = await put(bytes, type);
      expect([again.statusCode, again.json()]).toEqual([200, { photo: hash, duplicate: true }]);
      const got = await get(`${JOB}/photos/${hash}`);
      expect(got.rawPayload.equals(bytes)).toBe(true);
      expect(got.headers).toMatchObject({
        'content-type': type,
        'cache-control': 'private, max-age=31536000, immutable',
        'x-content-type-options': 'nosniff',
        'content-disposition': expect.stringMatching(/^inline; filename="photo-[0-9a-f]{12}\.(jpg|png|webp)"$/),
      });
      expect((await get(`${JOB}/photos`)).json()).toEqual({ photos: [hash] });
    },
  );

  it('believe the bytes and not their header: no drawing with script, no page, no text', async () => {
    for (const [text, type] of [
      ['<svg xmlns="http://www.w3.org/2000/svg"><script>1</script></svg>', 'image/svg+xml'],
      ['<svg xmlns="http://www.w3.org/2000/svg"/>', 'image/png'],
      ['<!doctype html><script>1</script>', 'image/jpeg'],
      ['{"photo":1}', 'application/json'],
      ['GIF89a', 'image/gif'],
    ] as const) {
      const reply = await put(Buffer.from(text), type);
      expect([reply.statusCode, reply.json().code], type).toEqual([415, 'not-a-photo']);
      expect(reply.json().error).toMatch(/^[^\n]+\.$/);
    }
    for (const type of ['image/png', 'text/html', '']) {
      const reply = await put(picture('image/jpeg'), type);
      expect([reply.statusCode, reply.json().code], type).toEqual([415, 'other-type']);
    }
    expect(shelf.photos.size).toBe(0);
  });

  it('refuse in one line what has another hash, no bytes, too many of them, or a job that nobody began', async () => {
    const bytes = picture('image/jpeg');
    const large = Buffer.concat([bytes, Buffer.alloc(8 * 1024 * 1024)]);
    const cases: [Promise<{ statusCode: number; json: () => { code: string; error: string } }>, number, string][] = [
      [put(bytes, 'image/jpeg', 'a'.repeat(64)), 400, 'wrong-hash'],
      [put(bytes, 'image/jpeg', 'not-a-hash'), 400, 'bad-hash'],
      [put(Buffer.alloc(0), 'image/jpeg'), 400, 'empty'],
      [put(large, 'image/jpeg'), 413, 'too-large'],
      [put(bytes, 'image/jpeg', undefined, 'nobody'), 404, 'unknown-job'],
      [put(bytes, 'image/jpeg', undefined, '..%2fx'), 400, 'bad-job'],
    ];
    for (const [asked, status, code] of cases) {
      const reply = await asked;
      expect([reply.statusCode, reply.json().code]).toEqual([status, code]);
      expect(reply.json().error).toMatch(/^[^\n]+\.$/);
    }
    expect((await put(large, 'image/jpeg')).json().error).toContain('at most 8 MB');
    expect(shelf.photos.size).toBe(0);
  });

  it('that are not here are said not to be here, and that answer is never kept', async () => {
    const reply = await get(`${JOB}/photos/${'b'.repeat(64)}`);
    expect([reply.statusCode, reply.json().code]).toEqual([404, 'no-such-photo']);
    expect(reply.headers['cache-control']).toBe('no-store');
    expect((await get('nobody/photos')).json()).toEqual({ photos: [] });
  });

  it('leave the other addresses as narrow as they were', async () => {
    const reply = await app.inject({
      method: 'POST',
      url: `/api/jobs/${JOB}/entries`,
      payload: picture('image/png'),
      headers: { ...host, 'content-type': 'image/png' },
    });
    expect([reply.statusCode, reply.json().code]).toEqual([415, 'not-json']);
  });
});
