import type { Envelope, LogEntry } from '@gudgeon/core/record';

/** Sends entries to a server as a device does, without what a server adds; throws with its line where it takes them not. */
export async function sendEntries(address: string, entries: readonly (Envelope | LogEntry)[]): Promise<void> {
  const sent = entries.map((entry) => {
    const { sequence: _sequence, receivedAt: _receivedAt, ...envelope } = entry as LogEntry;
    return envelope;
  });
  const reply = await fetch(`${address}/api/jobs/${sent[0]?.job}/entries`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ entries: sent }),
  });
  if (reply.status !== 200) throw new Error(`the server took them not: ${await reply.text()}`);
}
