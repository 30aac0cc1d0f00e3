/** The search of a job: it goes on while the person looks at another screen, and its answer waits there. */
import type { Chances, FinderAnswer, FinderInput, FinderProgress } from '@gudgeon/core/assess/finder';
import { useSyncExternalStore } from 'react';
import type { FromFinder, ToFinder } from './finder-messages.js';

export interface FinderState {
  readonly state: 'idle' | 'running' | 'whole' | 'cancelled' | 'refused';
  readonly input?: FinderInput;
  readonly progress?: FinderProgress;
  readonly answer?: FinderAnswer;
  readonly refusal?: string;
  /** By combination, as `foundId` names it. */
  readonly chances: ReadonlyMap<string, Chances>;
}
const IDLE: FinderState = { state: 'idle', chances: new Map() };

export interface FinderStore {
  readonly get: () => FinderState;
  readonly subscribe: (tell: () => void) => () => void;
  readonly search: (input: FinderInput) => void;
  readonly cancel: () => void;
  readonly askChances: (id: string, picked: readonly number[]) => void;
}

const stores = new Map<string, FinderStore>();
export function finderOf(job: string): FinderStore {
  const known = stores.get(job) ?? makeStore();
  stores.set(job, known);
  return known;
}
export const useFinder = (store: FinderStore): FinderState => useSyncExternalStore(store.subscribe, store.get);

function makeStore(): FinderStore {
  const listeners = new Set<() => void>();
  let state = IDLE;
  let worker: Worker | undefined;
  const become = (next: FinderState) => {
    state = next;
    for (const tell of listeners) tell();
  };
  const send = (message: ToFinder) => worker?.postMessage(message);
  return {
    get: () => state,
    subscribe: (tell) => {
      listeners.add(tell);
      return () => listeners.delete(tell);
    },
    search: (input) => {
      worker?.terminate();
      worker = new Worker(new URL('./finder-worker.ts', import.meta.url), { type: 'module' });
      worker.onmessage = ({ data }: MessageEvent<FromFinder>) => become(heard(state, data));
      worker.onerror = () => become({ ...IDLE, state: 'refused', refusal: 'The search broke off; begin it again.' });
      become({ ...IDLE, state: 'running', input });
      send({ kind: 'search', input });
    },
    cancel: () => send({ kind: 'cancel' }),
    askChances: (id, picked) => send({ kind: 'chances', id, picked }),
  };
}

function heard(state: FinderState, said: FromFinder): FinderState {
  switch (said.kind) {
    case 'progress':
      return { ...state, progress: said.progress };
    case 'answer':
      return { ...state, state: said.whole ? 'whole' : 'cancelled', answer: said.answer };
    case 'refused':
      return { ...state, state: 'refused', refusal: said.words };
    case 'chances':
      return { ...state, chances: new Map([...state.chances, [said.id, said.chances]]) };
  }
}
