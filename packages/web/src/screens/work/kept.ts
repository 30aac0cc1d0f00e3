/** Small choices that this device remembers, newest first; they are offered again, never taken for granted. */
const MOST = 6;
const place = (name: string) => `gudgeon.last.${name}`;

export function lastChosen(name: string): readonly string[] {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(place(name)) ?? '[]');
    return Array.isArray(kept) ? kept.filter((one) => typeof one === 'string') : [];
  } catch {
    return [];
  }
}

export function noteChosen(name: string, words: string): void {
  const told = words.trim();
  if (told === '') return;
  try {
    const before = lastChosen(name).filter((one) => one !== told);
    localStorage.setItem(place(name), JSON.stringify([told, ...before].slice(0, MOST)));
  } catch {
    // Then it is not offered again.
  }
}

/** What was chosen last, then what is usual, each once. */
export const offeredWords = (name: string, usual: readonly string[], most = MOST): readonly string[] =>
  [...new Set([...lastChosen(name), ...usual])].slice(0, most);
