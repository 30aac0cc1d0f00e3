/** Pictures on their way to the server: kept on this device first, sent until another machine confirms them. */
import { done, type Outcome, refused } from '@gudgeon/core/quantity';
import type { PhotoReply } from '@gudgeon/server/api';
import type { ApiFault } from '../../api/index.js';
import { isPhoto, type Photo, type PhotoKey } from './photo.js';
import type { PhotoShelf } from './photo-shelf.js';

export interface PhotoWires {
  readonly shelf: PhotoShelf;
  readonly send: (job: string, photo: Photo) => Promise<Outcome<PhotoReply, ApiFault>>;
  readonly later: (milliseconds: number, run: () => void) => void;
}
export interface BoxState {
  /** On this device only. */
  readonly waiting: readonly PhotoKey[];
  /** One line when something is wrong with the copying. */
  readonly trouble?: string;
}
export interface PhotoBox {
  readonly get: () => BoxState;
  readonly subscribe: (tell: () => void) => () => void;
  /** Succeeds once the picture is on this device; then it may be named in the log. */
  readonly keep: (job: string, photo: Photo) => Promise<Outcome<PhotoKey, string>>;
  readonly one: PhotoShelf['one'];
  /** Sends whatever waits. */
  readonly send: () => Promise<void>;
}

const waits = [1000, 2000, 5000, 10_000, 30_000];
/** Sending the same bytes again would be answered in the same way. */
const FINAL = new Set(['wrong-hash', 'not-a-photo', 'other-type', 'too-large', 'empty', 'bad-job', 'bad-hash']);
const NO_ROOM =
  'This device has no room left to keep the picture. Nothing was recorded. Free some storage, then take it again.';

export function photoBox({ shelf, send: sendOne, later }: PhotoWires): PhotoBox {
  let state: BoxState = { waiting: [] };
  let sending = false;
  let askedAgain = false;
  let timed = false;
  let tries = 0;
  const hopeless: PhotoKey[] = [];
  const listeners = new Set<() => void>();
  const set = (next: BoxState) => {
    state = next;
    for (const tell of listeners) tell();
  };

  /** What went wrong with one picture; nothing when another machine holds it now. */
  const sendKey = async (key: PhotoKey): Promise<ApiFault | undefined> => {
    const photo = await shelf.one(key);
    if (photo === undefined) return undefined;
    const reply = await sendOne(key.job, photo);
    if (!reply.ok) return reply.fault;
    await shelf.confirmed(key);
    set({ ...state, waiting: state.waiting.filter((one) => !isPhoto(one, key)) });
    return undefined;
  };
  /** One round over what waits; the words of the first trouble, and whether asking again can help. */
  const round = async (): Promise<{ readonly trouble?: string; readonly again: boolean }> => {
    const waiting = await shelf.waiting();
    set({ ...state, waiting });
    let trouble: string | undefined;
    let again = false;
    for (const key of waiting.filter((one) => !hopeless.some((other) => isPhoto(one, other)))) {
      const fault = await sendKey(key);
      if (fault === undefined) continue;
      trouble ??= fault.words;
      if (FINAL.has(fault.code)) hopeless.push(key);
      else again = true;
      if (fault.code === 'no-server') break;
    }
    return { again, ...(trouble !== undefined && { trouble }) };
  };
  const inAWhile = () => {
    if (timed) return;
    timed = true;
    later(waits[Math.min(tries++, waits.length - 1)]!, () => {
      timed = false;
      void send();
    });
  };
  const send = async (): Promise<void> => {
    askedAgain = true;
    if (sending) return;
    sending = true;
    try {
      while (askedAgain) {
        askedAgain = false;
        const { trouble, again } = await round();
        set({ waiting: state.waiting, ...(trouble !== undefined && { trouble }) });
        if (again) inAWhile();
        else tries = 0;
      }
    } catch {
      // A browser that has no database for us holds no pictures that could wait.
      set({ waiting: state.waiting });
    } finally {
      sending = false;
    }
  };

  return {
    get: () => state,
    subscribe: (tell) => {
      listeners.add(tell);
      return () => void listeners.delete(tell);
    },
    keep: async (job, photo) => {
      if (!(await shelf.keep(job, photo))) return refused(NO_ROOM);
      const key: PhotoKey = { job, photo: photo.photo };
      if (!state.waiting.some((one) => isPhoto(one, key))) set({ ...state, waiting: [...state.waiting, key] });
      void send();
      return done(key);
    },
    one: shelf.one,
    send,
  };
}
