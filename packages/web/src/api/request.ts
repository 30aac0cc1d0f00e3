import { done, type Outcome, refused } from '@gudgeon/core/quantity';
import type { ErrorReply } from '@gudgeon/server/api';

export interface ApiFault {
  /** `no-server` when nothing answered; else the server's own word. */
  readonly code: string;
  readonly words: string;
}

/** One question to the server. Every trouble comes back as a fault with one line for a person. */
export async function request<T>(path: string, body?: unknown): Promise<Outcome<T, ApiFault>> {
  const ask: RequestInit =
    body === undefined
      ? {}
      : { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) };
  let reply: Response;
  try {
    reply = await fetch(path, ask);
  } catch {
    return refused({
      code: 'no-server',
      words: 'The Gudgeon server does not answer. Is its machine on, and is this device on the same network?',
    });
  }
  const answer: unknown = await reply.json().catch(() => undefined);
  if (reply.ok && answer !== undefined) return done(answer as T);
  const fault = answer as Partial<ErrorReply> | undefined;
  return refused({
    code: fault?.code ?? `status-${reply.status}`,
    words: fault?.error ?? `The server answered with status ${reply.status} and no reason.`,
  });
}
