/** A reading taken warm or cold, referred to 20 °C. */

import { EXPANSION, sizeAtReference } from '../../calc/metrology/index.js';
import type { Engine } from '../../engine/index.js';
import { celsius, fromHalfWidth, type Length, type Temperature } from '../../quantity/index.js';
import type { FeatureKind, SlotReading } from '../model.js';
import type { Cause, ErrorSource } from './causes.js';
import type { Habits } from './usual-doubt.js';

const REFERENCE = celsius(20);
const GAUGE = EXPANSION.steel;

export interface PartMaterial {
  readonly name: string;
  readonly expansion: number;
  /** The sheet names no material, and this one is usual. */
  readonly assumed: boolean;
}
type Part = NonNullable<FeatureKind['material']>;

/** What such parts are made of where the sheet is silent. Common practice, no source. */
const USUAL = {
  block: 'cast-iron',
  liner: 'cast-iron',
  head: 'cast-iron',
  piston: 'aluminium',
  crankshaft: 'steel',
  rod: 'steel',
} as const satisfies Record<Part, string>;

/** Material of the parts of a feature: from the sheet, else the usual one; parts of no named kind are of steel. */
export function materialOf(engine: Engine, { material }: FeatureKind): PartMaterial {
  if (material === undefined) return { name: 'steel', expansion: EXPANSION.steel, assumed: true };
  const stated = engine.inspection?.materials?.[material];
  const name = stated ?? USUAL[material];
  return { name, expansion: expansionOf(name, material), assumed: stated === undefined };
}
function expansionOf(name: 'cast-iron' | 'steel' | 'aluminium', part: Part): number {
  if (name === 'cast-iron') return EXPANSION['grey-iron'];
  if (name === 'steel') return EXPANSION.steel;
  return part === 'piston' ? EXPANSION['piston-4032'] : EXPANSION.aluminium;
}

export interface AtReference {
  readonly value: number;
  readonly causes: readonly Cause[];
  readonly noted: boolean;
}

/** Temperatures of one bench: what is common to all its readings is one cause of error. */
export class Warmth {
  readonly #unknown: ErrorSource;
  readonly #thermometer: ErrorSource;
  readonly #room: ErrorSource;
  readonly #apart: number;
  readonly #expansion: number;
  readonly #materials = new Map<number, ErrorSource>();

  constructor(habits: Habits) {
    const source = (key: string, name: string, half: number): ErrorSource => ({
      key: `warmth/${key}`,
      name,
      u: fromHalfWidth(half),
    });
    this.#unknown = source('workshop', 'temperature that nobody noted', habits.workshop);
    this.#thermometer = source('part', 'thermometer at the part', habits.thermometer);
    this.#room = source('room', 'thermometer of the room', habits.thermometer);
    this.#apart = habits.apart;
    this.#expansion = habits.expansion;
  }

  /** Difference between part and gauge that lay together: one cause for each place. */
  apartAt(place: string): ErrorSource {
    return {
      key: `warmth/${place}`,
      name: 'part and gauge not quite alike in temperature',
      u: fromHalfWidth(this.#apart),
    };
  }
  #ofMaterial(expansion: number): ErrorSource {
    let source = this.#materials.get(expansion);
    if (source === undefined) {
      const u = fromHalfWidth(this.#expansion);
      source = {
        key: `warmth/expansion-${this.#materials.size}`,
        name: 'expansion of the material',
        u,
      };
      this.#materials.set(expansion, source);
    }
    return source;
  }

  /**
   * Length at 20 °C by `calc/metrology/temperature`, with what is not known about it. The gauge has the temperature of the room where
   * that was noted apart, else that of the part. Without any temperature nothing is corrected.
   */
  atReference(length: number, taken: SlotReading, expansion: number, apart: ErrorSource): AtReference {
    const byPart = length * expansion;
    const byGauge = length * GAUGE;
    const { temperature, room } = taken;
    if (temperature === undefined) {
      return {
        value: length,
        causes: [
          { source: this.#unknown, sensitivity: byPart - byGauge },
          { source: apart, sensitivity: byGauge },
        ],
        noted: false,
      };
    }
    const gauge = room ?? temperature;
    const value = sizeAtReference(
      length as Length,
      { temperature: temperature as Temperature, expansion },
      { temperature: gauge as Temperature, expansion: GAUGE },
      REFERENCE,
    );
    const causes: Cause[] = [{ source: this.#ofMaterial(expansion), sensitivity: byPart * (temperature - REFERENCE) }];
    if (room === undefined)
      causes.push(
        { source: this.#thermometer, sensitivity: byPart - byGauge },
        { source: apart, sensitivity: byGauge },
      );
    else causes.push({ source: this.#thermometer, sensitivity: byPart }, { source: this.#room, sensitivity: -byGauge });
    return { value, causes, noted: true };
  }
}
