import type { Outcome } from '@gudgeon/core/quantity';
import type { PhotoReply } from '@gudgeon/server/api';
import { describe, expect, it } from 'vitest';
import type { ApiFault } from '../../api/index.js';
import { isPhoto, type Photo, type PhotoKey } from './photo.js';
import { photoBox } from './photo-box.js';

const picture = (name: string): Photo => ({
  photo: name,
  type: 'image/jpeg',
  width: 16,
  height: 12,
  bytes: Uint8Array.from(name, (sign) => sign.charCodeAt(0)),
});

/** A device and a server in memory; the server answers as told, the device has room for some pictures. */
function world(room = 9) {
  const shelf: { key: PhotoKey; photo: Photo; waits: boolean }[] = [];
  const held: string[] = [];
  const later: (() => void)[] = [];
  const waited: number[] = [];
  let fault: ApiFault | undefined;
  let before = () => {};
  const make = () =>
    photoBox({
      shelf: {
        keep: async (job, photo) => {
          if (shelf.length >= room) return false;
          shelf.push({ key: { job, photo: photo.photo }, photo, waits: true });
          return true;
        },
        one: async (key) => shelf.find((one) => isPhoto(one.key, key))?.photo,
        waiting: async () => shelf.filter((one) => one.waits).map((one) => one.key),
        confirmed: async (key) => {
          for (const one of shelf) if (isPhoto(one.key, key)) one.waits = false;
        },
      },
      send: async (job, { photo }): Promise<Outcome<PhotoReply, ApiFault>> => {
        before();
        if (fault !== undefined) return { ok: false, fault };
        held.push(`${job}/${photo}`);
        return { ok: true, value: { photo, duplicate: false } };
      },
      later: (milliseconds, run) => {
        waited.push(milliseconds);
        later.push(run);
      },
    });
  const settle = async () => {
    for (let i = 0; i < 60; i++) await Promise.resolve();
  };
  return {
    make,
    shelf,
    held,
    later,
    waited,
    settle,
    server: (code?: string) => {
      fault = code === undefined ? undefined : { code, words: `said ${code}` };
    },
    whileSending: (run: () => void) => {
      before = run;
    },
    tick: async () => {
      for (const run of later.splice(0)) run();
      await settle();
    },
  };
}

describe('pictures on this device', () => {
  it('are kept before anything is sent, and count as waiting until the server has them', async () => {
    const w = world();
    const box = w.make();
    w.whileSending(() => expect(w.shelf).toHaveLength(1));
    expect(await box.keep('v8', picture('lobe'))).toEqual({ ok: true, value: { job: 'v8', photo: 'lobe' } });
    expect(box.get().waiting).toEqual([{ job: 'v8', photo: 'lobe' }]);
    await w.settle();
    expect(w.held).toEqual(['v8/lobe']);
    expect(box.get()).toEqual({ waiting: [] });
    expect((await box.one({ job: 'v8', photo: 'lobe' }))?.width).toBe(16);
  });

  it('say in one line that there is no room, and nothing waits then', async () => {
    const box = world(0).make();
    expect(await box.keep('v8', picture('lobe'))).toEqual({ ok: false, fault: expect.stringMatching(/^[^\n]+\.$/) });
    expect(box.get().waiting).toEqual([]);
  });

  it('wait without a server, are asked after at growing pauses, and go when it is back', async () => {
    const w = world();
    w.server('no-server');
    const box = w.make();
    await box.keep('v8', picture('a'));
    await box.keep('v8', picture('b'));
    await w.settle();
    expect(box.get()).toEqual({
      waiting: [
        { job: 'v8', photo: 'a' },
        { job: 'v8', photo: 'b' },
      ],
      trouble: 'said no-server',
    });
    for (let round = 0; round < 6; round += 1) await w.tick();
    expect(w.waited).toEqual([1000, 2000, 5000, 10_000, 30_000, 30_000, 30_000]);
    w.server();
    await w.tick();
    expect(w.held).toEqual(['v8/a', 'v8/b']);
    expect(box.get()).toEqual({ waiting: [] });
  });

  it('that an earlier visit left are sent by the next one', async () => {
    const w = world();
    w.server('no-server');
    await w.make().keep('v8', picture('a'));
    await w.settle();
    w.server();
    const next = w.make();
    await next.send();
    expect(w.held).toEqual(['v8/a']);
    expect(next.get().waiting).toEqual([]);
  });

  it('wait for the entries of a job that the server does not know yet', async () => {
    const w = world();
    w.server('unknown-job');
    const box = w.make();
    await box.keep('new', picture('a'));
    await w.settle();
    expect(box.get().waiting).toHaveLength(1);
    w.server();
    await w.tick();
    expect(w.held).toEqual(['new/a']);
  });

  it('that the server will never take stay here, are told, and do not hold up the others', async () => {
    const w = world();
    w.server('wrong-hash');
    const box = w.make();
    await box.keep('v8', picture('bad'));
    await w.settle();
    expect(w.later).toEqual([]);
    w.server();
    await box.keep('v8', picture('good'));
    await w.settle();
    expect(w.held).toEqual(['v8/good']);
    expect(box.get().waiting).toEqual([{ job: 'v8', photo: 'bad' }]);
    expect(w.shelf).toHaveLength(2);
  });

  it('that come while others are sent go in the next round', async () => {
    const w = world();
    const box = w.make();
    let more = true;
    w.whileSending(() => {
      if (more) void box.keep('v8', picture('second'));
      more = false;
    });
    await box.keep('v8', picture('first'));
    await w.settle();
    expect(w.held).toEqual(['v8/first', 'v8/second']);
  });
});
