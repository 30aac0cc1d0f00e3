import type { AddressInfo } from 'node:net';
import { type EntryDraft, type Envelope, NO_PREVIOUS, sealEntry } from '@gudgeon/core/record';
import { emptyShelf, openMemoryStore, type Shelf } from '@gudgeon/store/memory';
import type { FastifyInstance } from 'fastify';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { buildApp } from '../app/build-app.js';
import { demonstrationEntries } from '../demonstration/index.js';
import { readSheetLibrary } from '../sheets/library.js';

const sheets = readSheetLibrary(new URL('../../../../sheets', import.meta.url).pathname);
const sheetText = sheets.textOf('quernside-51-v8')!;
const demonstration = demonstrationEntries(sheetText);
const JOB = demonstration[0]!.job;

let app: FastifyInstance;
let shelf: Shelf;
let port: number;

beforeEach(async () => {
  shelf = emptyShelf();
  port = 4730;
  const store = openMemoryStore(shelf, () => '2030-05-04T08:00:00Z');
  app = await buildApp({ store, sheets, port: () => port, log: (line) => console.error(line), heartbeat: 50 });
});
afterEach(() => app.close());

const headers = () => ({ host: `localhost:${port}` });
const get = (url: string) => app.inject({ method: 'GET', url, headers: headers() });
const post = (url: string, payload: object) => app.inject({ method: 'POST', url, payload, headers: headers() });
const append = (entries: readonly unknown[], job = JOB) => post(`/api/jobs/${job}/entries`, { entries });

/** Seals further entries onto a chain. */
function follow(chain: readonly Envelope[], ...drafts: Partial<EntryDraft>[]): Envelope[] {
  const all = [...chain];
  for (const draft of drafts) {
    const last = all.at(-1)!;
    const { previous, hash, ...like } = last;
    const id = last.id.replace(/.{12}$/, String(all.length).padStart(12, '0'));
    all.push(sealEntry({ ...like, id, counter: last.counter + 1, ...draft }, hash));
  }
  return all.slice(chain.length);
}

describe('appending over the network', () => {
  it('answers for each entry with its place in the log, and takes a second sending as the same', async () => {
    const first = await append(demonstration.slice(0, 3));
    expect(first.statusCode).toBe(200);
    expect(first.json().accepted).toMatchObject([{ sequence: 1, duplicate: false }, { sequence: 2 }, { sequence: 3 }]);
    const again = await append(demonstration.slice(0, 4));
    expect(again.json().accepted.map((one: { duplicate: boolean }) => one.duplicate)).toEqual([
      true,
      true,
      true,
      false,
    ]);
    expect((await get(`/api/jobs/${JOB}/entries`)).json().entries).toHaveLength(4);
    expect((await get(`/api/jobs/${JOB}/entries?after=3`)).json().entries).toMatchObject([{ sequence: 4 }]);
  });

  it('keeps an entry of a kind and version that this program does not know', async () => {
    const [odd] = follow(demonstration.slice(0, 1), { kind: 'crankshaft-sung-to', version: 7, data: { tone: 'G' } });
    expect((await append([demonstration[0], odd])).statusCode).toBe(200);
    expect((await get(`/api/jobs/${JOB}/entries?after=1`)).json().entries).toMatchObject([odd]);
  });

  it('refuses in one line what is no entry, and stores nothing of the batch', async () => {
    const [first, second] = demonstration as [Envelope, Envelope];
    const cases: [unknown, string][] = [
      [null, 'bad-entry'],
      ['entry', 'bad-entry'],
      [{ ...second, counter: 1.5 }, 'bad-entry'],
      [{ ...second, id: 'one' }, 'bad-entry'],
      [{ ...second, at: 'yesterday' }, 'bad-entry'],
      [{ ...second, extra: true }, 'bad-entry'],
      [{ ...second, sequence: 4 }, 'bad-entry'],
      [{ ...second, person: 'x'.repeat(10_000) }, 'bad-entry'],
      [{ ...second, person: 'Somebody Else' }, 'wrong-hash'],
      [{ ...second, data: { about: 'job', text: 'something else' } }, 'wrong-hash'],
      [sealEntry({ ...second, job: 'another' }, NO_PREVIOUS), 'other-job'],
    ];
    for (const [entry, code] of cases) {
      const reply = await append([first, entry]);
      expect([reply.statusCode, reply.json().code], JSON.stringify(entry)?.slice(0, 80)).toEqual([400, code]);
      expect(reply.json().error).toMatch(/^Entry 2 of the batch[^\n]+\.$/);
    }
    expect(shelf.rows).toEqual([]);
  });

  it('says what was expected when a device left entries out or its log has forked', async () => {
    await append(demonstration.slice(0, 2));
    const gap = await append(demonstration.slice(3, 4));
    expect([gap.statusCode, gap.json().code]).toEqual([409, 'counter-gap']);
    expect(gap.json().error).toContain('counter 4 came where 3 is next');
    const [fork] = follow(demonstration.slice(0, 1), { data: { about: 'job', text: 'another second entry' } });
    expect((await append([fork])).json()).toMatchObject({ code: 'counter-taken' });
    const loose = sealEntry({ ...demonstration[2]! }, 'a'.repeat(64));
    expect((await append([loose])).json()).toMatchObject({ code: 'chain-broken' });
    const reused = sealEntry({ ...demonstration[1]!, person: 'Somebody Else' }, demonstration[0]!.hash);
    expect((await append([reused])).json()).toMatchObject({ code: 'id-reused' });
    expect(shelf.rows).toHaveLength(2);
  });

  it('refuses more entries at once than any device has waiting, and bodies without any', async () => {
    const many = await append(Array.from({ length: 501 }, () => 1));
    expect([many.statusCode, many.json().code]).toEqual([413, 'too-many']);
    expect((await post(`/api/jobs/${JOB}/entries`, {})).json()).toMatchObject({ code: 'no-entries' });
    expect((await append([], '..%2f..%2fetc')).json()).toMatchObject({ code: 'bad-job' });
  });
});

