export interface PixelSize {
  readonly width: number;
  readonly height: number;
}
/** Long side of a kept picture [px]: a crack or a stamped number can be read, and a hundred pictures still travel. */
export const LONG_SIDE = 1600;

/** The size at which a picture is kept: never larger than it came, its long side at most `LONG_SIDE`, its shape the same. */
export function scaled({ width, height }: PixelSize, longSide = LONG_SIDE): PixelSize {
  const ratio = Math.min(1, longSide / Math.max(width, height));
  const side = (pixels: number) => Math.max(1, Math.round(pixels * ratio));
  return { width: side(width), height: side(height) };
}
