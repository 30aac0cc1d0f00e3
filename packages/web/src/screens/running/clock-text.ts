/** "16:04" left; "+0:32" beyond its time. */
export function clockText(left: number): string {
  const whole = Math.ceil(left);
  const size = Math.abs(whole);
  return `${whole < 0 ? '+' : ''}${Math.floor(size / 60)}:${String(size % 60).padStart(2, '0')}`;
}

/** Whole seconds that have gone by. */
export const secondsText = (seconds: number): string => `${Math.max(0, Math.floor(seconds))}`;
