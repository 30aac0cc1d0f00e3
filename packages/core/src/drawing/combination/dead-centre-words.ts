const QUARTERS = ['top', 'bottom'] as const;
const HALF = 180;

export interface FromDeadCentre {
  /** From the nearest dead centre, at least 0. */
  readonly degrees: number;
  readonly side: 'before' | 'after';
  readonly centre: 'top' | 'bottom';
  /** "62° before bottom"; "at top". */
  readonly words: string;
}

/** A crank angle, in degrees after the firing top dead centre, as the trade says it: from the nearest dead centre. */
export function fromDeadCentre(degrees: number): FromDeadCentre {
  const half = Math.round(degrees / HALF);
  const past = degrees - half * HALF;
  const centre = QUARTERS[((half % 2) + 2) % 2]!;
  const side = past < 0 ? 'before' : 'after';
  const shown = Math.round(Math.abs(past) * 10) / 10;
  return {
    degrees: Math.abs(past),
    side,
    centre,
    words: shown === 0 ? `at ${centre}` : `${shown}° ${side} ${centre}`,
  };
}
