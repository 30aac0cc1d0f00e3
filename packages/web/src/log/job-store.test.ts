import type { Envelope, StoredEnvelope } from '@gudgeon/core/record';
import { describe, expect, it } from 'vitest';
import type { ChainEnd } from './job-state.js';
import { jobStore, type Wires } from './job-store.js';

/** A server and a device in memory; the server can be switched off and can lose its answers. */
function world() {
  const log: StoredEnvelope[] = [];
  const kept: { outbox: readonly Envelope[]; end?: ChainEnd } = { outbox: [] };
  const later: (() => void)[] = [];
  let on = true;
  let losesAnswers = false;
  let made = 0;
  const silence = { ok: false, fault: { code: 'no-server', words: 'no answer' } } as const;
  const wires: Wires = {
    read: async () => (on ? { ok: true, value: { job: 'j', sheetFaults: [], entries: [...log] } } : silence),
    append: async (_, entries) => {
      if (!on) return silence;
      const accepted = entries.map((entry) => {
        const before = log.find((e) => e.id === entry.id);
        const stored = before ?? { ...entry, sequence: log.length + 1, receivedAt: 'now' };
        if (!before) log.push(stored);
        return {
          id: entry.id,
          sequence: stored.sequence,
          receivedAt: stored.receivedAt,
          duplicate: before !== undefined,
        };
      });
      return losesAnswers ? silence : { ok: true, value: { accepted } };
    },
    live: () => () => {},
    readOutbox: () => kept.outbox,
    keepInOutbox: (_, entry) => {
      kept.outbox = [...kept.outbox, entry];
      return true;
    },
    dropFromOutbox: (_, ids) => {
      const gone = new Set(ids);
      kept.outbox = kept.outbox.filter((entry) => !gone.has(entry.id));
    },
    readEnd: () => kept.end,
    writeEnd: (_, end) => {
      kept.end = end;
    },
    later: (_, run) => later.push(run),
    afterFrame: (run) => run(),
    device: () => 'd',
    seal: (draft) => ({ ...draft, id: `e${++made}`, at: 't', person: 'p', version: 1, hash: `h${made}` }),
  };
  const settle = async () => {
    for (let i = 0; i < 20; i++) await Promise.resolve();
  };
  const tick = async () => {
    for (const run of later.splice(0)) run();
    await settle();
  };
  return {
    wires,
    log,
    kept,
    settle,
    tick,
    server: (is: boolean) => (on = is),
    losing: (is: boolean) => (losesAnswers = is),
  };
}

describe('the log on this device', () => {
  it('counts from 1 without gaps and chains each entry to the one before', async () => {
    const w = world();
    const store = jobStore('j', w.wires);
    store.write({ kind: 'note', data: {} });
    store.write({ kind: 'note', data: {} });
    await w.settle();
    expect(w.log.map((e) => [e.counter, e.previous])).toEqual([
      [1, '0'.repeat(64)],
      [2, 'h1'],
    ]);
  });

  it('calls an entry saved only when the server has confirmed it', async () => {
    const w = world();
    w.server(false);
    const store = jobStore('j', w.wires);
    store.write({ kind: 'note', data: {} });
    await w.settle();
    expect([store.get().waiting.length, w.kept.outbox.length]).toEqual([1, 1]);
    w.server(true);
    await w.tick();
    expect([store.get().waiting.length, w.kept.outbox.length, store.get().entries.length]).toEqual([0, 0, 1]);
  });

  it('makes one entry of a fact whose answer was lost on the way', async () => {
    const w = world();
    w.losing(true);
    const store = jobStore('j', w.wires);
    store.write({ kind: 'note', data: {} });
    await w.settle();
    expect([w.log.length, store.get().waiting.length]).toEqual([1, 1]);
    w.losing(false);
    await w.tick();
    expect([w.log.length, store.get().waiting.length, store.get().entries.length]).toEqual([1, 0, 1]);
  });

  it('finds its unsent entries again after the page was killed', async () => {
    const w = world();
    w.server(false);
    jobStore('j', w.wires).write({ kind: 'note', data: {} });
    await w.settle();
    const again = jobStore('j', w.wires);
    expect(again.get().waiting.map((e) => e.id)).toEqual(['e1']);
    w.server(true);
    again.reload();
    await w.settle();
    expect(w.log.map((e) => e.id)).toEqual(['e1']);
  });

  it('goes on with the same chain from a second page of the same browser', async () => {
    const w = world();
    const [one, two] = [jobStore('j', w.wires), jobStore('j', w.wires)];
    one.write({ kind: 'note', data: {} });
    await w.settle();
    two.write({ kind: 'note', data: {} });
    await w.settle();
    expect(w.log.map((e) => [e.counter, e.previous])).toEqual([
      [1, '0'.repeat(64)],
      [2, 'h1'],
    ]);
  });

  it('sends an engine that was measured without a server in loads that a server takes', async () => {
    const w = world();
    w.server(false);
    const sizes: number[] = [];
    const append: Wires['append'] = (job, entries) => {
      sizes.push(entries.length);
      return w.wires.append(job, entries);
    };
    const store = jobStore('j', { ...w.wires, append });
    store.reload();
    await w.settle();
    for (let n = 0; n < 450; n += 1) store.write({ kind: 'note', data: {} });
    w.server(true);
    for (let n = 0; n < 20; n += 1) await w.tick();
    expect(w.log.length).toBe(450);
    expect(store.get().waiting).toEqual([]);
    expect(Math.max(...sizes)).toBe(200);
  });

  it('records nothing where nobody is named, and says so: a server would take none of what follows', () => {
    const w = world();
    const nameless: Wires['seal'] = (draft) => ({ ...w.wires.seal(draft), person: ' ' });
    const store = jobStore('j', { ...w.wires, seal: nameless });
    expect(store.write({ kind: 'note', data: {} })).toMatchObject({
      ok: false,
      fault: expect.stringContaining('Nobody is named'),
    });
    expect(w.kept.outbox).toEqual([]);
    expect(store.get().waiting).toEqual([]);
  });

  it('records nothing where the device has no room, and says so', () => {
    const w = world();
    const store = jobStore('j', { ...w.wires, keepInOutbox: () => false });
    expect(store.write({ kind: 'note', data: {} })).toMatchObject({
      ok: false,
      fault: expect.stringContaining('Nothing was recorded'),
    });
    expect(store.get().waiting).toEqual([]);
  });
});
