import type { Outcome } from '@gudgeon/core/quantity';
import type { Envelope } from '@gudgeon/core/record';
import type {
  AppendReply,
  JobReply,
  JobsReply,
  PhotoReply,
  PhotosReply,
  SheetReply,
  SheetsReply,
} from '@gudgeon/server/api';
import { type ApiFault, fetchBytes, putBytes, request } from './request.js';

type Answer<T> = Promise<Outcome<T, ApiFault>>;
const jobPath = (job: string) => `/api/jobs/${encodeURIComponent(job)}`;

export const listJobs = (): Answer<JobsReply> => request('/api/jobs');
export const readJob = (job: string): Answer<JobReply> => request(jobPath(job));
export const appendEntries = (job: string, entries: readonly Envelope[]): Answer<AppendReply> =>
  request(`${jobPath(job)}/entries`, { entries });
export const listSheets = (): Answer<SheetsReply> => request('/api/sheets');
export const readSheet = (id: string): Answer<SheetReply> => request(`/api/sheets/${encodeURIComponent(id)}`);
export const livePath = (job: string, after: number): string => `${jobPath(job)}/live?after=${after}`;

const photoPath = (job: string, photo: string) => `${jobPath(job)}/photos/${photo}`;
export const listPhotos = (job: string): Answer<PhotosReply> => request(`${jobPath(job)}/photos`);
export const sendPhoto = (job: string, photo: string, type: string, bytes: BlobPart): Answer<PhotoReply> =>
  putBytes(photoPath(job, photo), type, bytes);
export const readPhoto = (job: string, photo: string): Answer<ArrayBuffer> => fetchBytes(photoPath(job, photo));
