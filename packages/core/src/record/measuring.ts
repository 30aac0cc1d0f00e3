/** What the log holds about measuring, folded in one pass: readings, gauges and their checks, temperatures, decisions. */
import type { Engine } from '../engine/model.js';
import { GrowingMap } from './growing-map.js';
import type { MeasuringData } from './measuring-data.js';
import type { LogEntry } from './order.js';
import type { ReadEntry, RecordState } from './state.js';
import type { KnownData } from './upcast.js';

export interface MeasuredReading {
  readonly slot: string;
  readonly entry: string;
  readonly text: string;
  readonly value: number;
  readonly instrument?: string;
  readonly occasion: number;
  readonly at: string;
  readonly by: string;
  /** Kelvin; noted with the reading, else of the part, else of the room. */
  readonly temperature?: number;
  /** Kelvin; of the room, where it was noted apart from the part. */
  readonly room?: number;
}
export interface KeptInstrument extends Pick<MeasuringData['instrument-kept'], 'id' | 'name' | 'kind' | 'measured'> {
  readonly unit: string;
  readonly resolution: number;
  readonly range?: { readonly low?: number; readonly high?: number };
  readonly expanded?: number;
  readonly gripLength?: number;
  readonly certified?: string;
}
export interface StandardRead {
  readonly instrument: string;
  readonly moment: 'start' | 'between' | 'end';
  readonly standard: number;
  readonly read: number;
  readonly at: string;
  readonly entry: string;
}
export type TakenDecision = MeasuringData['decided'] & Pick<MeasuredReading, 'entry' | 'at' | 'by'>;

export interface Measuring {
  /** Readings that stand, of the newest occasion of their place, in order; a repeat is a further one. */
  readonly bySlot: ReadonlyMap<string, readonly MeasuredReading[]>;
  /** Readings that stand, of earlier occasions. */
  readonly before: ReadonlyMap<string, readonly MeasuredReading[]>;
  readonly instruments: ReadonlyMap<string, KeptInstrument>;
  readonly checks: readonly StandardRead[];
  /** The newest of each decision and scope. */
  readonly choices: readonly TakenDecision[];
  /** `feature/place` -> the occasion that counts now, where it is not simply the first with nothing read. */
  readonly occasions: ReadonlyMap<string, number>;
  /** Where readings were added to those of an answer before and nothing else: its `bySlot`, and the slots that were read since. */
  readonly grewFrom?: { readonly bySlot: Measuring['bySlot']; readonly slots: readonly string[] };
}

/** `cylinder-bore/3` of `cylinder-bore/3/top-thrust`; undefined where the text is no slot. */
export function placeOfSlot(slot: string): string | undefined {
  const parts = slot.split('/');
  return parts.length === 3 && parts.every((part) => part !== '') ? `${parts[0]}/${parts[1]}` : undefined;
}

/** Temperatures as they hold while the log goes by. The newest note counts: one of the room alone ends those of parts. */
class Warmth {
  #room: number | undefined;
  #parts: number | undefined;
  readonly #byFeature = new Map<string, number>();

