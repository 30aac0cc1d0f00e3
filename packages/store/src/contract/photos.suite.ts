/** What every store promises about pictures. The bytes need be no real picture: a store looks at their hash alone. */
import { hashOfBytes } from '@gudgeon/core/record';
import { expect, it } from 'vitest';
import { describePhotoFault, type Store } from '../index.js';
import { chainOf } from './made-entries.suite.js';

interface Context {
  readonly store: () => Store;
  readonly reopened: () => Promise<Store>;
}
const picture = (text: string) => new TextEncoder().encode(text);
const JPEG = 'image/jpeg';
/** Its hash and bytes in the order in which a store takes them. */
const sent = (text: string) => [hashOfBytes(picture(text)), JPEG, picture(text)] as const;

export function keepsPhotos({ store, reopened }: Context): void {
  const withJob = async () => {
    await store().append([...chainOf('v8', 'bench', 1), ...chainOf('twin', 'bench', 1)]);
    return store();
  };
  const faultOf = async (job: string, hash: string, type: string, bytes: Uint8Array) => {
    const result = await store().keepPhoto(job, hash, type as 'image/jpeg', bytes);
    if (result.ok) throw new Error('the photo was kept');
    expect(describePhotoFault(result.fault)).toMatch(/^[^\n]+\.$/);
    return result.fault;
  };

  it('keeps a photo by its hash, each job its own, and gives back the same bytes after reopening', async () => {
    const [hash, type, bytes] = sent('crank, front main');
    expect(await (await withJob()).keepPhoto('v8', hash, type, bytes)).toEqual({
      ok: true,
      value: { duplicate: false },
    });
    bytes.fill(0);
    const again = await reopened();
    expect(await again.photo('v8', hash)).toEqual({ type, bytes: picture('crank, front main') });
    expect([await again.photos('v8'), await again.photos('twin')]).toEqual([[hash], []]);
    expect(await again.photo('twin', hash)).toBeUndefined();
    expect(await again.photo('nobody', hash)).toBeUndefined();
  });

  it('takes the same photo twice as one', async () => {
    const first = sent('lobe 4');
    await (await withJob()).keepPhoto('v8', ...first);
    expect(await store().keepPhoto('v8', ...first)).toEqual({ ok: true, value: { duplicate: true } });
    expect(await store().keepPhoto('twin', ...first)).toEqual({ ok: true, value: { duplicate: false } });
    expect(await store().photos('v8')).toEqual([first[0]]);
  });

  it('names photos in the order in which they came', async () => {
    await withJob();
    const all = ['c', 'a', 'b'].map(sent);
    for (const one of all) await store().keepPhoto('v8', ...one);
    expect(await store().photos('v8')).toEqual(all.map(([hash]) => hash));
  });

  it('refuses bytes that are not those of the hash, and keeps nothing', async () => {
    await withJob();
    const [hash] = sent('as it was');
    expect(await faultOf('v8', hash, JPEG, picture('as it is now'))).toMatchObject({ code: 'wrong-hash', given: hash });
    expect(await faultOf('v8', 'no hash', JPEG, picture('a'))).toMatchObject({ code: 'wrong-hash' });
    expect(await store().photos('v8')).toEqual([]);
  });

  it('refuses a photo that is too large, empty, of another kind or of an unknown job', async () => {
    await withJob();
    const most = new Uint8Array(8 * 1024 * 1024);
    expect(await store().keepPhoto('v8', hashOfBytes(most), JPEG, most)).toMatchObject({ ok: true });
    const more = new Uint8Array(most.length + 1);
    expect(await faultOf('v8', hashOfBytes(more), JPEG, more)).toEqual({ code: 'too-large', bytes: 8_388_609 });
    expect(await faultOf('v8', hashOfBytes(new Uint8Array()), JPEG, new Uint8Array())).toEqual({ code: 'empty' });
    const [hash, , bytes] = sent('<svg/>');
    expect(await faultOf('v8', hash, 'image/svg+xml', bytes)).toMatchObject({ code: 'not-a-photo' });
    expect(await faultOf('nobody', hash, JPEG, bytes)).toEqual({ code: 'unknown-job', job: 'nobody' });
  });

  it('leaves the entries and their numbers alone', async () => {
    await withJob();
    const before = [await store().jobs(), await store().entries('v8')];
    await store().keepPhoto('v8', ...sent('deck'));
    expect([await store().jobs(), await store().entries('v8')]).toEqual(before);
  });
}
