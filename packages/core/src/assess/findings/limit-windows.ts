/** The windows in which a size is held, from the rows of the sheet; they change with the sheet only. */
import type { Engine, InspectionLimit, Window } from '../../engine/index.js';
import { limitsOf, newWindow, wearWindow } from '../limits/index.js';
import type { Held } from '../model.js';
import type { PlannedSize } from '../sizes/index.js';

export interface LimitWindow {
  readonly against: Held['against'];
  readonly limit: InspectionLimit;
  readonly window: Window<number>;
  /** That end of the new window which a wear limit says nothing about. */
  readonly openEnd?: Window<number>;
}

function windowsOf(limits: readonly InspectionLimit[], sense: PlannedSize['sense']): readonly LimitWindow[] {
  const anyNew = limits.map(newWindow).find((window) => window !== undefined);
  return limits.flatMap((limit) => {
    const fresh = newWindow(limit);
    const worn = wearWindow(limit, sense, fresh ?? anyNew);
    const windows: LimitWindow[] = [];
    if (fresh !== undefined) windows.push({ against: 'new', limit, window: fresh });
    if (worn !== undefined) windows.push({ against: 'wear', limit, window: worn, ...openEnd(worn, fresh ?? anyNew) });
    return windows;
  });
}

function openEnd(worn: Window<number>, fresh: Window<number> | undefined): Pick<LimitWindow, 'openEnd'> {
  const low = worn.low === undefined ? fresh?.low : undefined;
  const high = worn.high === undefined ? fresh?.high : undefined;
  if (low === undefined && high === undefined) return {};
  return { openEnd: { ...(low !== undefined && { low }), ...(high !== undefined && { high }) } };
}

/** Windows of every size of a sheet, found once each; where the sheet has grades, by the size of the part. */
export class LimitWindows {
  readonly #engine: Engine;
  readonly #plain = new Map<PlannedSize, readonly LimitWindow[]>();
  readonly #graded = new Map<string, readonly LimitWindow[]>();

  constructor(engine: Engine) {
    this.#engine = engine;
  }
  of(planned: PlannedSize, size: number): readonly LimitWindow[] {
    const before = this.#plain.get(planned);
    if (before !== undefined) return before;
    const { limits, sense, property, place } = planned;
    if (limits.filter(({ applies }) => applies?.grade !== undefined).length > 1) {
      const own = limitsOf(this.#engine, property, place, { size });
      const key = `${planned.key} ${limits.map((limit) => (own.includes(limit) ? 1 : 0)).join('')}`;
      const known = this.#graded.get(key) ?? windowsOf(own, sense);
      this.#graded.set(key, known);
      return known;
    }
    const windows = windowsOf(limits, sense);
    this.#plain.set(planned, windows);
    return windows;
  }
}
