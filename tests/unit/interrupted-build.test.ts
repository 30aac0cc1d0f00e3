/**
 * A whole engine is built, and after every single act the work is taken up on another device that has nothing but what the server tells it;
 * after every fourth the plug is pulled too: the server is killed without warning (SIGKILL) and started again on the same file. Each
 * time nothing that was acknowledged may be missing, the next act must be the one that was next, and what has to be touched again must be the last three acts done.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Engine } from '@gudgeon/core/engine';
import { verifyChain } from '@gudgeon/core/record';
import { type Bench, openBench, workAt, workBenchView, workReturnView } from '@gudgeon/core/workbench';
import type { EntriesReply } from '@gudgeon/server/api';
import { beforeAll, describe, expect, it } from 'vitest';
import { engineOf, SHEETS } from '../../packages/core/src/workbench/bench.suite.js';
import { playOne } from '../../packages/core/src/workbench/work/player.suite.js';
import { Builder } from '../../packages/core/src/workbench/work/work.suite.js';
import { sendEntries } from '../send.js';
import { buildServer, type ServerProcess, startServer } from './server-process.js';

const DEVICES = ['phone', 'tablet'] as const;
const ACTS_BACK = 3;
/** A start of the server costs a second of this computer. */
const KILLED_AT = 4;

/** The bench of a device that was never here: all it knows is what the server has. */
async function newcomer(server: ServerProcess, engine: Engine, before?: Bench) {
  const reply = await fetch(`${server.url}/api/jobs/job/entries`);
  const { entries } = (await reply.json()) as EntriesReply;
  return { entries, bench: openBench(engine, entries, before) };
}

describe('a whole build that is interrupted after every act', () => {
  beforeAll(buildServer, 120_000);

  it('goes on each time where it stood, asks for the last three acts, and loses nothing', async () => {
    const engine = engineOf(SHEETS.single);
    const person = new Builder(engine);
    const folder = mkdtempSync(join(tmpdir(), 'gudgeon-interrupted-'));
    const acts: string[] = [];
    let acted = 0;
    let known: Bench | undefined;
    let server = await startServer(folder);
    try {
      for (let act = playOne(person); act !== undefined; act = playOne(person)) {
        acts.push(...doneNow(person.bench).filter((one) => !acts.includes(one)));
        const fresh = person.entries.slice(known?.state.entries.length ?? 0);
        await sendEntries(server.url, fresh);
        acted += 1;
        if (acted % KILLED_AT === 0) {
          await server.kill();
          server = await startServer(folder);
        }
        const { entries, bench } = await newcomer(server, engine, known);
        known = bench;
        expect(entries.map(({ hash }) => hash)).toEqual(person.entries.map(({ hash }) => hash));
        const now = person.now();
        const back = workReturnView(bench, 'opened-again', now);
        const asked = acts.length === 0 || act === 'signed-off' ? undefined : acts.slice(-ACTS_BACK);
        expect(
          back?.verify.map((one) => one.act),
          act,
        ).toEqual(asked);
        expect(workBenchView(bench, { now }).current?.act.id).toBe(
          workBenchView(person.bench, { now }).current?.act.id,
        );
        person.device = DEVICES[acts.length % DEVICES.length]!;
      }
      expect(acts.length).toBeGreaterThan(200);
      expect(verifyChain((await newcomer(server, engine)).entries)).toMatchObject({ ok: true });
    } finally {
      await server.kill();
      rmSync(folder, { recursive: true, force: true });
    }
  }, 600_000);
});

/** Acts that a hand has done; one check of a gasket can be the last of two. */
const doneNow = (bench: Bench): readonly string[] => workAt(bench).standing.done.map(({ act }) => act.id);
