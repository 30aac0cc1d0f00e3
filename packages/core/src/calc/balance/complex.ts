/** A vector in the plane of the crank's turning as a complex number: real part up, imaginary part toward the running sense. */
export interface Complex {
  readonly re: number;
  readonly im: number;
}

export const ZERO: Complex = { re: 0, im: 0 };
/** Vector of a length at an angle [rad] from up, in the running sense. */
export const polar = (length: number, angle: number): Complex => ({
  re: length * Math.cos(angle),
  im: length * Math.sin(angle),
});
export const plus = (a: Complex, b: Complex): Complex => ({ re: a.re + b.re, im: a.im + b.im });
export const times = (a: Complex, factor: number): Complex => ({ re: a.re * factor, im: a.im * factor });
export const sum = (all: readonly Complex[]): Complex => all.reduce(plus, ZERO);
export const length = ({ re, im }: Complex): number => Math.hypot(re, im);
export const angleOf = ({ re, im }: Complex): number => Math.atan2(im, re);
/** The vector turned on by an angle [rad]. */
export const turned = (a: Complex, angle: number): Complex => ({
  re: a.re * Math.cos(angle) - a.im * Math.sin(angle),
  im: a.re * Math.sin(angle) + a.im * Math.cos(angle),
});
