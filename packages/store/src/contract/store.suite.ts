/**
 * The promises of a store, written once and run for each. A subject knows how to open a store on a fresh medium, and
 * to open it again on the same one. The titles begin with the store's name.
 */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { AppendFault, Store } from '../index.js';
import { anyProperties } from './any-log.suite.js';
import { chainOf, type Draft, linked, receiveClock } from './made-entries.suite.js';
import type { Medium } from './medium.suite.js';
import { keepsPhotos } from './photos.suite.js';

export function storeContract(name: string, freshMedium: () => Promise<Medium>): void {
  describe(`${name} store`, () => {
    let medium: Medium;
    let store: Store;
    beforeEach(async () => {
      medium = await freshMedium();
      store = await medium.open(receiveClock());
    });
    afterEach(async () => {
      await store.close();
      await medium.clear();
    });
    const reopened = async () => {
      await store.close();
      store = await medium.open(receiveClock('2031-01-01'));
      return store;
    };
    const context = { store: () => store, reopened };
    acceptsEntries(context);
    keepsThem(context);
    refusesBrokenChains(context);
    keepsPhotos(context);
    anyProperties(freshMedium);
  });
}

interface Context {
  readonly store: () => Store;
  readonly reopened: () => Promise<Store>;
}

async function faultOf(store: Store, batch: Parameters<Store['append']>[0]): Promise<AppendFault> {
  const result = await store.append(batch);
  if (result.ok) throw new Error('the batch was accepted');
  return result.fault;
}

function acceptsEntries({ store }: Context): void {
  it('numbers the entries in the order in which they came, with the time of receipt', async () => {
    const result = await store().append(chainOf('v8', 'bench', 3));
    expect(result).toMatchObject({ ok: true });
    if (!result.ok) return;
    expect(result.value.map((receipt) => receipt.sequence)).toEqual([1, 2, 3]);
    expect(result.value.every((receipt) => !receipt.duplicate && receipt.receivedAt.startsWith('2030-'))).toBe(true);
  });

  it('takes the same entry twice as one and answers with its first number and time', async () => {
    const [first, second] = chainOf('v8', 'bench', 2);
    const before = await store().append([first!]);
    const after = await store().append([first!, second!]);
    if (!before.ok || !after.ok) throw new Error('refused');
    expect(after.value[0]).toEqual({ ...before.value[0]!, duplicate: true });
    expect(after.value[1]).toMatchObject({ sequence: 2, duplicate: false });
    expect(await store().entries('v8')).toHaveLength(2);
  });

  it('takes an entry that stands twice in one batch as one', async () => {
    const [only] = chainOf('v8', 'bench', 1);
    const result = await store().append([only!, only!]);
    expect(result).toMatchObject({ ok: true, value: [{ duplicate: false }, { duplicate: true, sequence: 1 }] });
    expect(await store().entries('v8')).toHaveLength(1);
  });

  it('accepts an empty batch and adds nothing', async () => {
    expect(await store().append([])).toEqual({ ok: true, value: [] });
    expect(await store().jobs()).toEqual([]);
  });

  it('counts each device and each job by itself', async () => {
    const batch = [...chainOf('v8', 'bench', 2), ...chainOf('v8', 'phone', 2), ...chainOf('twin', 'bench', 2)];
    expect(await store().append(batch)).toMatchObject({ ok: true });
    expect(await store().entries('v8')).toHaveLength(4);
    expect(await store().entries('twin')).toHaveLength(2);
  });
}

