import { useSyncExternalStore } from 'react';
import { onPersonChange, personName } from './device.js';
import type { JobState } from './job-state.js';
import type { JobStore } from './job-store.js';
import { openJob } from './jobs.js';

export function useJob(job: string): { readonly state: JobState; readonly store: JobStore } {
  const store = openJob(job);
  return { store, state: useSyncExternalStore(store.subscribe, store.get) };
}

export const usePerson = (): string => useSyncExternalStore(onPersonChange, personName);
