/** Compression of every cylinder, read against the rule that holds for this engine. */
import { atMost, leastAllowed, neighbours, type Verdict, wetFinding } from '../../calc/metrology/index.js';
import type { CylinderNumber, Engine } from '../../engine/model.js';
import { byBank } from './banks.js';
import { factsOf, type RunningFact, type RunningFactOf } from './facts.js';

type Compressed = RunningFactOf<'compression-read'>;

/** A rise with oil of this share is clear. Common practice, no source. */
export const CLEAR_RISE = 0.1;

export interface CompressionOfCylinder {
  readonly cylinder: CylinderNumber;
  readonly bank: string;
  readonly dry?: Compressed;
  readonly wet?: Compressed;
  /** Of the highest; absent while nothing is read. */
  readonly share?: number;
  readonly verdict: Verdict;
}
export interface CylinderFinding {
  readonly cylinders: readonly CylinderNumber[];
  readonly cause: 'rings or bore' | 'valve or gasket' | 'gasket between neighbours' | 'wet test wanted';
}
export interface CompressionTest {
  readonly rule: { readonly words: string; readonly origin: string };
  /** What the maker prints for a sound engine, and at which cranking speed; nothing is judged by it. */
  readonly printed?: string;
  readonly verdict: Verdict;
  readonly words: string;
  readonly cylinders: readonly CompressionOfCylinder[];
  /** Lowest over highest, of those that were read; absent with fewer than two. */
  readonly ratio?: number;
  readonly findings: readonly CylinderFinding[];
  readonly missing: readonly CylinderNumber[];
  readonly doubts: readonly string[];
}

/**
 * The compression test as the sheet's own rule reads it: share of the highest, floor, difference. Every rule that the sheet gives has to hold, and the
 * verdict names it. While a cylinder is unread the test is not in: the highest may be still to come; a cylinder that is low already is out.
 * Without a rule in the sheet there is a ratio and no verdict.
 *
 * Low cylinders after a little oil: a clear rise is rings or bore, none is a valve or the gasket, and two low neighbours of one bank without a rise are the
 * gasket between them. Source: service manuals (read), reference row O-40.
 */
export function compressionTest(engine: Engine, facts: readonly RunningFact[]): CompressionTest {
  const banks = byBank(engine);
  const order = banks.flat();
  const read = order.map(({ number }) => readingsOf(facts, number));
  const pressures = read.map(({ dry }) => dry?.data.reading.value);
  const known = pressures.filter((one): one is number => one !== undefined);
  const highest = known.length === 0 ? undefined : Math.max(...known);
  const rule = engine.running?.compression;
  const given = { share: rule?.share?.value, floor: rule?.floor?.value, difference: rule?.difference?.value };
  const allowed = highest === undefined ? undefined : leastAllowed(highest, given);
  const low = new Set(
    pressures.flatMap((p, at) => (p !== undefined && allowed !== undefined && !atMost(allowed, p) ? [at] : [])),
  );
  const missing = order.flatMap(({ number }, at) => (pressures[at] === undefined ? [number] : []));
  const pairs = neighbours(banks.map((bank) => bank.length)).filter((pair) => pair.every((at) => low.has(at)));
  const cylinders = order.map(({ number, bank }, at): CompressionOfCylinder => {
    const p = pressures[at];
    return {
      cylinder: number,
      bank,
      ...read[at],
      ...(p !== undefined && highest !== undefined && highest > 0 && { share: p / highest }),
      verdict: low.has(at) ? 'out' : p === undefined || allowed === undefined || missing.length > 0 ? 'no data' : 'in',
    };
  });
  const ratio = known.length > 1 && highest !== undefined && highest > 0 ? Math.min(...known) / highest : undefined;
  const verdict: Verdict = low.size > 0 ? 'out' : allowed === undefined || missing.length > 0 ? 'no data' : 'in';
  const words = wordsOf(verdict, ratio, ruleWords(engine), missing);
  return {
    rule: { words: ruleWords(engine), origin: rule?.from.text ?? '' },
    ...(rule?.printed && {
      printed: `${rule.printed.text}${rule.crankingSpeed ? ` at ${rule.crankingSpeed.text}` : ''}`,
    }),
    verdict,
    words,
    cylinders,
    ...(ratio !== undefined && { ratio }),
    findings: findingsOf(
      [...low],
      pairs,
      order.map(({ number }) => number),
      read,
    ),
    missing,
    doubts: compressionDoubts(read.flatMap(({ dry, wet }) => [dry, wet].filter((one) => one !== undefined))),
  };
}