describe('jobs over the network', () => {
  beforeEach(async () => {
    for (let from = 0; from < demonstration.length; from += 400) await append(demonstration.slice(from, from + 400));
  });

  it('are listed with the name of their engine', async () => {
    expect((await get('/api/jobs')).json().jobs).toEqual([
      {
        job: JOB,
        name: 'Quernside 51, pushrod V8',
        invented: true,
        entries: demonstration.length,
        lastAt: '2030-05-04T08:00:00Z',
        sequence: demonstration.length,
      },
    ]);
  });

  it('come whole: the engine read from the sheet, the text of the sheet, all entries', async () => {
    const reply = (await get(`/api/jobs/${JOB}`)).json();
    expect(reply.engine.layout.firingOrder).toEqual([1, 5, 7, 2, 6, 8, 4, 3]);
    expect(reply.sheetText).toBe(sheetText);
    expect(reply.entries).toHaveLength(demonstration.length);
    expect(reply.sheetFaults).toEqual([]);
  });

  it('follow the latest sheet that is not struck out', async () => {
    const data = {
      name: 'Renamed',
      text: sheetText.replace('name: Quernside 51, pushrod V8', 'name: Renamed'),
      reason: 'trial',
    };
    const adopted = follow(demonstration, { kind: 'sheet-adopted', data });
    await append(adopted);
    expect((await get(`/api/jobs/${JOB}`)).json().engine.name).toBe('Renamed');
    const strike = { kind: 'struck-out', data: { entry: adopted[0]!.id, reason: 'the old one holds' } };
    await append(follow([...demonstration, ...adopted], strike));
    expect((await get(`/api/jobs/${JOB}`)).json().engine.name).toBe('Quernside 51, pushrod V8');
    expect((await get('/api/jobs')).json().jobs[0].name).toBe('Quernside 51, pushrod V8');
  });

  it('still come when their sheet has faults, and say which', async () => {
    const data = { name: 'Bad', text: 'gudgeon: 1\nname: [', reason: 'trial' };
    await append(follow(demonstration, { kind: 'sheet-adopted', data }));
    const reply = await get(`/api/jobs/${JOB}`);
    expect(reply.statusCode).toBe(200);
    expect(reply.json().engine).toBeUndefined();
    expect(reply.json().sheetFaults[0]).toMatchObject({ message: expect.any(String) });
  });

  it('prove their chain and show the code of the record', async () => {
    const sound = (await get(`/api/jobs/${JOB}/verify`)).json();
    expect(sound).toMatchObject({ sound: true, problems: [], entries: demonstration.length });
    expect(sound.headCode).toMatch(/^[0-9A-Z]{4}(-[0-9A-Z]{4}){3}$/);
    // Somebody with a hex editor: the text of one row is changed behind the store's back.
    const at = shelf.rows.findIndex(({ text }) => text.includes('used, good'));
    const row = shelf.rows[at]!;
    shelf.rows[at] = { ...row, text: row.text.replace('used, good', 'new') };
    const changed = (await get(`/api/jobs/${JOB}/verify`)).json();
    expect(changed).toMatchObject({ sound: false, problems: [expect.stringContaining('changed after it was sealed')] });
  });

  it('that nobody began are said not to be there', async () => {
    for (const url of ['/api/jobs/nobody', '/api/jobs/nobody/verify'])
      expect([(await get(url)).statusCode, (await get(url)).json().code]).toEqual([404, 'no-such-job']);
    expect((await get('/api/jobs/nobody/entries')).json()).toEqual({ entries: [] });
    expect((await get(`/api/jobs/${JOB}/entries?after=banana`)).json()).toMatchObject({ code: 'bad-after' });
  });
});

