import { describeAppendFault, type Store } from '@gudgeon/store';
import type { FastifyInstance, FastifyRequest } from 'fastify';
import type { AppendReply, EntriesReply, JobReply, JobsReply, VerifyReply } from '../api/index.js';
import { refusal } from '../app/refusal.js';
import { readBatch } from '../intake/batch.js';
import { jobName } from '../intake/names.js';
import { jobBook } from '../jobs/job-book.js';

type JobRequest = FastifyRequest<{ Params: { job: string }; Querystring: { after?: string } }>;

export function serveJobs(app: FastifyInstance, store: Store): void {
  const book = jobBook(store);

  app.get('/api/jobs', async (): Promise<JobsReply> => ({ jobs: await book.lines() }));

  app.get('/api/jobs/:job', async (request: JobRequest): Promise<JobReply> => {
    const job = jobName(request.params.job);
    return (await book.job(job)) ?? unknownJob(job);
  });

  app.get('/api/jobs/:job/verify', async (request: JobRequest): Promise<VerifyReply> => {
    const job = jobName(request.params.job);
    return (await book.verify(job)) ?? unknownJob(job);
  });

  app.get('/api/jobs/:job/entries', async (request: JobRequest): Promise<EntriesReply> => {
    return { entries: await store.entries(jobName(request.params.job), sequenceAfter(request)) };
  });

  app.post('/api/jobs/:job/entries', async (request: JobRequest): Promise<AppendReply> => {
    const result = await store.append(readBatch(jobName(request.params.job), request.body));
    if (!result.ok) throw refusal(409, result.fault.code, describeAppendFault(result.fault));
    return { accepted: result.value };
  });
}

function sequenceAfter(request: JobRequest): number {
  const { after = '0' } = request.query;
  if (/^\d{1,15}$/.test(String(after))) return Number(after);
  throw refusal(400, 'bad-after', '"after" must be the sequence number of an entry, or 0.');
}

function unknownJob(job: string): never {
  throw refusal(404, 'no-such-job', `There is no job ${job} in the log.`);
}
