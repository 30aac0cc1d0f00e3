import type { Outcome } from '@gudgeon/core/quantity';
import type { Envelope } from '@gudgeon/core/record';
import type { AppendReply, JobReply, JobsReply, SheetReply, SheetsReply } from '@gudgeon/server/api';
import { type ApiFault, request } from './request.js';

type Answer<T> = Promise<Outcome<T, ApiFault>>;
const jobPath = (job: string) => `/api/jobs/${encodeURIComponent(job)}`;

export const listJobs = (): Answer<JobsReply> => request('/api/jobs');
export const readJob = (job: string): Answer<JobReply> => request(jobPath(job));
export const appendEntries = (job: string, entries: readonly Envelope[]): Answer<AppendReply> =>
  request(`${jobPath(job)}/entries`, { entries });
export const listSheets = (): Answer<SheetsReply> => request('/api/sheets');
export const readSheet = (id: string): Answer<SheetReply> => request(`/api/sheets/${encodeURIComponent(id)}`);
export const livePath = (job: string, after: number): string => `${jobPath(job)}/live?after=${after}`;