describe('sheets over the network', () => {
  it('are listed with what they are, and given as text', async () => {
    const { sheets: list } = (await get('/api/sheets')).json();
    expect(list).toContainEqual(expect.objectContaining({ id: 'quernside-51-v8', invented: true }));
    expect((await get('/api/sheets/quernside-51-v8')).json()).toEqual({ id: 'quernside-51-v8', text: sheetText });
  });

  it('are checked: an engine with its cautions, or the faults with their lines', async () => {
    const good = (await post('/api/sheets/check', { text: sheetText })).json();
    expect([good.engine.name, good.faults]).toEqual(['Quernside 51, pushrod V8', []]);
    const bad = (
      await post('/api/sheets/check', { text: sheetText.replace('bore: 98.60 mm', 'bore: 98.60 cubits') })
    ).json();
    expect(bad.engine).toBeUndefined();
    const line = sheetText.split('\n').findIndex((one) => one.includes('bore: 98.60 mm')) + 1;
    expect(bad.faults[0]).toMatchObject({ line, message: expect.stringContaining('cubits') });
  });
});

describe('a live connection', () => {
  interface Listener {
    readonly ids: number[];
    readonly beats: () => number;
    readonly stop: () => void;
  }
  async function listenLive(more: Record<string, string> = {}, query = ''): Promise<Listener> {
    if (port === 4730) {
      await app.listen({ host: '127.0.0.1', port: 0 });
      port = (app.server.address() as AddressInfo).port;
    }
    const controller = new AbortController();
    const url = `http://127.0.0.1:${port}/api/jobs/${JOB}/live${query}`;
    const reply = await fetch(url, { headers: more, signal: controller.signal });
    expect(reply.headers.get('content-type')).toContain('text/event-stream');
    expect(reply.headers.get('content-security-policy')).toContain("default-src 'self'");
    const ids: number[] = [];
    let beats = 0;
    const read = async () => {
      for await (const chunk of reply.body!.pipeThrough(new TextDecoderStream())) {
        for (const match of chunk.matchAll(/^id: (\d+)$/gm)) ids.push(Number(match[1]));
        beats += chunk.match(/^: still here$/gm)?.length ?? 0;
      }
    };
    void read().catch(() => {});
    return { ids, beats: () => beats, stop: () => controller.abort() };
  }
  const soon = (done: () => void) => vi.waitFor(done, { timeout: 5000, interval: 10 });

  it('tells of each entry with its number, the old ones first and new ones as they come', async () => {
    await append(demonstration.slice(0, 3));
    const one = await listenLive();
    await soon(() => expect(one.ids).toEqual([1, 2, 3]));
    await append(demonstration.slice(3, 5));
    await soon(() => expect(one.ids).toEqual([1, 2, 3, 4, 5]));
    one.stop();
  });

  it('goes on where a client stopped', async () => {
    await append(demonstration.slice(0, 6));
    const header = await listenLive({ 'last-event-id': '4' });
    const query = await listenLive({}, '?after=5');
    await soon(() => expect([header.ids, query.ids]).toEqual([[5, 6], [6]]));
    header.stop();
    query.stop();
  });

  it('gives signs of life while nothing happens, and finds entries that another program wrote', async () => {
    const one = await listenLive();
    await soon(() => expect(one.beats()).toBeGreaterThan(1));
    await openMemoryStore(shelf, () => '2030-05-04T09:00:00Z').append(demonstration.slice(0, 1));
    await soon(() => expect(one.ids).toEqual([1]));
    one.stop();
  });

  it('does not keep the server from closing', async () => {
    await listenLive();
    const started = Date.now();
    await app.close();
    expect(Date.now() - started).toBeLessThan(2000);
  });

  it('refuses a starting point that is no number', async () => {
    expect((await get(`/api/jobs/${JOB}/live?after=x`)).json()).toMatchObject({ code: 'bad-after' });
  });
});