/** The newest dry reading of a cylinder, and the newest wet one after it. */
function readingsOf(facts: readonly RunningFact[], cylinder: CylinderNumber): { dry?: Compressed; wet?: Compressed } {
  const own = factsOf(facts, 'compression-read').filter(({ data }) => data.cylinder === cylinder);
  const at = own.findLastIndex(({ data }) => !data.wet);
  const dry = own[at];
  const wet = own.slice(at + 1).findLast(({ data }) => data.wet);
  return { ...(dry && { dry }), ...(wet && { wet }) };
}

/** The rule that the sheet gives, in words. */
export function ruleWords({ running }: Engine): string {
  const rule = running?.compression;
  const parts = [
    ...(rule?.share ? [`at least ${percent(rule.share.value)} of the highest`] : []),
    ...(rule?.floor ? [`no cylinder below ${rule.floor.text}`] : []),
    ...(rule?.difference ? [`no more than ${rule.difference.text} below the highest`] : []),
  ];
  return parts.join(', ') || 'the sheet gives no rule; makers ask for 70 % or 75 % of the highest';
}
const percent = (share: number): string => `${Number((share * 100).toPrecision(6))} %`;

function wordsOf(
  verdict: Verdict,
  ratio: number | undefined,
  rule: string,
  missing: readonly CylinderNumber[],
): string {
  const lowest = ratio === undefined ? '' : `lowest over highest ${ratio.toFixed(3)}`;
  if (verdict === 'no data') {
    const still = missing.length === 0 ? 'no rule to judge by' : `not read yet: ${missing.join(', ')}`;
    return [lowest, still].filter((part) => part !== '').join('; ');
  }
  return `${lowest}: ${verdict} by the rule "${rule}"`;
}

function findingsOf(
  low: readonly number[],
  pairs: readonly (readonly [number, number])[],
  numbers: readonly CylinderNumber[],
  read: readonly { dry?: Compressed; wet?: Compressed }[],
): readonly CylinderFinding[] {
  const causeAt = (at: number): CylinderFinding['cause'] => {
    const { dry, wet } = read[at]!;
    if (dry === undefined || wet === undefined) return 'wet test wanted';
    const beside = pairs.some((pair) => pair.includes(at));
    return wetFinding(dry.data.reading.value, wet.data.reading.value, CLEAR_RISE, beside);
  };
  const causes = new Map(low.map((at) => [at, causeAt(at)]));
  const GASKET = 'gasket between neighbours';
  const gaskets = pairs.filter((pair) => pair.every((at) => causes.get(at) === GASKET));
  const inPair = new Set(gaskets.flat());
  return [
    ...gaskets.map((pair) => ({ cylinders: pair.map((at) => numbers[at]!), cause: GASKET }) as const),
    ...low
      .filter((at) => !inPair.has(at))
      // A low neighbour that rose with oil is its own case: then nothing points to the gasket alone.
      .map((at) => ({
        cylinders: [numbers[at]!],
        cause: causes.get(at) === GASKET ? ('valve or gasket' as const) : causes.get(at)!,
      })),
  ];
}

function compressionDoubts(read: readonly Compressed[]): readonly string[] {
  const gauges = new Set(read.map(({ data }) => data.gauge ?? ''));
  const strokes = new Set(read.filter(({ data }) => !data.wet).map(({ data }) => data.strokes ?? 0));
  return [
    ...(gauges.size > 1 ? ['Read with more than one gauge: hold only readings of one gauge against each other.'] : []),
    ...(strokes.size > 1 ? ['Not the same number of strokes for all cylinders: read them again alike.'] : []),
  ];
}
