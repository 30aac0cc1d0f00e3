/** Chance and clock of the demonstration: the same on every computer, so that the same job is written everywhere. */

/** Uniform numbers from 0 to below 1 out of a seed; a 32-bit mixing generator is plenty for invented data. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    return ((mixed ^ (mixed >>> 16)) >>> 0) / 2 ** 32;
  };
}

/** A time-ordered id as RFC 9562 section 5.7 lays it out (version 7), with its random part from `chance`. */
export function uuidV7(milliseconds: number, chance: () => number): string {
  const time = milliseconds.toString(16).padStart(12, '0');
  const digits = (count: number) =>
    Array.from({ length: count }, () => Math.floor(chance() * 16).toString(16)).join('');
  const variant = '89ab'[Math.floor(chance() * 4)];
  return `${time.slice(0, 8)}-${time.slice(8)}-7${digits(3)}-${variant}${digits(3)}-${digits(12)}`;
}

/** Local time with its offset, RFC 3339, to the second. */
export function localTime(milliseconds: number, offsetHours: number): string {
  const shifted = new Date(milliseconds + offsetHours * 3_600_000).toISOString().slice(0, 19);
  const sign = offsetHours < 0 ? '-' : '+';
  return `${shifted}${sign}${String(Math.abs(offsetHours)).padStart(2, '0')}:00`;
}
