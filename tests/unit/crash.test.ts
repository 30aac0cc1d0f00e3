/**
 * The plug is pulled while a person tightens a head: whatever the screen had said to be recorded must be there after the
 * next start. The real server runs as a process of its own, on a real file, and is killed without warning (SIGKILL).
 * What this cannot show is the loss of power to the disk itself; for that the file is written with synchronous=FULL.
 */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Envelope, NO_PREVIOUS, sealEntry, verifyChain } from '@gudgeon/core/record';
import { demonstrationEntries } from '@gudgeon/server';
import type { AppendReply, EntriesReply, VerifyReply } from '@gudgeon/server/api';
import { beforeAll, describe, expect, it } from 'vitest';
import { buildServer, type ServerProcess, startServer } from './server-process.js';

const KILLS = 50;
/** Each lane has a data folder of its own; two lanes keep two processors busy. */
const LANES = 2;
/** Longest time from the first entry to the kill [ms]; a whole walk takes longer than this. */
const LATEST_KILL = 250;

const sheet = readFileSync(new URL('../../sheets/quernside-51-v8.yaml', import.meta.url), 'utf8');
/** Gasket, fasteners and every act of the walk, as the demonstration does them, without the sheet itself. */
const acts = demonstrationEntries(sheet).filter(({ kind }) => kind !== 'sheet-adopted');

function walkOf(job: string): Envelope[] {
  const sealed: Envelope[] = [];
  for (const [index, { previous, hash, ...draft }] of acts.entries()) {
    const id = draft.id.replace(/.{12}$/, hashDigits(job, index));
    sealed.push(sealEntry({ ...draft, id, job, counter: index + 1 }, sealed.at(-1)?.hash ?? NO_PREVIOUS));
  }
  return sealed;
}
const hashDigits = (job: string, index: number) =>
  `${job.replace(/\D/g, '').padStart(6, '0')}${String(index).padStart(6, '0')}`;

interface Round {
  readonly job: string;
  readonly sent: readonly Envelope[];
  /** Sequence of each entry that the server said to have recorded. */
  readonly acknowledged: readonly number[];
}

/** Sends one entry after the other until the server is gone. */
async function tightenUntilKilled(server: ServerProcess, job: string, killAfter: number): Promise<Round> {
  const sent = walkOf(job);
  const acknowledged: number[] = [];
  const killed = new Promise<void>((resolve) => setTimeout(() => resolve(server.kill()), killAfter));
  for (const entry of sent) {
    const reply = await append(server, job, entry);
    if (reply === undefined) break;
    acknowledged.push(reply.accepted[0]!.sequence);
  }
  await killed;
  return { job, sent, acknowledged };
}

/** Undefined when the connection broke before the answer was complete. */
async function append(server: ServerProcess, job: string, entry: Envelope): Promise<AppendReply | undefined> {
  let text: string;
  try {
    const body = JSON.stringify({ entries: [entry] });
    const headers = { 'content-type': 'application/json' };
    const reply = await fetch(`${server.url}/api/jobs/${job}/entries`, { method: 'POST', headers, body });
    text = await reply.text();
    if (reply.status !== 200) throw new Error(`the server refused: ${text}`);
  } catch (error) {
    if (error instanceof TypeError) return undefined;
    throw error;
  }
  return JSON.parse(text) as AppendReply;
}

async function read<T>(server: ServerProcess, path: string): Promise<T> {
  return (await (await fetch(server.url + path)).json()) as T;
}

/** Every acknowledged entry is there as it was sent, at the place that was acknowledged, and at most one more. */
async function expectNothingLost(server: ServerProcess, { job, sent, acknowledged }: Round): Promise<void> {
  const { entries } = await read<EntriesReply>(server, `/api/jobs/${job}/entries`);
  expect(entries.slice(0, acknowledged.length).map((entry) => entry.sequence)).toEqual(acknowledged);
  expect(entries.length - acknowledged.length).toBeLessThanOrEqual(1);
  expect(entries.map(({ sequence, receivedAt, ...entry }) => entry)).toEqual(sent.slice(0, entries.length));
  expect(verifyChain(entries)).toMatchObject({ ok: true });
  if (entries.length === 0) return;
  expect(await read<VerifyReply>(server, `/api/jobs/${job}/verify`)).toMatchObject({ sound: true, problems: [] });
}

async function lane(number: number): Promise<Round[]> {
  const folder = mkdtempSync(join(tmpdir(), 'gudgeon-crash-'));
  const rounds: Round[] = [];
  let server: ServerProcess | undefined;
  try {
    for (let kill = 1; kill <= KILLS / LANES; kill += 1) {
      server = await startServer(folder);
      const last = rounds.at(-1);
      if (last) await expectNothingLost(server, last);
      rounds.push(await tightenUntilKilled(server, `crash-${number * 1000 + kill}`, Math.random() * LATEST_KILL));
    }
    server = await startServer(folder);
    for (const round of rounds) await expectNothingLost(server, round);
    expect(await server.close()).toBe(0);
    return rounds;
  } finally {
    await server?.kill();
    rmSync(folder, { recursive: true, force: true });
  }
}

describe('a server that is killed while a head is tightened', () => {
  beforeAll(buildServer, 120_000);

  it(`has every acknowledged entry after each of ${KILLS} kills, in an unbroken chain`, async () => {
    const rounds = (await Promise.all(Array.from({ length: LANES }, (_, number) => lane(number + 1)))).flat();
    expect(rounds).toHaveLength(KILLS);
    // The kills must really have come in the middle of the work, or this proved nothing.
    const midway = rounds.filter(
      (round) => round.acknowledged.length > 0 && round.acknowledged.length < round.sent.length,
    );
    expect(midway.length).toBeGreaterThan(KILLS / 2);
  }, 300_000);
});
