import type { QuantityKind } from './kinds.js';
import { unitsOf } from './units.js';

/** Why a typed text was refused, as data. `given` is the part of the text that the fault is about. */
export type QuantityFault =
  | { readonly code: 'empty' }
  | { readonly code: 'too-long'; readonly length: number; readonly limit: number }
  | { readonly code: 'not-a-number'; readonly given: string }
  | { readonly code: 'second-mark'; readonly given: string }
  | { readonly code: 'leading-zero'; readonly given: string }
  /** One and a quarter, or twelve hundred and fifty: the person is asked. */
  | { readonly code: 'mark-question'; readonly given: string; readonly asDecimal: string; readonly asThousands: string }
  /** `1-1/2` is one and a half to some and a range to others. */
  | { readonly code: 'hyphen-question'; readonly given: string }
  /** `13/8`: thirteen eighths, or one and three eighths with its space left out. */
  | { readonly code: 'space-question'; readonly given: string; readonly asMixed: string; readonly asFraction: string }
  | { readonly code: 'zero-denominator'; readonly given: string }
  | { readonly code: 'unit-missing'; readonly kind: QuantityKind; readonly given: string }
  | { readonly code: 'unit-unknown'; readonly kind: QuantityKind; readonly given: string }
  | {
      readonly code: 'unit-of-other-kind';
      readonly kind: QuantityKind;
      readonly given: string;
      readonly of: readonly QuantityKind[];
    }
  | { readonly code: 'not-one-value'; readonly given: string }
  | { readonly code: 'reversed'; readonly low: string; readonly high: string }
  | { readonly code: 'negative-tolerance'; readonly given: string }
  | { readonly code: 'below-absolute-zero'; readonly given: string };

const SHOWN = 32;
const CONTROL = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/gu;

/** The typed text on one line, cut to a length that leaves room for the rest of the sentence. */
function clip(given: string): string {
  const flat = [...given.replace(CONTROL, ' ')];
  return flat.length > SHOWN ? `${flat.slice(0, SHOWN).join('')}…` : flat.join('');
}

const quote = (given: string): string => `"${clip(given)}"`;

const kindWord = (kind: QuantityKind): string => kind.replaceAll('-', ' ');

const article = (kind: QuantityKind): string => `${/^a/.test(kind) ? 'an' : 'a'} ${kindWord(kind)}`;

const unitList = (kind: QuantityKind): string =>
  unitsOf(kind)
    .slice(0, 4)
    .map((unit) => unit.name || 'a plain number')
    .join(', ');

/** One clear line for a reader: what is wrong, what was given, what is valid. At most 200 characters. */
export function describeFault(fault: QuantityFault): string {
  switch (fault.code) {
    case 'empty':
      return 'Nothing typed: a number with its unit is needed.';
    case 'too-long':
      return `The text has ${fault.length} characters; a value has at most ${fault.limit}.`;
    case 'not-a-number':
      return `${quote(fault.given)} is not a number: digits with one decimal mark, or a fraction such as 3/8.`;
    case 'second-mark':
      return `${quote(fault.given)} has a second decimal mark: type the number again.`;
    case 'leading-zero':
      return `${quote(fault.given)} starts with a zero but has no decimal mark after it: is a mark missing?`;
    case 'mark-question':
      return `Is ${quote(fault.given)} ${fault.asDecimal} or ${fault.asThousands}? Type it one of these two ways.`;
    case 'hyphen-question':
      return `${quote(fault.given)} can be read in two ways: type a range as 1..2, and one and a half as 1 1/2.`;
    case 'space-question':
      return `Is ${quote(fault.given)} ${clip(fault.asMixed)} or ${clip(fault.asFraction)}? Type it one of these two ways.`;
    case 'zero-denominator':
      return `${quote(fault.given)} divides by zero.`;
    case 'unit-missing':
      return `${quote(fault.given)} has no unit: ${article(fault.kind)} needs one, such as ${unitList(fault.kind)}.`;
    case 'unit-unknown':
      return `${quote(fault.given)} is not a unit of ${kindWord(fault.kind)}: use ${unitList(fault.kind)}.`;
    case 'unit-of-other-kind':
      return `${quote(fault.given)} is a unit of ${fault.of.slice(0, 2).map(kindWord).join(' or ')}, but ${article(fault.kind)} is needed: use ${unitList(fault.kind)}.`;
    case 'not-one-value':
      return `${quote(fault.given)} is a window: one value is needed here.`;
    case 'reversed':
      return `The low end ${quote(fault.low)} is above the high end ${quote(fault.high)}.`;
    case 'negative-tolerance':
      return `${quote(fault.given)} is no tolerance: the figure after ± has no sign.`;
    case 'below-absolute-zero':
      return `${quote(fault.given)} is below absolute zero.`;
  }
}
