/** How many keys may be fresh before they are laid to the rest: copying few costs little, copying all costs with the log. */
const MOST_FRESH = 48;

/** A map that grows by one and is handed out each time: what was handed out stays as it was, without a copy of the whole. */
export class GrowingMap<K, V extends NonNullable<unknown>> {
  #settled: ReadonlyMap<K, V> = new Map();
  #fresh = new Map<K, V>();

  get(key: K): V | undefined {
    return this.#fresh.get(key) ?? this.#settled.get(key);
  }
  set(key: K, value: V): void {
    this.#fresh.set(key, value);
  }
  asItStands(): ReadonlyMap<K, V> {
    if (this.#fresh.size > MOST_FRESH) {
      this.#settled = new Map([...this.#settled, ...this.#fresh]);
      this.#fresh = new Map();
    }
    return this.#fresh.size === 0 ? this.#settled : new Layers(this.#settled, new Map(this.#fresh));
  }
}

/** A map over a map. Looked up in both; put together as one only for who goes through all of it. */
class Layers<K, V extends NonNullable<unknown>> implements ReadonlyMap<K, V> {
  readonly #settled: ReadonlyMap<K, V>;
  readonly #fresh: ReadonlyMap<K, V>;
  #whole: ReadonlyMap<K, V> | undefined;

  constructor(settled: ReadonlyMap<K, V>, fresh: ReadonlyMap<K, V>) {
    this.#settled = settled;
    this.#fresh = fresh;
  }
  get(key: K): V | undefined {
    return this.#fresh.get(key) ?? this.#settled.get(key);
  }
  has(key: K): boolean {
    return this.#fresh.has(key) || this.#settled.has(key);
  }
  /** A key keeps the rank that it had first, as in any map. */
  #together(): ReadonlyMap<K, V> {
    this.#whole ??= new Map([...this.#settled, ...this.#fresh]);
    return this.#whole;
  }
  get size(): number {
    return this.#together().size;
  }
  forEach(run: (value: V, key: K, map: ReadonlyMap<K, V>) => void): void {
    for (const [key, value] of this.#together()) run(value, key, this);
  }
  entries(): MapIterator<[K, V]> {
    return this.#together().entries();
  }
  keys(): MapIterator<K> {
    return this.#together().keys();
  }
  values(): MapIterator<V> {
    return this.#together().values();
  }
  [Symbol.iterator](): MapIterator<[K, V]> {
    return this.entries();
  }
}
