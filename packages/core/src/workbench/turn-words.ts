/** Turns of an adjuster as a person counts them at the nut. */
const eighths: readonly string[] = ['', '1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'];

/** "5/8", "1 1/4", "0": whole turns and eighths; decimals only where no eighth fits. Common practice, no source. */
export function turnCount(turns: number): string {
  const inEighths = turns * 8;
  if (Math.abs(inEighths - Math.round(inEighths)) > 1e-6) return String(Math.round(turns * 1000) / 1000);
  const whole = Math.floor(turns + 1e-9);
  const part = eighths[Math.round(inEighths) - whole * 8];
  if (part === undefined || part === '') return String(whole);
  return whole === 0 ? part : `${whole} ${part}`;
}
