import { exactNegative, exactProduct, exactSum, toNumber } from './exact.js';
import type { QuantityFault } from './fault.js';
import type { Form } from './form.js';
import type { QuantityKind } from './kinds.js';
import { done, type Outcome, refused } from './outcome.js';
import { readTerms, type Term } from './term.js';
import type { ReadOptions } from './typed.js';

/** What a typed text covers, in SI. `middle` is there when the text states one value, alone or with an even tolerance. */
export interface Spread {
  readonly low?: number;
  readonly high?: number;
  readonly middle?: number;
  readonly plusMinus?: number;
  readonly unit: string;
  readonly places: number;
}
type Result = Outcome<Spread, QuantityFault>;

/** SI value of a term and of a signed difference added to it, rounded once. */
function siOf(term: Term, step?: Term): number {
  const own = exactSum(term.unit.zero, exactProduct(term.exact, term.unit.size));
  return toNumber(step === undefined ? own : exactSum(own, exactProduct(step.exact, step.unit.size)));
}

/** Unit and resolution of the first term; terms in the same unit may add places. */
function scaleOf(main: Term, ...others: readonly Term[]): Pick<Spread, 'unit' | 'places'> {
  const places = others.filter((other) => other.unit === main.unit).map((other) => other.places);
  return { unit: main.unit.name, places: Math.max(main.places, ...places) };
}

function range(form: { readonly low: string; readonly high: string }, from: Term, to: Term): Result {
  const [low, high] = [siOf(from), siOf(to)];
  return low > high
    ? refused({ code: 'reversed', low: form.low, high: form.high })
    : done({ low, high, ...scaleOf(from, to) });
}

function tolerance(
  form: { readonly plus: string; readonly minus: string },
  centre: Term,
  plus: Term,
  minus: Term,
): Result {
  if (plus.signed) return refused({ code: 'negative-tolerance', given: form.plus });
  const ends = {
    low: siOf(centre, { ...minus, exact: exactNegative(minus.exact) }),
    high: siOf(centre, plus),
    ...scaleOf(centre, plus, minus),
  };
  const plusMinus = toNumber(exactProduct(plus.exact, plus.unit.size));
  return done(form.plus === form.minus ? { ...ends, middle: siOf(centre), plusMinus } : ends);
}

/** Reads the parts of a split text and works out what it covers. */
export function spreadOf(kind: QuantityKind, form: Form, options: ReadOptions): Result {
  if (form.form === 'range') {
    const terms = readTerms(kind, [form.low, form.high], options);
    return terms.ok ? range(form, terms.value[0], terms.value[1]) : terms;
  }
  if (form.form === 'tolerance') {
    const terms = readTerms(kind, [form.centre, form.plus, form.minus], options);
    return terms.ok ? tolerance(form, ...terms.value) : terms;
  }
  const terms = readTerms(kind, [form.at], options);
  if (!terms.ok) return terms;
  const value = siOf(terms.value[0]);
  const scale = scaleOf(terms.value[0]);
  if (form.form === 'one') return done({ low: value, high: value, middle: value, ...scale });
  return done(form.side === 'low' ? { low: value, ...scale } : { high: value, ...scale });
}
