/** A reading taken warm or cold, referred to 20 °C. */

import { EXPANSION, sizeAtReference } from '../../calc/metrology/index.js';
import type { Engine } from '../../engine/index.js';
import { celsius, fromHalfWidth, type Length, type Temperature } from '../../quantity/index.js';
import type { FeatureKind, SlotReading } from '../model.js';
import { type Cause, causeOf, type ErrorSource } from './causes.js';
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

/** A place as warmth sees it: what its part is made of, and the difference between a part and a gauge that lay together there. */
export interface WarmPlace {
  readonly expansion: number;
  readonly apart: ErrorSource;
}

/** Temperatures of one bench: what is common to all its readings is one cause of error. */
export class Warmth {
  readonly #unknown: ErrorSource;
  readonly #thermometer: ErrorSource;
  readonly #room: ErrorSource;
  readonly #habits: Habits;
  readonly #materials = new Map<number, ErrorSource>();

  constructor(habits: Habits) {
    this.#habits = habits;
    this.#unknown = source('workshop', 'temperature that nobody noted', habits.workshop);
    this.#thermometer = source('part', 'thermometer at the part', habits.thermometer);
    this.#room = source('room', 'thermometer of the room', habits.thermometer);
  }

  /** One cause for each place. */
  place(id: string, expansion: number): WarmPlace {
    return { expansion, apart: source(id, 'part and gauge not quite alike in temperature', this.#habits.apart) };
  }
  #ofMaterial(expansion: number): ErrorSource {
    let known = this.#materials.get(expansion);
    if (known === undefined) {
      known = source(`expansion-${this.#materials.size}`, 'expansion of the material', this.#habits.expansion);
      this.#materials.set(expansion, known);
    }
    return known;
  }

  /** Causes for each unit of length. Without any temperature nothing is corrected, and the workshop's is the doubt. */
  causes({ expansion, apart }: WarmPlace, { temperature, room }: SlotReading): readonly Cause[] {
    if (temperature === undefined) return [causeOf(this.#unknown, expansion - GAUGE), causeOf(apart, GAUGE)];
    const material = causeOf(this.#ofMaterial(expansion), expansion * (temperature - REFERENCE));
    if (room === undefined) return [material, causeOf(this.#thermometer, expansion - GAUGE), causeOf(apart, GAUGE)];
    return [material, causeOf(this.#thermometer, expansion), causeOf(this.#room, -GAUGE)];
  }
}
const source = (key: string, name: string, half: number): ErrorSource => ({
  key: `warmth/${key}`,
  name,
  u: fromHalfWidth(half),
});

/**
 * Length at 20 °C by `calc/metrology/temperature`. The gauge has the temperature of the room where that was noted apart, else that of the
 * part, with which it lay. Without any temperature the length stays as read.
 */
export function atReference(length: number, { temperature, room }: SlotReading, expansion: number): number {
  if (temperature === undefined) return length;
  return sizeAtReference(
    length as Length,
    { temperature: temperature as Temperature, expansion },
    { temperature: (room ?? temperature) as Temperature, expansion: GAUGE },
    REFERENCE,
  );
}
