/** Answers about whole jobs. Reading a sheet takes a while, so what was read is kept until the job has new entries. */
import type { Engine } from '@gudgeon/core/engine';
import { loadSheet, type SheetFault } from '@gudgeon/core/engine/load';
import { foldEntries, headCode, type StoredEnvelope, verifyChain } from '@gudgeon/core/record';
import type { JobSummary, Store } from '@gudgeon/store';
import type { JobLine, JobReply, VerifyReply } from '../api/index.js';
import { describeBreak } from './chain-words.js';

export interface JobBook {
  readonly lines: () => Promise<readonly JobLine[]>;
  /** Undefined when the job has no entries. */
  readonly job: (job: string) => Promise<JobReply | undefined>;
  readonly verify: (job: string) => Promise<VerifyReply | undefined>;
}
interface SheetReading {
  readonly text?: string;
  readonly engine?: Engine;
  readonly faults: readonly SheetFault[];
}
interface Kept {
  readonly sequence: number;
  readonly line: JobLine;
}

export function jobBook(store: Store): JobBook {
  const kept = new Map<string, Kept>();
  const lineOf = async (summary: JobSummary): Promise<JobLine> => {
    const known = kept.get(summary.job);
    if (known?.sequence === summary.lastSequence) return known.line;
    const line = makeLine(summary, readSheet(await store.entries(summary.job)));
    kept.set(summary.job, { sequence: summary.lastSequence, line });
    return line;
  };
  return {
    lines: async () => {
      const lines: JobLine[] = [];
      for (const summary of await store.jobs()) lines.push(await lineOf(summary));
      return lines.sort((a, b) => b.sequence - a.sequence);
    },
    job: async (job) => {
      const entries = await store.entries(job);
      return entries.length === 0 ? undefined : replyOf(job, entries);
    },
    verify: async (job) => {
      const entries = await store.entries(job);
      return entries.length === 0 ? undefined : verdictOf(job, entries);
    },
  };
}

function readSheet(entries: readonly StoredEnvelope[]): SheetReading {
  const text = foldEntries(entries).sheet?.text;
  if (text === undefined) return { faults: [] };
  const loaded = loadSheet(text);
  return loaded.ok ? { text, engine: loaded.value, faults: [] } : { text, faults: loaded.fault };
}

function makeLine({ job, count, lastReceivedAt, lastSequence }: JobSummary, { engine }: SheetReading): JobLine {
  const { name, invented } = engine ?? { name: job, invented: false };
  return { job, name, invented, entries: count, lastAt: lastReceivedAt, sequence: lastSequence };
}

function replyOf(job: string, entries: readonly StoredEnvelope[]): JobReply {
  const { engine, text, faults } = readSheet(entries);
  return {
    job,
    ...(engine && { engine }),
    ...(text !== undefined && { sheetText: text }),
    sheetFaults: faults,
    entries,
  };
}

function verdictOf(job: string, entries: readonly StoredEnvelope[]): VerifyReply {
  const verdict = verifyChain(entries);
  const problems = verdict.ok ? [] : verdict.fault.map(describeBreak);
  return { job, sound: verdict.ok, problems, entries: entries.length, headCode: headCode(entries) };
}
