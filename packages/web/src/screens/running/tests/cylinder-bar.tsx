import { useId } from 'react';

interface CylinderBarProps {
  /** 0 to 1; absent: nothing was read, and the bar says so. */
  readonly share: number | undefined;
  /** Where the rule draws its line, 0 to 1. */
  readonly limit: number | undefined;
  readonly out: boolean;
  /** The bar in words. */
  readonly words: string;
}
const WIDE = 200;
const HIGH = 26;

/** One cylinder as a bar: full and plain, or hatched where it is out; a line where the rule stands. In black and white it says the same. */
export function CylinderBar({ share, limit, out, words }: CylinderBarProps) {
  const id = useId();
  const length = Math.min(1, Math.max(0, share ?? 0)) * WIDE;
  return (
    <svg
      className="cylinder-bar"
      viewBox={`-1 -1 ${WIDE + 2} ${HIGH + 2}`}
      preserveAspectRatio="none"
      role="img"
      aria-label={words}
    >
      <defs>
        <pattern id={id} width="8" height="8" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <rect width="8" height="8" className="bar-gap" />
          <rect width="4" height="8" className="bar-line" />
        </pattern>
      </defs>
      <rect className={share === undefined ? 'bar-frame bar-none' : 'bar-frame'} width={WIDE} height={HIGH} />
      {share !== undefined && (
        <rect className="bar-full" width={length} height={HIGH} {...(out ? { style: { fill: `url(#${id})` } } : {})} />
      )}
      {limit !== undefined &&
        ['bar-limit bar-limit-under', 'bar-limit'].map((name) => (
          <path key={name} className={name} d={`M${limit * WIDE} -1V${HIGH + 1}`} vectorEffect="non-scaling-stroke" />
        ))}
    </svg>
  );
}
