/** What the screen of degreeing shows. */
import type { TimingPart, VerdictWord } from '../../assess/index.js';
import type { Figure, Shown } from '../../drawing/index.js';
import type { CylinderNumber, ValveId } from '../../engine/index.js';
import type { PlaceView, SubjectView } from '../combination-views.js';
import type { Caution, Given } from '../views.js';
import type { CamCarries } from './valve-room-asked.js';

/** Parts at hand that turn the cam, and teeth that may be moved. */
export interface PartsAtHand {
  readonly parts: readonly TimingPart[];
  /** Teeth of the crank sprocket; absent where none may be moved. */
  readonly crankTeeth?: number;
}
export interface DegreeingWish {
  /** `valveKey` of the lobe that is read. */
  readonly lobe?: string;
  /** Wheel reading that is keyed and waits for its lift [rad]. */
  readonly wheel?: number;
  readonly atHand: PartsAtHand;
  readonly carries?: CamCarries;
  readonly shown?: Shown;
}
/** A reading that stands, with what is odd about it. */
export interface ReadRow {
  readonly entry: string;
  readonly words: string;
  readonly given: Given;
  readonly wrong?: string;
}
export interface NextRow {
  /** What the wheel shows there. */
  readonly wheel: string;
  readonly words: string;
}
/** One way to bring the cam nearer to where it is wanted. */
export interface CorrectionRow {
  readonly key: string;
  readonly name: string;
  /** "4° earlier". */
  readonly change: string;
  /** What is then left: "0.6° later than wanted". */
  readonly left: string;
  /** "must be bought, price 14"; absent where nothing is. */
  readonly buy?: string;
  readonly verdict: VerdictWord;
  readonly chance?: string;
  readonly rooms: readonly { readonly kind: string; readonly words: string; readonly kept?: boolean }[];
  /** Cam advance against the card that it makes [rad]: what is tried on the scratch copy. */
  readonly advance: number;
}
export interface DegreeingView extends SubjectView {
  /** The stop comes first: without it no wheel reading means a crank angle. */
  readonly stop: {
    readonly cylinder: CylinderNumber;
    readonly words: string;
    readonly found: boolean;
    readonly pairs: readonly ReadRow[];
  };
  /** `value` says how often each was read; no verdict before it was. */
  readonly lobes: readonly PlaceView[];
  /** What can hurt or break while the crank is turned, until something was read. */
  readonly before: readonly Caution[];
  readonly begun: boolean;
  readonly lobe: { readonly id: ValveId; readonly key: string; readonly name: string; readonly words: string };
  readonly readings: readonly ReadRow[];
  readonly next: readonly NextRow[];
  readonly corrections: readonly CorrectionRow[];
  /** Keys, bushings and sprockets of the sheet's stock, in words. */
  readonly stock: readonly string[];
  readonly carries: CamCarries;
  readonly figure: Figure;
}
