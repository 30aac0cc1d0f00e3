import { done, type Outcome, refused } from '@gudgeon/core/quantity';
import type { ErrorReply } from '@gudgeon/server/api';

export interface ApiFault {
  /** `no-server` when nothing answered; else the server's own word. */
  readonly code: string;
  readonly words: string;
}

const NO_SERVER: ApiFault = {
  code: 'no-server',
  words: 'The Gudgeon server does not answer. Is its machine on, and is this device on the same network?',
};

/** One question to the server. Every trouble comes back as a fault with one line for a person. */
export const request = <T>(path: string, body?: unknown): Promise<Outcome<T, ApiFault>> =>
  ask(
    path,
    body === undefined
      ? {}
      : { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) },
    (reply) => reply.json(),
  );

/** Sends bytes to their own address, where sending them twice is as good as once. */
export const putBytes = <T>(path: string, type: string, bytes: BlobPart): Promise<Outcome<T, ApiFault>> =>
  ask(path, { method: 'PUT', headers: { 'content-type': type }, body: new Blob([bytes]) }, (reply) => reply.json());

export const fetchBytes = (path: string): Promise<Outcome<ArrayBuffer, ApiFault>> =>
  ask(path, {}, (reply) => reply.arrayBuffer());

async function ask<T>(
  path: string,
  init: RequestInit,
  read: (reply: Response) => Promise<T>,
): Promise<Outcome<T, ApiFault>> {
  try {
    const reply = await fetch(path, init);
    return reply.ok ? done(await read(reply)) : refused(await faultOf(reply));
  } catch {
    return refused(NO_SERVER);
  }
}

async function faultOf(reply: Response): Promise<ApiFault> {
  const fault = (await reply.json().catch(() => undefined)) as Partial<ErrorReply> | undefined;
  return {
    code: fault?.code ?? `status-${reply.status}`,
    words: fault?.error ?? `The server answered with status ${reply.status} and no reason.`,
  };
}
