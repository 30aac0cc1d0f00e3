import { commaIsUnsure, hasDigits, type KeyBuffer, placesKeyed, shownNumber } from './key-buffer.js';

/** What the core says about a value before it is recorded. */
export type Gate =
  | { readonly level: 'fine' }
  | { readonly level: 'unlikely'; readonly expected: string; readonly hint?: string }
  | { readonly level: 'impossible'; readonly reason: string };

export interface GateRules {
  readonly unit: string;
  /** Places that the gauge resolves; fewer are asked about. */
  readonly places?: number;
  readonly check?: (text: string) => Gate;
}
/** What stands between the key and the record. `ask` may be answered with yes; `refuse` may not. */
export type Barrier =
  | { readonly kind: 'refuse'; readonly words: string }
  | {
      readonly kind: 'ask';
      readonly about: 'comma' | 'places' | 'unlikely';
      readonly words: string;
      readonly expected?: string;
    };

/** The first barrier that the person has not answered yet, or none. */
export function barrierFor(buffer: KeyBuffer, rules: GateRules, answered: ReadonlySet<string>): Barrier | undefined {
  if (!hasDigits(buffer)) return { kind: 'refuse', words: `Nothing keyed yet. Key the reading in ${rules.unit}.` };
  if (buffer.letters !== '' && !sameUnit(buffer.letters, rules.unit))
    return {
      kind: 'refuse',
      words: `The gauge sent “${buffer.letters}”, this place is in ${rules.unit}. Set the gauge to ${rules.unit}, then read again.`,
    };
  const shown = shownNumber(buffer);
  if (commaIsUnsure(buffer) && !answered.has('comma'))
    return {
      kind: 'ask',
      about: 'comma',
      words: `Is ${buffer.raw} meant as ${shown}? If not, key it again without the comma.`,
    };
  const gate = rules.check?.(shown) ?? { level: 'fine' };
  if (gate.level === 'impossible') return { kind: 'refuse', words: gate.reason };
  if (gate.level === 'unlikely' && !answered.has('unlikely'))
    return {
      kind: 'ask',
      about: 'unlikely',
      words: gate.hint ?? 'Not what such a part usually measures.',
      expected: gate.expected,
    };
  if (rules.places !== undefined && placesKeyed(buffer) < rules.places && !answered.has('places'))
    return {
      kind: 'ask',
      about: 'places',
      words: `The gauge reads ${rules.places} places, ${placesKeyed(buffer)} were keyed. Is it ${shown} ${rules.unit} to the last place?`,
    };
  return undefined;
}

const sameUnit = (letters: string, unit: string): boolean => {
  const plain = (u: string) => u.toLowerCase().replace(/["″]/, 'in').replace('inch', 'in');
  return plain(letters) === plain(unit);
};
