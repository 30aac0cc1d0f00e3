import { type Area, done, type Length, type Outcome, refused } from '../../quantity/index.js';

/** `metric` is the ISO profile with pitch in millimetres, `unified` the inch series with threads per inch. */
export type ThreadForm = 'metric' | 'unified';
export interface Thread {
  readonly form: ThreadForm;
  /** Nominal (major) diameter. */
  readonly diameter: Length;
  readonly pitch: Length;
}

const ROOT_3 = Math.sqrt(3);

/** Basic sizes of the 60° profile; a real bolt is smaller by its tolerance and must not be judged against them. */
export interface ThreadSizes {
  /** Height of the sharp triangle. */
  readonly height: Length;
  readonly pitchDiameter: Length;
  /** Basic minor diameter, of the nut thread. */
  readonly minorDiameter: Length;
  /** Root of the bolt thread with the rounding of ISO 724's d3. */
  readonly rootDiameter: Length;
}

/**
 * Basic sizes of a 60° thread: H = (√3/2)·P, d2 = d − 3H/4, D1 = d − 5H/4, d3 = d − 17H/12 [m].
 *
 * d = `diameter` and P = `pitch` [m], above 0; meaningful while P < 0.4·d. The root d3 belongs to the metric form; the
 * inch form's rounded root is a different number.
 * Example: M10 x 1.5: d2 9.026, D1 8.376, d3 8.160 mm.
 * Source: ISO 68-1 and ISO 724 (by copies).
 */
export function threadSizes(thread: Thread): ThreadSizes {
  const height = (ROOT_3 / 2) * thread.pitch;
  return {
    height: height as Length,
    pitchDiameter: (thread.diameter - (3 / 4) * height) as Length,
    minorDiameter: (thread.diameter - (5 / 4) * height) as Length,
    rootDiameter: (thread.diameter - (17 / 12) * height) as Length,
  };
}

/** Printed constant of the inch series; the metric one, 0.938194, gives 1.3 % too much on 1/2-13. */
const UNIFIED_STRESS_CONSTANT = 0.9743;

/**
 * Diameter of the tensile stress area, d0 [m]: mean of pitch and root for metric threads, D − 0.9743·P for unified.
 *
 * Source: ISO 898-1 (metric), ASME B1.1 (unified), both by copies.
 */
export function stressDiameter(thread: Thread): Length {
  if (thread.form === 'unified') return (thread.diameter - UNIFIED_STRESS_CONSTANT * thread.pitch) as Length;
  const { pitchDiameter, rootDiameter } = threadSizes(thread);
  return ((pitchDiameter + rootDiameter) / 2) as Length;
}

/**
 * Tensile stress area: As = π/4·d0² [m²], d0 from `stressDiameter`. For proof load and preload.
 *
 * Example: M10 x 1.5: 57.990 mm² (printed 58.0); 1/2-13: 0.1419 in². Source: as `stressDiameter`.
 */
export function stressArea(thread: Thread): Area {
  return circle(stressDiameter(thread));
}

/** Root areas that are in print under the same name. They differ by 2.5 % on M14. */
export interface RootAreas {
  /** On the rounded root d3: for the stretch of the threaded part. */
  readonly rounded: Area;
  /** On d − 1.299038·P, the full triangle below the pitch line: older and pressure-joint tables. */
  readonly flat: Area;
}

/**
 * Both root areas in print: π/4·d3² and π/4·(d − 1.299038·P)² [m²]. Symbols as in `threadSizes`.
 *
 * Example: M14 x 2: 104.7 and 102.1 mm². Source: ISO 724 by a copy; the second from a printed table of root areas.
 */
export function rootAreas(thread: Thread): RootAreas {
  return {
    rounded: circle(threadSizes(thread).rootDiameter),
    flat: circle((thread.diameter - (3 / 4) * ROOT_3 * thread.pitch) as Length),
  };
}

export function circle(diameter: Length): Area {
  return ((Math.PI / 4) * diameter ** 2) as Area;
}

export interface NotAThread {
  readonly code: 'not-a-thread';
  readonly given: string;
  /** `pitch-missing` when the diameter alone is given: it never tells the pitch. */
  readonly why: 'unreadable' | 'pitch-missing' | 'pitch-too-coarse';
}

const METRIC = /^M\s*(\d+(?:\.\d+)?)(?:\s*[x×*]\s*(\d+(?:\.\d+)?))?$/i;
const SERIES = String.raw`(?:\s*-\s*(\d+))?(?:\s*(?:UNC|UNF|UNEF|UN))?$`;
/** "3/8-24", "1 1/4-7". */
const FRACTION = new RegExp(String.raw`^(?:(\d+)[ -])?(\d+)\/(\d+)(?:\s*(?:in|"))?${SERIES}`, 'i');
/** "1-8": whole inches. */
const WHOLE = new RegExp(String.raw`^([1-6])(?:\s*(?:in|"))?${SERIES}`, 'i');
/** "#10-24": numbered sizes, 0.060 in and 0.013 in more for each number. */
const NUMBERED = new RegExp(String.raw`^#\s*(\d|1[0-2])${SERIES}`, 'i');
const COARSEST = 0.4;
const MILLIMETRE = 0.001;
const INCH = 0.0254;

/**
 * Reads a thread designation: "M10 x 1.5", "M10x1.25", "3/8-24", "7/16-20 UNF", "1-8", "#10-24".
 *
 * The pitch must be stated: a diameter such as M12 exists with three of them. Refuses with `not-a-thread`.
 * Source: designations of ISO 261 and ASME B1.1 (from memory).
 */
export function readThread(text: string): Outcome<Thread, NotAThread> {
  const given = text.trim();
  const thread = readMetric(given) ?? readUnified(given);
  if (!thread) return refused({ code: 'not-a-thread', given, why: 'unreadable' });
  if (!(thread.pitch > 0)) return refused({ code: 'not-a-thread', given, why: 'pitch-missing' });
  if (!(thread.pitch < COARSEST * thread.diameter)) {
    return refused({ code: 'not-a-thread', given, why: 'pitch-too-coarse' });
  }
  return done(thread);
}

function readMetric(text: string): Thread | undefined {
  const match = METRIC.exec(text);
  if (!match) return undefined;
  return thread('metric', Number(match[1]) * MILLIMETRE, Number(match[2] ?? 0) * MILLIMETRE);
}

function readUnified(text: string): Thread | undefined {
  const fraction = FRACTION.exec(text);
  if (fraction) {
    const [, whole = '0', over, under, perInch] = fraction;
    return unified(Number(whole) + Number(over) / Number(under), perInch);
  }
  const whole = WHOLE.exec(text);
  if (whole) return unified(Number(whole[1]), whole[2]);
  const numbered = NUMBERED.exec(text);
  return numbered ? unified(0.06 + 0.013 * Number(numbered[1]), numbered[2]) : undefined;
}

const unified = (diameter: number, perInch: string | undefined): Thread | undefined =>
  Number.isFinite(diameter) ? thread('unified', diameter * INCH, perInch ? INCH / Number(perInch) : 0) : undefined;

const thread = (form: ThreadForm, diameter: number, pitch: number): Thread => ({
  form,
  diameter: diameter as Length,
  pitch: (Number.isFinite(pitch) ? pitch : 0) as Length,
});
