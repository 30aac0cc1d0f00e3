/** Rows of the sheet at a place. They change with the sheet only, so they are looked up once for a sheet. */
import type { Engine, InspectionLimit } from '../../engine/index.js';
import { limitsOf } from '../limits/index.js';
import type { Place } from '../model.js';
import { keyOf } from '../sizes/index.js';

export class LimitsAt {
  readonly #engine: Engine;
  readonly #rows = new Map<string, readonly InspectionLimit[]>();

  constructor(engine: Engine) {
    this.#engine = engine;
  }
  /** All rows, before a size has said which grade the part is. */
  all(property: string, place: Place): readonly InspectionLimit[] {
    const key = keyOf(property, place.id);
    let rows = this.#rows.get(key);
    if (rows === undefined) {
      rows = limitsOf(this.#engine, property, place);
      this.#rows.set(key, rows);
    }
    return rows;
  }
  /** The rows for a part of this size: where the sheet has grades, those of its own. */
  of(property: string, place: Place, size: number): readonly InspectionLimit[] {
    const rows = this.all(property, place);
    const graded = rows.filter(({ applies }) => applies?.grade !== undefined).length;
    return graded < 2 ? rows : limitsOf(this.#engine, property, place, { size });
  }
}
