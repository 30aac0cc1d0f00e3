/**
 * Where the error of a value comes from. Two readings of one gauge share its setting error: in a mean it stays, in a difference it
 * cancels. So a value knows its causes, and the sensitivities to one cause add before they are squared.
 */
/** One independent cause of error: the reading itself, the setting of a gauge, a thermometer. */
export interface ErrorSource {
  /** A slot, or what readings share: `gauge/...`, `warmth/...`. */
  readonly key: string;
  readonly name: string;
  /** Standard uncertainty in its own unit. */
  readonly u: number;
}
/** Whether a cause is a reading, which can be taken again; no feature is called gauge or warmth. */
export const isReading = (key: string): boolean => !/^(gauge|warmth)\//.test(key);

/** How much a value changes for one unit of the source. */
export interface Cause {
  readonly source: ErrorSource;
  readonly sensitivity: number;
}
export const causeOf = (source: ErrorSource, sensitivity: number): Cause => ({ source, sensitivity });

/** A reading as the blend needs it: its own cause, and the causes that it shares, the second list for each unit of its value. */
export interface Blended {
  readonly value: number;
  readonly own: ErrorSource;
  readonly shared: readonly Cause[];
  readonly warm: readonly Cause[];
}

/**
 * Causes of Σ cᵢ·xᵢ. Lists that several readings have in common are added up first, so that a mean of many costs little.
 * Source: JCGM 100, 5.1.2 and F.1.2.3 (recalled): inputs correlated through common variables are written in these variables.
 */
export class Blend {
  readonly #sources: ErrorSource[] = [];
  readonly #sensitivities: number[] = [];
  readonly #lists: (readonly Cause[])[] = [];
  readonly #factors: number[] = [];
  /** How much of the room is in use: it is kept from blend to blend. */
  #count = 0;
  #listed = 0;

  /** Ready for another value, with the room that it has. */
  begin(): this {
    this.#count = 0;
    this.#listed = 0;
    return this;
  }
  add(factor: number, { value, own, shared, warm }: Blended): void {
    if (factor === 0) return;
    this.#source(own, factor);
    if (shared.length > 0) this.#list(shared, factor);
    if (warm.length > 0) this.#list(warm, factor * value);
  }
  #list(list: readonly Cause[], factor: number): void {
    for (let at = 0; at < this.#listed; at += 1)
      if (this.#lists[at] === list) {
        this.#factors[at]! += factor;
        return;
      }
    this.#lists[this.#listed] = list;
    this.#factors[this.#listed] = factor;
    this.#listed += 1;
  }
  #source(source: ErrorSource, sensitivity: number): void {
    for (let at = 0; at < this.#count; at += 1)
      if (this.#sources[at] === source) {
        this.#sensitivities[at]! += sensitivity;
        return;
      }
    this.#sources[this.#count] = source;
    this.#sensitivities[this.#count] = sensitivity;
    this.#count += 1;
  }
  /** The shared lists are resolved into their sources; nothing may be added afterwards. */
  #resolve(): void {
    for (let at = 0; at < this.#listed; at += 1)
      for (const { source, sensitivity } of this.#lists[at]!) this.#source(source, sensitivity * this.#factors[at]!);
    this.#listed = 0;
  }
  /** Standard uncertainty, in the unit of the value. The blend is used up by it. */
  doubt(): number {
    this.#resolve();
    let squares = 0;
    for (let at = 0; at < this.#count; at += 1) squares += (this.#sensitivities[at]! * this.#sources[at]!.u) ** 2;
    return Math.sqrt(squares);
  }
  causes(): readonly Cause[] {
    this.#resolve();
    return this.#sources.slice(0, this.#count).map((source, at) => ({ source, sensitivity: this.#sensitivities[at]! }));
  }
}
