/** Pictures of a job: sent once by the device that took them, fetched by every other one. */
import { MOST_PHOTO_BYTES, type PhotoType, photoTypeOf } from '@gudgeon/core/record';
import { describePhotoFault, type PhotoFault, type Store } from '@gudgeon/store';
import type { FastifyInstance, FastifyRequest } from 'fastify';
import type { PhotoReply, PhotosReply } from '../api/index.js';
import { refusal } from '../app/refusal.js';
import { jobName } from '../intake/names.js';

type JobRequest = FastifyRequest<{ Params: { job: string } }>;
type PhotoRequest = FastifyRequest<{ Params: { job: string; hash: string } }>;

const STATUS: Readonly<Record<PhotoFault['code'], number>> = {
  'unknown-job': 404,
  'not-a-photo': 415,
  empty: 400,
  'too-large': 413,
  'wrong-hash': 400,
};
const ENDINGS: Readonly<Record<PhotoType, string>> = { 'image/jpeg': 'jpg', 'image/png': 'png', 'image/webp': 'webp' };
/** A picture never changes under its hash, so a browser need not ask for it again; it is one person's, so only that browser keeps it. */
const FOR_EVER = 'private, max-age=31536000, immutable';

export async function servePhotos(app: FastifyInstance, store: Store): Promise<void> {
  app.get('/api/jobs/:job/photos', async (request: JobRequest): Promise<PhotosReply> => {
    return { photos: await store.photos(jobName(request.params.job)) };
  });

  app.get('/api/jobs/:job/photos/:hash', async (request: PhotoRequest, reply) => {
    const job = jobName(request.params.job);
    const hash = photoHash(request);
    const photo = await store.photo(job, hash);
    if (photo === undefined)
      throw refusal(404, 'no-such-photo', `No photo ${hash.slice(0, 12)}… of job ${job} is here.`);
    return reply
      .header('cache-control', FOR_EVER)
      .header('content-disposition', `inline; filename="photo-${hash.slice(0, 12)}.${ENDINGS[photo.type]}"`)
      .type(photo.type)
      .send(Buffer.from(photo.bytes.buffer, photo.bytes.byteOffset, photo.bytes.byteLength));
  });

  // A scope of its own, so that no other route takes anything but JSON.
  await app.register(async (scope) => {
    scope.removeAllContentTypeParsers();
    scope.addContentTypeParser('*', { parseAs: 'buffer' }, async (_request: unknown, body: string | Buffer) => body);
    scope.put('/api/jobs/:job/photos/:hash', { bodyLimit: MOST_PHOTO_BYTES }, async (request: PhotoRequest, reply) => {
      const job = jobName(request.params.job);
      const hash = photoHash(request);
      const bytes = Buffer.isBuffer(request.body) ? request.body : Buffer.alloc(0);
      const result = await store.keepPhoto(job, hash, sentType(request, bytes), bytes);
      if (!result.ok) throw refused(result.fault);
      const answer: PhotoReply = { photo: hash, duplicate: result.value.duplicate };
      return reply.status(answer.duplicate ? 200 : 201).send(answer);
    });
  });
}

function photoHash(request: PhotoRequest): string {
  const { hash } = request.params;
  if (/^[0-9a-f]{64}$/.test(hash)) return hash;
  throw refusal(400, 'bad-hash', 'A photo is named by its SHA-256: 64 hexadecimal digits in small letters.');
}

/** What the bytes are; the header must say the same, so that a sender who is mistaken hears of it. */
function sentType(request: PhotoRequest, bytes: Uint8Array): PhotoType {
  if (bytes.length === 0) throw refused({ code: 'empty' });
  const held = photoTypeOf(bytes);
  if (held === undefined) {
    throw refusal(415, 'not-a-photo', 'Only JPEG, PNG and WebP pictures are kept; these bytes are none of them.');
  }
  const said = (request.headers['content-type'] ?? '').split(';', 1)[0]!.trim().toLowerCase();
  if (said === held) return held;
  throw refusal(415, 'other-type', `The bytes are ${held}; the header content-type must say so.`);
}

const refused = (fault: PhotoFault) => refusal(STATUS[fault.code], fault.code, describePhotoFault(fault));
