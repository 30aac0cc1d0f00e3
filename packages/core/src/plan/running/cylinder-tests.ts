/** Compression and leakage of every cylinder, read against the rule that holds for this engine. */
import {
  atMost,
  LEAK_PATHS,
  leakage,
  leastAllowed,
  neighbours,
  type Verdict,
  wetFinding,
} from '../../calc/metrology/index.js';
import type { CylinderNumber, Engine } from '../../engine/model.js';
import { formatQuantity } from '../../quantity/index.js';
import { factsOf, type HeardPlace, type RunningFact, type RunningFactOf } from './facts.js';

type Compressed = RunningFactOf<'compression-read'>;
type Leaked = RunningFactOf<'leakage-read'>;

/** A rise with oil of this share is clear. Common practice, no source. */
export const CLEAR_RISE = 0.1;
/** Two supplies differ when they are farther apart than this share. Common practice, no source. */
const SAME_SUPPLY = 0.03;

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
  readonly verdict: Verdict;
  readonly words: string;
  readonly cylinders: readonly CompressionOfCylinder[];
  /** Lowest over highest, of those that were read; absent with fewer than two. */
  readonly ratio?: number;
  readonly findings: readonly CylinderFinding[];
  readonly missing: readonly CylinderNumber[];
  readonly doubts: readonly string[];
}

/** Cylinders bank by bank from the front: the order in which neighbours stand side by side. */
function byBank({
  layout,
}: Engine): readonly (readonly { readonly number: CylinderNumber; readonly bank: string }[])[] {
  const banks =
    layout.banks.length > 0 ? layout.banks.map(({ id }) => id) : [...new Set(layout.cylinders.map((c) => c.bank))];
  return banks
    .map((bank) => layout.cylinders.filter((one) => one.bank === bank).sort((a, b) => a.place - b.place))
    .filter((bank) => bank.length > 0);
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

export interface LeakageOfCylinder {
  readonly cylinder: CylinderNumber;
  readonly bank: string;
  readonly read?: Leaked;
  readonly leak?: number;
  readonly verdict: Verdict;
  readonly means?: string;
}
export interface LeakageTest {
  readonly rule: { readonly words: string; readonly origin: string };
  readonly verdict: Verdict;
  readonly words: string;
  readonly cylinders: readonly LeakageOfCylinder[];
  readonly missing: readonly CylinderNumber[];
  readonly doubts: readonly string[];
}

/** Where the air is heard, and what that means. Common practice, no source. */
export const HEARD: Readonly<Record<HeardPlace, { readonly words: string; readonly means: string }>> = {
  intake: { words: 'in the intake', means: LEAK_PATHS.intake },
  exhaust: { words: 'in the exhaust', means: LEAK_PATHS.exhaust },
  crankcase: { words: 'at the oil filler', means: LEAK_PATHS['oil-filler'] },
  coolant: { words: 'bubbles in the coolant', means: LEAK_PATHS.coolant },
  neighbour: { words: 'in the cylinder beside it', means: LEAK_PATHS.neighbour },
  plug: { words: 'at the adapter in the plug hole', means: 'the adapter leaks: tighten it and read again' },
};

/**
 * Leakage of each cylinder, (supply − held)/supply, against the largest that the sheet allows (inclusive). Without a limit there is no verdict. A
 * leak at the tester's own adapter is no leak of the engine: no data. Source: service manual (read), reference row O-41.
 */
export function leakageTest(engine: Engine, facts: readonly RunningFact[]): LeakageTest {
  const most = engine.running?.leakageMost;
  const all = factsOf(facts, 'leakage-read');
  const cylinders = byBank(engine)
    .flat()
    .map(({ number, bank }) => leakageOf(number, bank, all, most?.value));
  const missing = cylinders.filter(({ read }) => read === undefined).map(({ cylinder }) => cylinder);
  const is = (verdict: Verdict) => cylinders.filter((one) => one.verdict === verdict);
  const verdict: Verdict =
    is('out').length > 0 ? 'out' : is('in').length === cylinders.length && cylinders.length > 0 ? 'in' : 'no data';
  const worst = cylinders.filter((one) => one.leak !== undefined).sort((a, b) => b.leak! - a.leak!)[0];
  return {
    rule: {
      words: most === undefined ? 'the sheet gives no limit' : `no more than ${most.text} in any cylinder`,
      origin: most?.from.text ?? '',
    },
    verdict,
    words: [
      ...(worst === undefined ? [] : [`worst is cylinder ${worst.cylinder} with ${percentOf(worst.leak!)}`]),
      ...(missing.length === 0 ? [] : [`not read yet: ${missing.join(', ')}`]),
    ].join('; '),
    cylinders,
    missing,
    doubts: leakageDoubts(cylinders.flatMap(({ read }) => read ?? [])),
  };
}

function leakageOf(
  number: CylinderNumber,
  bank: string,
  all: readonly Leaked[],
  most: number | undefined,
): LeakageOfCylinder {
  const read = all.findLast(({ data }) => data.cylinder === number);
  if (read === undefined) return { cylinder: number, bank, verdict: 'no data' };
  const { supply, held, heard } = read.data;
  const leak = leakage(supply.value, held.value);
  const unknown = most === undefined || heard === 'plug';
  return {
    cylinder: number,
    bank,
    read,
    leak,
    verdict: unknown ? 'no data' : atMost(leak, most) ? 'in' : 'out',
    ...(heard && { means: HEARD[heard].means }),
  };
}
/** "25 %", "12.5 %" */
export const percentOf = (share: number): string => formatQuantity('ratio', share, '%', 1).replace(/\.0(?= ?%)/, '');

function leakageDoubts(read: readonly Leaked[]): readonly string[] {
  const testers = new Set(read.map(({ data }) => data.tester ?? ''));
  const supplies = read.map(({ data }) => data.supply.value);
  const apart =
    supplies.length > 0 && Math.max(...supplies) - Math.min(...supplies) > SAME_SUPPLY * Math.max(...supplies);
  return [
    ...(testers.size > 1
      ? ['Read with more than one tester: their openings differ, so their figures cannot be compared.']
      : []),
    ...(apart ? ['The supply was not the same for all cylinders: set it once, then read them all.'] : []),
  ];
}
