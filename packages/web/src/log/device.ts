import { v7 } from 'uuid';

const devicePlace = 'gudgeon.device';
const personPlace = 'gudgeon.person';
const listeners = new Set<() => void>();

/** False in a private window or where storage is off: then no record is begun, because it could not be kept. */
export function storageWorks(): boolean {
  try {
    localStorage.setItem('gudgeon.probe', '1');
    localStorage.removeItem('gudgeon.probe');
    return true;
  } catch {
    return false;
  }
}

/** The name of this device in the log, made on first use and kept. */
export function deviceId(): string {
  const kept = localStorage.getItem(devicePlace);
  if (kept) return kept;
  const made = v7();
  localStorage.setItem(devicePlace, made);
  return made;
}

export const personName = (): string => {
  try {
    return localStorage.getItem(personPlace) ?? '';
  } catch {
    return '';
  }
};

export function setPersonName(name: string): void {
  localStorage.setItem(personPlace, name.trim());
  for (const tell of listeners) tell();
}

export function onPersonChange(tell: () => void): () => void {
  listeners.add(tell);
  return () => listeners.delete(tell);
}
