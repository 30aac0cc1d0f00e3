/** Running hours as typed; undefined where it is no plain figure. "1,250" may be one and a quarter or far more: it is not guessed. */
export function hoursTyped(text: string): number | undefined {
  const found = /^(\d{1,7})(?:[.,](\d{1,2}))?(?:\s*h)?$/.exec(text.trim());
  return found ? Number(`${found[1]}.${found[2] ?? '0'}`) : undefined;
}
export const HOURS_ASKED = 'Hours as a plain figure, such as 12.5';