  note({ room, part, about }: MeasuringData['temperature-noted']): void {
    if (room !== undefined) this.#room = room.value;
    if (about !== undefined && part !== undefined) this.#byFeature.set(about, part.value);
    if (about !== undefined) return;
    this.#parts = part?.value;
    this.#byFeature.clear();
  }
  /** `own`: noted with the reading itself. */
  of(slot: string, own: number | undefined): Pick<MeasuredReading, 'temperature' | 'room'> {
    const part = own ?? this.#byFeature.get(slot.slice(0, slot.indexOf('/'))) ?? this.#parts;
    if (part === undefined) return this.#room === undefined ? {} : { temperature: this.#room };
    return { temperature: part, ...(this.#room !== undefined && { room: this.#room }) };
  }
}

const nothingSorted = () => ({
  bySlot: new GrowingMap<string, readonly MeasuredReading[]>(),
  before: new GrowingMap<string, readonly MeasuredReading[]>(),
});

class Fold {
  readonly #readings: { readonly place: string; readonly reading: MeasuredReading }[] = [];
  #sorted = nothingSorted();
  /** The readings that were handed out last, and the slots that were read since. */
  #last: { readonly bySlot: Measuring['bySlot']; readonly slots: string[] } | undefined;
  /** How many readings are sorted; none once the occasion of a place has changed. */
  #count = 0;
  readonly #instruments = new Map<string, KeptInstrument>();
  readonly #checks: StandardRead[] = [];
  readonly #choices = new Map<string, TakenDecision>();
  readonly #occasions = new Map<string, number>();
  readonly #warmth = new Warmth();

  take(known: KnownData, entry: LogEntry): void {
    switch (known.kind) {
      case 'measured':
        this.#measured(known.data, entry);
        break;
      case 'instrument-kept':
        this.#instruments.set(known.data.id, instrumentOf(known.data));
        break;
      case 'instrument-checked': {
        const { instrument, moment, standard, reading } = known.data;
        const { at, id } = entry;
        this.#checks.push({ instrument, moment, standard: standard.value, read: reading.value, at, entry: id });
        break;
      }
      case 'temperature-noted':
        this.#warmth.note(known.data);
        break;
      case 'work-returned':
        this.#returned(known.data);
        break;
      case 'decided':
        this.#decided(known.data, entry);
        break;
    }
  }
  #measured(data: MeasuringData['measured'], entry: LogEntry): void {
    const { slot, occasion, reading, instrument } = data;
    const place = slot.slice(0, slot.lastIndexOf('/'));
    const read: MeasuredReading = {
      slot,
      entry: entry.id,
      text: reading.text,
      value: reading.value,
      ...(instrument !== undefined && { instrument }),
      occasion,
      at: entry.at,
      by: entry.person,
      ...this.#warmth.of(slot, data.temperature?.value),
    };
    this.#readings.push({ place, reading: read });
    // A reading can know of a return that was struck out afterwards: it is still the newest of its place.
    const known = this.#occasions.get(place);
    if (occasion <= (known ?? 0)) return;
    this.#occasions.set(place, occasion);
    if (known !== undefined) this.#unsort();
  }
  #returned({ feature, places }: MeasuringData['work-returned']): void {
    for (const one of new Set(places)) {
      const place = `${feature}/${one}`;
      this.#occasions.set(place, (this.#occasions.get(place) ?? 1) + 1);
    }
    this.#unsort();
  }
  #unsort(): void {
    this.#sorted = nothingSorted();
    this.#last = undefined;
    this.#count = 0;
  }
  #decided(data: MeasuringData['decided'], entry: LogEntry): void {
    const key = JSON.stringify([data.decision, data.scope]);
    // Deleted first, so that the list stays in the order in which things were decided.
    this.#choices.delete(key);
    this.#choices.set(key, { ...data, entry: entry.id, at: entry.at, by: entry.person });
  }
  #sort(): void {
    for (; this.#count < this.#readings.length; this.#count += 1) {
      const { place, reading } = this.#readings[this.#count]!;
      const now = reading.occasion === this.#occasions.get(place);
      const map = now ? this.#sorted.bySlot : this.#sorted.before;
      if (now) this.#last?.slots.push(reading.slot);
      // Lists are made anew and never grow: an answer given before keeps its own.
      map.set(reading.slot, [...(map.get(reading.slot) ?? []), reading]);
    }
  }
  done(): Measuring {
    this.#sort();
    const grewFrom = this.#last;
    const bySlot = this.#sorted.bySlot.asItStands();
    this.#last = { bySlot, slots: [] };
    return {
      bySlot,
      before: this.#sorted.before.asItStands(),
      instruments: new Map(this.#instruments),
      checks: [...this.#checks],
      choices: [...this.#choices.values()],
      occasions: new Map(this.#occasions),
      ...(grewFrom && { grewFrom }),
    };
  }
}

function instrumentOf(data: MeasuringData['instrument-kept']): KeptInstrument {
  const { id, name, kind, measured, unit, resolution, low, high, expanded, gripLength, certified } = data;
  return {
    id,
    name,
    kind,
    measured,
    unit,
    resolution: resolution.value,
    ...((low ?? high) && { range: { ...(low && { low: low.value }), ...(high && { high: high.value }) } }),
    ...(expanded && { expanded: expanded.value }),
    ...(gripLength && { gripLength: gripLength.value }),
    ...(certified !== undefined && { certified }),
  };
}

/** The fold of the moment last asked about, for each engine: a log that only grew goes on from there. */
interface Moment {
  readonly entries: readonly ReadEntry[];
  readonly fold: Fold;
}
const moments = new WeakMap<Engine, Moment>();
const folded = new WeakMap<RecordState, Measuring>();

/**
 * Folds what stands in a record: struck-out entries and those not understood count for nothing. A state never changes, so
 * its answer is kept: every rule and view of one moment asks for it.
 */
export function foldMeasuring(state: RecordState): Measuring {
  const known = folded.get(state);
  if (known !== undefined) return known;
  const { entries, engine } = state;
  const moment = engine && moments.get(engine);
  const before = moment !== undefined && goesOn(moment.entries, entries) ? moment : undefined;
  const fold = before?.fold ?? new Fold();
  for (let at = before?.entries.length ?? 0; at < entries.length; at += 1) {
    const { entry, reading, struck } = entries[at]!;
    if (reading.understood && struck === undefined) fold.take(reading.known, entry);
  }
  if (engine !== undefined) moments.set(engine, { entries, fold });
  const measuring = fold.done();
  folded.set(state, measuring);
  return measuring;
}

/** Whether these entries begin with those, read and struck out in the same way. */
const goesOn = (known: readonly ReadEntry[], entries: readonly ReadEntry[]): boolean =>
  known.length <= entries.length &&
  known.every((one, at) => {
    const other = entries[at]!;
    return (
      one === other || (one.reading === other.reading && one.struck === other.struck && one.entry.id === other.entry.id)
    );
  });
