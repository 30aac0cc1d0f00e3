/** Wear against a limit in each of the three forms that manuals use. */
import { atMost } from './decision.js';

export const WEAR_FORMS = ['absolute', 'change-from-new', 'clearance'] as const;
export type WearForm = (typeof WEAR_FORMS)[number];

export interface WearReading {
  readonly form: WearForm;
  /** Size now; for `clearance` that of the hole. */
  readonly measured: number;
  /** Size when new, for `change-from-new`. */
  readonly whenNew: number;
  /** Size of the mating shaft, for `clearance`. */
  readonly mate: number;
  /** A hole wears larger, a shaft smaller. */
  readonly part: 'hole' | 'shaft';
}

/** The figure that is held against the limit: the size itself, the change from new in the sense of wear, or the clearance. */
export function wearFigure({ form, measured, whenNew, mate, part }: WearReading): number {
  switch (form) {
    case 'absolute':
      return measured;
    case 'change-from-new':
      return part === 'hole' ? measured - whenNew : whenNew - measured;
    case 'clearance':
      return measured - mate;
  }
}

/** A shaft with an absolute limit must not be smaller; everything else must not be larger. */
export const wearGrows = (form: WearForm, part: 'hole' | 'shaft'): boolean => form !== 'absolute' || part === 'hole';

export interface WearState {
  /** Left until the limit, negative beyond it. */
  readonly left: number;
  /** Share of the wear from new to the limit that is used, where the new end is known. */
  readonly used: number | undefined;
  readonly state: 'as new' | 'worn, usable' | 'past the limit';
}

/**
 * Where a part stands between new and its limit. `newEnd` is the end of the new band toward the limit; unknown, a part inside the
 * limit counts as worn and usable. Limits are inclusive.
 */
export function wearState(figure: number, limit: number, grows: boolean, newEnd: number | undefined): WearState {
  const sense = grows ? 1 : -1;
  const left = sense * (limit - figure);
  const isNew = newEnd !== undefined && atMost(sense * figure, sense * newEnd);
  const room = newEnd === undefined ? 0 : sense * (limit - newEnd);
  return {
    left,
    used: newEnd !== undefined && room > 0 ? (sense * (figure - newEnd)) / room : undefined,
    state: !atMost(sense * figure, sense * limit) ? 'past the limit' : isNew ? 'as new' : 'worn, usable',
  };
}
