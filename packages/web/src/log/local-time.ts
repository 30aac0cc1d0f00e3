const two = (n: number) => String(n).padStart(2, '0');

/** Wall-clock time with its offset, RFC 3339, e.g. `2026-03-01T19:04:05+01:00`: what the clock on this device showed. */
export function localTime(date: Date, offsetMinutes: number = -date.getTimezoneOffset()): string {
  const wall = new Date(date.getTime() + offsetMinutes * 60_000);
  const sign = offsetMinutes < 0 ? '-' : '+';
  const away = Math.abs(offsetMinutes);
  return `${wall.toISOString().slice(0, 19)}${sign}${two(Math.floor(away / 60))}:${two(away % 60)}`;
}
