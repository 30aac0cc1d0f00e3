/** Small checks of a value's shape, for input that nobody has vouched for. */

export interface ShapeFault {
  readonly code: 'wrong-shape';
  /** The field, e.g. `valve.cylinder`; empty for the whole. */
  readonly at: string;
  readonly expected: string;
  readonly given: string;
}
/** Finds what is wrong with a value that should be a `T`; nothing when it is one. */
export interface Guard<T> {
  readonly expected: string;
  readonly check: (value: unknown, at: string) => ShapeFault | undefined;
  /** Carries the type only. */
  readonly yields?: T;
}
export interface OptionalGuard<T> extends Guard<T> {
  readonly optional: true;
}
type Field<T, K extends keyof T> = Partial<Pick<T, K>> extends Pick<T, K> ? OptionalGuard<T[K]> : Guard<T[K]>;
/** A guard for each field; fields that may be absent need an `optional` one. */
export type Fields<T> = { readonly [K in keyof T]-?: Field<T, K> };

const LONGEST_SHOWN = 40;

/** The given value in a few words, short enough for one line. */
function shown(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object' && value !== null) return 'an object';
  const text = typeof value === 'string' ? JSON.stringify(value) : String(value);
  return text.length > LONGEST_SHOWN ? `${text.slice(0, LONGEST_SHOWN)}…` : text;
}

export function guard<T>(expected: string, passes: (value: unknown) => boolean): Guard<T> {
  return {
    expected,
    check: (value, at) => (passes(value) ? undefined : { code: 'wrong-shape', at, expected, given: shown(value) }),
  };
}

/** Text up to a length; notes are long, names are not. */
export const text = (longest: number): Guard<string> =>
  guard(`text of at most ${longest} characters`, (value) => typeof value === 'string' && value.length <= longest);
/** Text with at least one sign that can be seen. */
export const filledText = (longest: number): Guard<string> =>
  guard(
    `text of 1 to ${longest} characters`,
    (value) => typeof value === 'string' && value.trim() !== '' && value.length <= longest,
  );
export const finite: Guard<number> = guard('a finite number', (value) => Number.isFinite(value));
export const count: Guard<number> = guard(
  'a whole number from 1',
  (value) => Number.isSafeInteger(value) && (value as number) >= 1,
);
export const truth: Guard<boolean> = guard('true or false', (value) => typeof value === 'boolean');
export function oneOf<const T extends string>(...words: readonly T[]): Guard<T> {
  return guard(`one of ${words.join(', ')}`, (value) => (words as readonly unknown[]).includes(value));
}
export const optional = <T>(inner: Guard<T>): OptionalGuard<T> => ({ ...inner, optional: true });

export function either<A, B>(first: Guard<A>, second: Guard<B>): Guard<A | B> {
  const expected = `${first.expected}, or ${second.expected}`;
  return guard(expected, (value) => first.check(value, '') === undefined || second.check(value, '') === undefined);
}

export function listOf<T>(inner: Guard<T>, most: number): Guard<readonly T[]> {
  const expected = `a list of at most ${most}`;
  return {
    expected,
    check(value, at) {
      if (!Array.isArray(value) || value.length > most) {
        return { code: 'wrong-shape', at, expected, given: shown(value) };
      }
      for (const [index, one] of value.entries()) {
        const fault = inner.check(one, `${at}[${index}]`);
        if (fault !== undefined) return fault;
      }
      return undefined;
    },
  };
}

/** An object with exactly these fields; one that nobody knows is a fault, because it would be kept and never read. */
export function object<T>(fields: Fields<T>): Guard<T> {
  const known = Object.entries(fields) as [string, Guard<unknown> & { readonly optional?: true }][];
  const expected = `an object with ${known.map(([name]) => name).join(', ')}`;
  return {
    expected,
    check(value, at) {
      if (typeof value !== 'object' || value === null || Array.isArray(value)) {
        return { code: 'wrong-shape', at, expected, given: shown(value) };
      }
      const given = value as Readonly<Record<string, unknown>>;
      return strangeField(given, fields, at, expected) ?? faultyField(given, known, at);
    },
  };
}

const within = (at: string, name: string): string => (at === '' ? name : `${at}.${name}`);

function strangeField(given: object, fields: object, at: string, expected: string): ShapeFault | undefined {
  const strange = Object.keys(given).find((name) => !Object.hasOwn(fields, name));
  if (strange === undefined) return undefined;
  return {
    code: 'wrong-shape',
    at: within(at, strange.slice(0, LONGEST_SHOWN)),
    expected,
    given: 'a field not known here',
  };
}

function faultyField(
  given: Readonly<Record<string, unknown>>,
  known: readonly [string, Guard<unknown> & { readonly optional?: true }][],
  at: string,
): ShapeFault | undefined {
  for (const [name, inner] of known) {
    const value = Object.hasOwn(given, name) ? given[name] : undefined;
    if (value === undefined && inner.optional) continue;
    const fault = inner.check(value, within(at, name));
    if (fault !== undefined) return fault;
  }
  return undefined;
}