function keepsThem({ store, reopened }: Context): void {
  it('gives entries back exactly as they came, with unknown kinds, unknown fields and any script', async () => {
    const odd = {
      kind: 'crankshaft-sung-to',
      raw: 'µ ° ½ 曲軸 \u0000 \ud800',
      data: { deep: [null, { ratio: 1e-9 }] },
      tone: 'G',
    };
    const [entry] = linked([{ job: 'v8', device: 'bench', ...odd } as Draft]);
    await store().append([entry!]);
    const [kept] = await (await reopened()).entries('v8');
    expect(kept).toEqual({ ...entry, sequence: 1, receivedAt: expect.any(String) });
  });

  it('is not moved by a change that the caller makes afterwards', async () => {
    const [entry] = chainOf('v8', 'bench', 1);
    const mine = { ...entry!, data: { hole: '1' } };
    await store().append([mine]);
    mine.data.hole = '2';
    expect((await store().entries('v8'))[0]?.data).toEqual({ hole: '1' });
  });

  it('gives only the later entries when asked for those after a number', async () => {
    await store().append(chainOf('v8', 'bench', 5));
    expect((await store().entries('v8', 3)).map((entry) => entry.sequence)).toEqual([4, 5]);
    expect(await store().entries('v8', 5)).toEqual([]);
    expect(await store().entries('nobody')).toEqual([]);
  });

  it('gives the same answer after it was closed and opened again', async () => {
    await store().append([...chainOf('v8', 'bench', 4), ...chainOf('twin', 'phone', 2)]);
    const before = [await store().jobs(), await store().entries('v8'), await store().entries('twin')];
    await reopened();
    expect([await store().jobs(), await store().entries('v8'), await store().entries('twin')]).toEqual(before);
  });

  it('goes on counting where it stopped after it was opened again', async () => {
    const chain = chainOf('v8', 'bench', 3);
    await store().append(chain.slice(0, 2));
    const again = await (await reopened()).append(chain);
    expect(again).toMatchObject({
      ok: true,
      value: [{ duplicate: true }, { duplicate: true }, { duplicate: false, sequence: 3 }],
    });
  });

  it('names each job once, in the order of their beginning, with count and latest entry', async () => {
    const v8 = chainOf('v8', 'bench', 3);
    await store().append([...v8.slice(0, 2), ...chainOf('twin', 'phone', 1)]);
    await store().append(v8.slice(2));
    const [first, second] = await store().jobs();
    const entries = await store().entries('v8');
    expect(first).toEqual({ job: 'v8', count: 3, lastSequence: 4, lastReceivedAt: entries.at(-1)?.receivedAt });
    expect(second).toMatchObject({ job: 'twin', count: 1, lastSequence: 3 });
  });

  it('refuses all work once it is closed', async () => {
    await store().close();
    await expect(store().entries('v8')).rejects.toThrow('closed');
  });
}

function refusesBrokenChains({ store }: Context): void {
  it('refuses an id that comes back with other content, and says both hashes', async () => {
    const [entry] = chainOf('v8', 'bench', 1);
    await store().append([entry!]);
    const other = { ...entry!, hash: 'f'.repeat(64) };
    expect(await faultOf(store(), [other])).toMatchObject({
      code: 'id-reused',
      index: 0,
      id: entry!.id,
      heldHash: entry!.hash,
      givenHash: other.hash,
    });
  });

  it('refuses a gap in the counter of a device, and says which number is next', async () => {
    const chain = chainOf('v8', 'bench', 4);
    await store().append(chain.slice(0, 1));
    expect(await faultOf(store(), chain.slice(2))).toMatchObject({ code: 'counter-gap', expected: 2, given: 3 });
    expect(await faultOf(store(), [{ ...chain[1]!, counter: 0 }])).toMatchObject({ code: 'counter-gap', expected: 2 });
  });

  it('refuses a first entry that does not count from 1', async () => {
    expect(await faultOf(store(), chainOf('v8', 'bench', 2).slice(1))).toMatchObject({
      code: 'counter-gap',
      expected: 1,
    });
  });

  it('refuses a fork: another entry with a counter that the device has used', async () => {
    const chain = chainOf('v8', 'bench', 2);
    await store().append(chain);
    const fork = { ...chain[1]!, id: 'made-by-a-restored-phone', hash: 'e'.repeat(64) };
    expect(await faultOf(store(), [fork])).toMatchObject({
      code: 'counter-taken',
      given: 2,
      expected: 3,
      heldBy: chain[1]!.id,
    });
  });

  it('refuses an entry that does not follow from the one before it', async () => {
    const chain = chainOf('v8', 'bench', 2);
    await store().append(chain.slice(0, 1));
    const loose = { ...chain[1]!, previous: 'd'.repeat(64) };
    expect(await faultOf(store(), [loose])).toMatchObject({
      code: 'chain-broken',
      counter: 2,
      expected: chain[0]!.hash,
    });
  });

  it('adds nothing of a batch with one bad entry, and takes the good ones afterwards', async () => {
    const chain = chainOf('v8', 'bench', 4);
    const bad = [...chain.slice(0, 2), chain[3]!, chain[2]!];
    expect(await faultOf(store(), bad)).toMatchObject({ code: 'counter-gap', index: 2 });
    expect(await store().entries('v8')).toEqual([]);
    expect(await store().append(chain)).toMatchObject({ ok: true, value: [{ sequence: 1 }, {}, {}, { sequence: 4 }] });
  });
}
