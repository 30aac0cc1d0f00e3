/** Oil clearance with the doubt of its three readings. */

export interface ClearanceDoubts {
  /** Standard uncertainty of housing, journal and one wall reading. */
  readonly housing: number;
  readonly journal: number;
  readonly wall: number;
  /** Part of both u(H) and u(J) that cancels because the bore gauge was zeroed in the micrometer that read the journal. */
  readonly sharedScale: number;
  /** The wall was read once and counted twice: its errors add instead of adding in squares. */
  readonly wallCountedTwice: boolean;
}

/**
 * Standard uncertainties that housing, journal and walls bring into C = H − J − t₁ − t₂, in their unit.
 *
 * The shared scale must be no larger than u(H) and u(J). Source: JCGM 100, 5.1.2 and 5.2 (recalled), derived for the clearance.
 */
export const clearanceContributions = (u: ClearanceDoubts): readonly [number, number, number] => [
  Math.sqrt(Math.max(0, u.housing ** 2 - u.sharedScale ** 2)),
  Math.sqrt(Math.max(0, u.journal ** 2 - u.sharedScale ** 2)),
  u.wall * (u.wallCountedTwice ? 2 : Math.SQRT2),
];
