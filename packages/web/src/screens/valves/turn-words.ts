const eighths: Readonly<Record<number, string>> = {
  1: '1/8',
  2: '1/4',
  3: '3/8',
  4: '1/2',
  5: '5/8',
  6: '3/4',
  7: '7/8',
};

/** Turns as a person counts them at the nut: "5/8", "1 1/4"; decimals only where no eighth fits. */
export function turnWords(turns: number): string {
  const inEighths = turns * 8;
  if (Math.abs(inEighths - Math.round(inEighths)) > 1e-6) return String(turns);
  const whole = Math.floor(turns + 1e-9);
  const part = eighths[Math.round(inEighths) - whole * 8];
  if (part === undefined) return String(whole);
  return whole === 0 ? part : `${whole} ${part}`;
}
